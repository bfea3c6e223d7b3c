package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;

/**
 * A moto as evidence: its place, its setup and the greatest rating of each complaint.
 *
 * @param day the session's number, counted from 0 in the order of days
 * @param order of the moto within the day, from 0
 * @param wear of the oil at the end of the day
 */
record Ride(
    Entry.Session session,
    Moto moto,
    int day,
    int order,
    Setup setup,
    Map<Complaint, Feel> feel,
    Wear wear) {
  /** Steps of noise that a moto under wholly different conditions is less sure by. */
  private static final double OTHER_CONDITIONS = 4;

  static List<Ride> of(Timeline timeline) {
    List<Ride> rides = new ArrayList<>();
    int day = 0;
    List<Entry> entries = timeline.entries();
    Wear[] wear = Wear.ofEach(timeline, timeline.bike().latestSheet());
    for (int entry = 0; entry < wear.length; entry++) {
      if (!(entries.get(entry) instanceof Entry.Session session)) {
        continue;
      }
      Setup setup = session.start();
      int order = 0;
      for (Moto moto : session.motos()) {
        setup = setup.after(moto.changes());
        if (!moto.report().feel().isEmpty() || !moto.report().laps().isEmpty()) {
          rides.add(new Ride(session, moto, day, order, setup, greatest(moto), wear[entry]));
        }
        order++;
      }
      day++;
    }
    return rides;
  }

  static Map<Complaint, Feel> greatest(Moto moto) {
    Map<Complaint, Feel> greatest = new TreeMap<>();
    for (Feel feel : moto.report().feel()) {
      greatest.merge(Complaint.of(feel), feel, (a, b) -> b.severity() > a.severity() ? b : a);
    }
    return greatest;
  }

  /**
   * How much less sure it is than other motos, in steps of noise, each about a quarter more: by its
   * weight, and by how far its conditions were from today's.
   *
   * @param distance of conditions, 0 to 1
   */
  int unsure(double distance) {
    double steps = -2 * Math.log(weight()) + OTHER_CONDITIONS * distance;
    return (int) Math.min(RatingChances.MOST_UNSURE, Math.round(steps));
  }

  /** A moto that the rider marked, and one only to test the bike, weigh less. */
  double weight() {
    return (moto.report().doubtful() ? 0.4 : 1) * (moto.kind() == MotoKind.TEST ? 0.5 : 1);
  }
}
