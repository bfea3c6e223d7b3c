package rutbook.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;

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
    double[] seconds = seconds(session.motos().get(moto));
    return new MotoLaps(session, moto, Arrays.stream(seconds).boxed().toList());
  }

  /** The laps of a moto that tell something, s. */
  static double[] seconds(Moto moto) {
    List<Lap> laps = moto.report().laps();
    double[] seconds = new double[Math.max(0, laps.size() - 1)];
    int count = 0;
    for (int i = 1; i < laps.size(); i++) {
      if (laps.get(i).counts()) {
        seconds[count++] = laps.get(i).millis() / 1000.0;
      }
    }
    return Arrays.copyOf(seconds, count);
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
