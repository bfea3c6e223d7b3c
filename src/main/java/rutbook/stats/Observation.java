package rutbook.stats;

/**
 * One rating as a row of a regression: its parts, what was written, and whether the truth may lie
 * beyond it.
 *
 * @param x one part for each coefficient, within ±1e6
 * @param value as written, within ±1e6
 * @param kind measured, or only a bound
 * @param group the day it belongs to, numbered from zero without gaps, at most 100,000; {@link
 *     #NO_GROUP} for none
 * @param weight 1 as a rule, less for a moto that counts less, 1e-6 to 1e6
 * @param extraVariance beside the noise, 0 to 1e6: a change of conditions, say
 */
public record Observation(
    double[] x, double value, Kind kind, int group, double weight, double extraVariance) {

  /** A row that shares no day's offset. */
  public static final int NO_GROUP = -1;

  /** What was written against the truth. */
  public enum Kind {
    /** The truth and noise about it. */
    MEASURED,
    /** The truth is at most this: the scale ended there. */
    AT_MOST,
    /** The truth is at least this. */
    AT_LEAST
  }

  public Observation {
    x = x.clone();
    for (double part : x) {
      Given.within("part", part, -1e6, 1e6);
    }
    Given.within("value", value, -1e6, 1e6);
    Given.within("group", group, NO_GROUP, 1e5);
    Given.within("weight", weight, 1e-6, 1e6);
    Given.within("extra variance", extraVariance, 0, 1e6);
  }

  /** An ordinary row: no day, full weight. */
  public static Observation of(double[] x, double value, Kind kind) {
    return new Observation(x, value, kind, NO_GROUP, 1, 0);
  }

  /** The same row on a day. */
  public Observation onDay(int day) {
    return new Observation(x, value, kind, day, weight, extraVariance);
  }

  /** Variance of the value about the truth when the noise has this sd. */
  double variance(double noise) {
    return noise * noise / weight + extraVariance;
  }

  @Override
  public double[] x() {
    return x.clone();
  }

  /** The parts themselves, for reading only. */
  double[] parts() {
    return x;
  }
}
