package rutbook.stats;

import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t distribution, with its quantiles to all digits. */
final class StudentT {

  /** From here on it is the normal distribution to ten digits. */
  private static final double MANY = 1e6;

  private final TDistribution distribution;

  StudentT(double degreesOfFreedom) {
    Given.within("degrees of freedom", degreesOfFreedom, 1e-3, Double.POSITIVE_INFINITY);
    distribution = new TDistribution(Math.min(MANY, degreesOfFreedom));
  }

  /** Chance of a value at least this far from zero either way. */
  double twoSided(double t) {
    return Math.min(1, 2 * distribution.cumulativeProbability(-Math.abs(t)));
  }

  /** The value that is exceeded either way with a chance of one in twenty. */
  double of95() {
    double t = distribution.inverseCumulativeProbability(0.975);
    for (int i = 0; i < 3; i++) {
      t -= (distribution.cumulativeProbability(t) - 0.975) / distribution.density(t);
    }
    return t;
  }
}
