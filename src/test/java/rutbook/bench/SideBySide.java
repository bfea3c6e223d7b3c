package rutbook.bench;

import java.util.function.DoubleSupplier;

/**
 * How long one piece of work takes against another, in turns, so that a busy machine slows both:
 * the ratio of the best of each.
 */
public final class SideBySide {
  private static double kept;

  private SideBySide() {}

  /**
   * The ratio of the work to the reference; both give a number, so that neither is left out.
   *
   * @param rounds of each, after one that warms up
   */
  public static double ratio(int rounds, DoubleSupplier work, DoubleSupplier reference) {
    double mine = Double.POSITIVE_INFINITY;
    double other = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= rounds; i++) {
      double once = seconds(work);
      double twice = seconds(reference);
      if (i > 0) {
        mine = Math.min(mine, once);
        other = Math.min(other, twice);
      }
    }
    return mine / other;
  }

  /** The best of some rounds, in seconds, after as many that warm up. */
  public static double best(int rounds, DoubleSupplier work) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 2 * rounds; i++) {
      double once = seconds(work);
      best = i < rounds ? best : Math.min(best, once);
    }
    return best;
  }

  private static double seconds(DoubleSupplier work) {
    long start = System.nanoTime();
    kept += work.getAsDouble();
    return (System.nanoTime() - start) / 1e9;
  }

  /** What all work gave together: read, so that it is done. */
  public static double kept() {
    return kept;
  }
}
