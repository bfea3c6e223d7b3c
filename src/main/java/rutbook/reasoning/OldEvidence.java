package rutbook.reasoning;

/**
 * What motos too old to be looked at one by one say of the effects on a complaint: a Gaussian
 * likelihood {@code h·β − β'Pβ/2}.
 */
record OldEvidence(double[][] precision, double[] shift) {
  /** What it adds to the logarithm of the chance when one effect of several has a value. */
  double log(double[] effect, int j, double value) {
    double pull = shift[j];
    for (int i = 0; i < effect.length; i++) {
      if (i != j) {
        pull -= precision[j][i] * effect[i];
      }
    }
    return pull * value - precision[j][j] * value * value / 2;
  }
}
