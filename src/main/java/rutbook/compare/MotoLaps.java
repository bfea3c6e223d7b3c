package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.Lap;

/**
 * The laps of one moto that tell something: the first, from a standing start, and those that the
 * rider dropped are left out.
 *
 * @param moto counted from 0
 * @param seconds in the order ridden; may be empty
 */
public record MotoLaps(Entry.Session session, int moto, List<Double> seconds) {
  public MotoLaps {
    seconds = List.copyOf(seconds);
  }

  static MotoLaps of(Entry.Session session, int moto) {
    List<Lap> laps = session.motos().get(moto).report().laps();
    List<Double> seconds = new ArrayList<>();
    for (int i = 1; i < laps.size(); i++) {
      if (laps.get(i).counts()) {
        seconds.add(laps.get(i).millis() / 1000.0);
      }
    }
    return new MotoLaps(session, moto, seconds);
  }

  /** Of every moto of a session that has laps. */
  static List<MotoLaps> of(Entry.Session session) {
    List<MotoLaps> motos = new ArrayList<>();
    for (int i = 0; i < session.motos().size(); i++) {
      MotoLaps laps = of(session, i);
      if (!laps.seconds().isEmpty()) {
        motos.add(laps);
      }
    }
    return motos;
  }

  double[] numbers() {
    return seconds.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Mean lap in s; of at least one. */
  public double mean() {
    return seconds.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
