package rutbook.reasoning;

/**
 * What motos too old to be looked at one by one say of the effects on a complaint: a Gaussian
 * likelihood {@code h·β − β'Pβ/2}.
 */
record OldEvidence(double[][] precision, double[] shift) {
  /**
   * What it adds to the logarithm of the chance of each value that one effect of several may have.
   *
   * @param logs where they are put
   */
  void logs(BikeState at, int s, int j, double[] values, double[] logs) {
    double[] effects = at.effects(s);
    double pull = shift[j] + precision[j][j] * effects[j];
    for (int i = 0; i < effects.length; i++) {
      pull -= precision[j][i] * effects[i];
    }
    for (int i = 0; i < values.length; i++) {
      logs[i] = pull * values[i] - precision[j][j] * values[i] * values[i] / 2;
    }
  }
}
