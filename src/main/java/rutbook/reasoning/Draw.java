package rutbook.reasoning;

import java.util.SplittableRandom;

/** One unknown drawn by chance from its values: what was known of each, times what ratings say. */
final class Draw {
  private static final int MOST = 64;

  /** What is less likely than the likeliest by so many e-folds is never drawn. */
  private static final double LEAST_LOG = 100;

  private final SplittableRandom random;
  private final double[] chance = new double[MOST];
  private int size;

  Draw(SplittableRandom random) {
    this.random = random;
  }

  void begin(double[] known) {
    size = known.length;
    System.arraycopy(known, 0, chance, 0, size);
  }

  void ruleOut(int value) {
    chance[value] = 0;
  }

  void times(int value, double factor) {
    chance[value] *= factor;
  }

  /** Counts the logarithms of chances, in place, up to a factor common to all. */
  void timesExp(double[] logs) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < size; i++) {
      most = Math.max(most, logs[i]);
    }
    for (int i = 0; i < size; i++) {
      double less = logs[i] - most;
      chance[i] *= less < -LEAST_LOG ? 0 : StrictMath.exp(less);
    }
  }

  /** Counts a rating of a moto whose severity would be {@code from + step · value}. */
  void rated(float[] table, double from, double step, double[] values) {
    for (int i = 0; i < size; i++) {
      chance[i] *= RatingChances.at(table, from + step * values[i]);
    }
  }

  /** The place of the value that was drawn; as it was where no value is left with a chance. */
  int drawn(int asItWas) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += chance[i];
    }
    if (!(sum > Double.MIN_NORMAL)) {
      return asItWas;
    }
    double share = random.nextDouble() * sum;
    for (int i = 0; i < size; i++) {
      share -= chance[i];
      if (share < 0) {
        return i;
      }
    }
    return asItWas;
  }
}
