package rutbook.stats;

import org.hipparchus.special.Erf;

/**
 * The standard normal distribution, accurate far into its tails, where ratios of vanishing numbers
 * are wanted.
 */
public final class Normal {

  /** Below this the continued fraction is used, above it the series. */
  private static final double TAIL = -2.5;

  private static final int TERMS = 45;
  private static final double ROOT = Math.sqrt(2 * Math.PI);
  private static final double LOG_ROOT = Math.log(ROOT);

  private Normal() {}

  /** Density {@code φ(z)}. */
  public static double density(double z) {
    return Math.exp(-z * z / 2) / ROOT;
  }

  /** Chance {@code Φ(z)} of a value below z, 0 to 1. */
  public static double cumulative(double z) {
    if (z < TAIL) {
      return density(z) / (-z + tail(-z));
    }
    return z > -TAIL ? 1 - cumulative(-z) : 0.5 + density(z) * series(z);
  }

  /** The z below which a share of 1e-9 to 1 − 1e-9 lies: the inverse of {@link #cumulative}. */
  public static double quantile(double share) {
    Given.within("share", share, 1e-9, 1 - 1e-9);
    double z = -Math.sqrt(2) * Erf.erfcInv(2 * share);
    return z - (cumulative(z) - share) / density(z);
  }

  /** Natural logarithm of {@code Φ(z)}, finite for every z within ±1e100. */
  public static double logCumulative(double z) {
    if (z < TAIL) {
      return -z * z / 2 - LOG_ROOT - Math.log(-z + tail(-z));
    }
    return Math.log(cumulative(z));
  }

  /** {@code φ(z)/Φ(z)}: how fast the chance grows; −z far below, nothing far above. */
  public static double hazard(double z) {
    return z < TAIL ? -z + tail(-z) : density(z) / cumulative(z);
  }

  /** {@code φ(z)/Φ(z) + z}, without losing digits far below, where it is near 1/|z|. */
  static double hazardPlus(double z) {
    return z < TAIL ? tail(-z) : hazard(z) + z;
  }

  /** {@code 1/(x + 2/(x + 3/(x + …)))}: what 1/Mills' ratio is above x (Laplace's fraction). */
  private static double tail(double x) {
    double below = x;
    for (int k = TERMS; k >= 2; k--) {
      below = x + k / below;
    }
    return 1 / below;
  }

  /** {@code z + z³/3 + z⁵/(3·5) + …} (Marsaglia 2004). */
  private static double series(double z) {
    double term = z;
    double sum = z;
    for (int k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
      term *= z * z / k;
      sum += term;
    }
    return sum;
  }
}
