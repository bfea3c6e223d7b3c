package rutbook.stats;

/**
 * A normal number of which only one side of a bound is possible: its mean and variance there.
 *
 * @param mean always on the possible side of the bound
 * @param variance above zero, less than that of the whole
 */
public record TruncatedNormal(double mean, double variance) {

  /** Beyond this many sds the variance is read from its series. */
  private static final double FAR = 200;

  /**
   * The number when it is known to be at most a bound: {@code mean = m − s h}, {@code variance = s²
   * (1 − h (h + r))}, {@code r = (bound − m)/s}, {@code h = φ(r)/Φ(r)} (Johnson, Kotz and
   * Balakrishnan 1994).
   *
   * @param mean m, within ±1e9
   * @param sd s, 1e-9 to 1e9
   * @param bound within ±1e9
   */
  public static TruncatedNormal atMost(double mean, double sd, double bound) {
    Given.within("mean", mean, -Given.MOST, Given.MOST);
    Given.within("sd", sd, 1e-9, Given.MOST);
    Given.within("bound", bound, -Given.MOST, Given.MOST);
    double r = (bound - mean) / sd;
    return new TruncatedNormal(bound - sd * Normal.hazardPlus(r), sd * sd * share(r));
  }

  /** Share of the variance that is left, {@code 1 − h (h + r)}, in 0 to 1. */
  static double share(double r) {
    if (r < -FAR) {
      double inverse = 1 / (r * r);
      return inverse * (1 - 6 * inverse);
    }
    return 1 - weight(r);
  }

  /** {@code h (h + r)}: what a bound says of the mean, against a measurement; in 0 to 1. */
  static double weight(double r) {
    return Math.min(1, Normal.hazard(r) * Normal.hazardPlus(r));
  }
}
