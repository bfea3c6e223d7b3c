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
 */
record Ride(
    Entry.Session session, Moto moto, int day, int order, Setup setup, Map<Complaint, Feel> feel) {

  static List<Ride> of(Timeline timeline) {
    List<Ride> rides = new ArrayList<>();
    int day = 0;
    for (Entry.Session session : timeline.sessions()) {
      Setup setup = session.start();
      int order = 0;
      for (Moto moto : session.motos()) {
        setup = setup.after(moto.changes());
        if (!moto.report().feel().isEmpty() || !moto.report().laps().isEmpty()) {
          rides.add(new Ride(session, moto, day, order, setup, greatest(moto)));
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

  /** The same in steps of noise, each about a quarter more: half the weight is one or two. */
  int unsure() {
    return (int) Math.min(RatingChances.MOST_UNSURE, Math.round(-2 * Math.log(weight())));
  }

  /** A moto that the rider marked, and one only to test the bike, weigh less. */
  double weight() {
    return (moto.report().doubtful() ? 0.4 : 1) * (moto.kind() == MotoKind.TEST ? 0.5 : 1);
  }
}
