package rutbook.reasoning;

import java.util.SplittableRandom;

/** One unknown drawn by chance from its values: what was known of each, times what ratings say. */
final class Draw {
  private static final int MOST = 13 * PriorCell.MOST_VALUES;

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

  /** Two unknowns at once: all pairs, those of the first value of the one first. */
  void begin(double[] one, double[] other) {
    size = 0;
    for (double each : one) {
      for (double chanceOfOther : other) {
        chance[size++] = each * chanceOfOther;
      }
    }
  }

  void times(int value, double factor) {
    chance[value] *= factor;
  }

  /** Counts a rating of a moto whose severity would be {@code from + step · value}. */
  void rated(float[] table, double from, double step, double[] values) {
    rated(table, from, step, values, 0);
  }

  /** The same for the pairs of one value of the first unknown with all of the second. */
  void rated(float[] table, double from, double step, double[] values, int first) {
    RatingChances.weigh(chance, first * values.length, table, from, step, values);
  }

  /** What all chances come to. */
  double sum() {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += chance[i];
    }
    return sum;
  }

  /** The chances, those below a share of the greatest as 0. */
  double[] likely(double share) {
    double most = 0;
    for (int i = 0; i < size; i++) {
      most = Math.max(most, chance[i]);
    }
    double[] likely = new double[size];
    for (int i = 0; i < size; i++) {
      likely[i] = chance[i] < share * most ? 0 : chance[i];
    }
    return likely;
  }

  /** The place of the value that was drawn; as it was where no value is left with a chance. */
  int drawn(int asItWas) {
    double sum = sum();
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
