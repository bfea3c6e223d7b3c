package rutbook.stats;

/** Coefficients and group offsets, or a step of both. */
final class CensoredState {
  final double[] b;
  final double[] offsets;

  CensoredState(double[] b, double[] offsets) {
    this.b = b;
    this.offsets = offsets;
  }

  static CensoredState of(CensoredFit fit) {
    return new CensoredState(
        fit.coefficients().means(),
        fit.groupOffsets().stream().mapToDouble(Double::doubleValue).toArray());
  }

  double mean(Observation row) {
    double sum = row.group() < 0 ? 0 : offsets[row.group()];
    double[] x = row.parts();
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * b[i];
    }
    return sum;
  }

  CensoredState plus(CensoredState step, double size) {
    CensoredState next = new CensoredState(b.clone(), offsets.clone());
    for (int i = 0; i < b.length; i++) {
      next.b[i] += size * step.b[i];
    }
    for (int i = 0; i < offsets.length; i++) {
      next.offsets[i] += size * step.offsets[i];
    }
    return next;
  }
}
