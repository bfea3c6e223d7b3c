package rutbook.reasoning;

import java.util.Optional;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.Ground;
import rutbook.notebook.Moisture;
import rutbook.notebook.Shelf;
import rutbook.notebook.Track;
import rutbook.units.Amount;

/**
 * How far sessions are from each other in soil, moisture, roughness and altitude, weight 1 each.
 */
record Likeness(Shelf shelf) {
  private static final double UNKNOWN = 0.5;

  /** Metres. */
  private static final double FAR_ALTITUDE = 2000;

  /** 0 for the same to 1 for as far as can be; a half where one is not known. */
  double distance(Entry.Session session, Track track, Conditions expected) {
    if (session.track().equals(track.id()) && expected.equals(Conditions.NOT_NOTED)) {
      return 0;
    }
    return distance(track(session), session.conditions(), track, expected, UNKNOWN);
  }

  /** The same between two sessions; what is not known of one is taken not to differ. */
  double distance(Entry.Session one, Entry.Session other) {
    return distance(track(one), one.conditions(), track(other), other.conditions(), 0);
  }

  private Track track(Entry.Session session) {
    return shelf.track(session.track()).orElseThrow();
  }

  private static double distance(
      Track there, Conditions was, Track track, Conditions expected, double unknown) {
    Optional<Ground> soil = was.ground().or(there::ground);
    Optional<Ground> wanted = expected.ground().or(track::ground);
    double sum = 0;
    sum += soil.isPresent() && wanted.isPresent() ? (soil.equals(wanted) ? 0 : 1) : unknown;
    sum +=
        was.moisture().isPresent() && expected.moisture().isPresent()
            ? Math.abs(was.moisture().get().ordinal() - expected.moisture().get().ordinal())
                / (Moisture.values().length - 1.0)
            : unknown;
    sum +=
        was.roughness().isPresent() && expected.roughness().isPresent()
            ? Math.abs(was.roughness().getAsInt() - expected.roughness().getAsInt()) / 5.0
            : unknown;
    sum += altitude(there.altitude(), track.altitude(), unknown);
    return sum / 4;
  }

  private static double altitude(Optional<Amount> one, Optional<Amount> other, double unknown) {
    return one.isPresent() && other.isPresent()
        ? Math.min(1, Math.abs(one.get().si() - other.get().si()) / FAR_ALTITUDE)
        : unknown;
  }
}
