package rutbook.stats;

import java.util.Optional;

/**
 * Two means of independent numbers. Laps are not independent: for them it is only the case that
 * {@link MotoComparison} comes to when motos do not differ.
 */
public final class TwoMeans {

  private TwoMeans() {}

  /**
   * What is needed of one sample.
   *
   * @param count at least two
   * @param mean within ±1e9
   * @param sd with n − 1, 0 to 1e9
   */
  public record Sample(int count, double mean, double sd) {

    public Sample {
      Given.within("count", count, 2, Integer.MAX_VALUE);
      Given.within("mean", mean, -Given.MOST, Given.MOST);
      Given.within("sd", sd, 0, Given.MOST);
    }

    /** The sample of two or more numbers. */
    public static Sample of(double... values) {
      Given.within("count", values.length, 2, Integer.MAX_VALUE);
      Summary summary = Summary.of(values);
      return new Sample(values.length, summary.mean(), summary.sd().orElseThrow());
    }

    private double variance() {
      return sd * sd;
    }
  }

  /**
   * Welch's comparison (1947), variances not taken as equal; empty when neither sample scatters.
   * {@code t = (m1 − m2)/√(s1²/n1 + s2²/n2)}, degrees of freedom by Satterthwaite.
   */
  public static Optional<Difference> welch(Sample first, Sample second) {
    double a = first.variance() / first.count();
    double b = second.variance() / second.count();
    if (a + b == 0) {
      return Optional.empty();
    }
    double freedom =
        1
            / (square(a / (a + b)) / (first.count() - 1)
                + square(b / (a + b)) / (second.count() - 1));
    return Optional.of(Difference.of(first.mean() - second.mean(), Math.sqrt(a + b), freedom));
  }

  /** Student's comparison, variances taken as equal; empty when neither sample scatters. */
  public static Optional<Difference> pooled(Sample first, Sample second) {
    double sd = pooledSd(first, second);
    if (sd == 0) {
      return Optional.empty();
    }
    double error = sd * Math.sqrt(1.0 / first.count() + 1.0 / second.count());
    return Optional.of(
        Difference.of(
            first.mean() - second.mean(), error, (double) first.count() + second.count() - 2));
  }

  /** The standard deviation that both samples share. */
  public static double pooledSd(Sample first, Sample second) {
    double squares =
        first.variance() * (first.count() - 1) + second.variance() * (second.count() - 1);
    return Math.sqrt(squares / ((double) first.count() + second.count() - 2));
  }

  private static double square(double value) {
    return value * value;
  }
}
