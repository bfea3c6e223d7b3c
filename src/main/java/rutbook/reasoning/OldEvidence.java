package rutbook.reasoning;

import java.util.stream.IntStream;

/**
 * What motos too old to be looked at one by one say of the effects on a complaint: a Gaussian
 * likelihood {@code h·β − β'Pβ/2}.
 */
record OldEvidence(double[][] precision, double[] shift) {
  /** Steps of a table of powers of e for each unit, read between two of them. */
  private static final int STEPS = 32;

  private static final int LEAST = -100;
  private static final double[] POWERS =
      IntStream.rangeClosed(0, -LEAST * STEPS + 1)
          .mapToDouble(i -> StrictMath.exp(-(double) i / STEPS))
          .toArray();

  /** Of 0 and less, to within 1 in 8,000. */
  private static double exp(double log) {
    double place = Math.min(-LEAST, -log) * STEPS;
    int i = (int) place;
    return POWERS[i] + (place - i) * (POWERS[i + 1] - POWERS[i]);
  }

  /**
   * Weighs the values that one effect of several may have.
   *
   * @param chances of the values, multiplied in place up to a factor common to all
   */
  void weigh(double[] chances, BikeState at, int s, int j, double[] values) {
    double[] effects = at.effects(s);
    double pull = shift[j] + precision[j][j] * effects[j];
    for (int i = 0; i < effects.length; i++) {
      pull -= precision[j][i] * effects[i];
    }
    double[] logs = new double[values.length];
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < values.length; i++) {
      logs[i] = pull * values[i] - precision[j][j] * values[i] * values[i] / 2;
      most = Math.max(most, logs[i]);
    }
    for (int i = 0; i < values.length; i++) {
      chances[i] *= exp(logs[i] - most);
    }
  }
}
