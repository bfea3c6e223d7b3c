package rutbook.physics;

/**
 * The rubber at the end of the stroke as a straight spring from where it is touched; an estimate.
 *
 * @param from stroke at which it is touched, m
 * @param rate N/m for the whole end, both legs
 */
public record BumpStop(double from, double rate) {

  public BumpStop {
    Given.length("bump stop", from);
    Given.within("bump stop rate", rate, 0, 1e7);
  }

  /** Force in N at a stroke; nothing before it is touched. */
  public double force(double stroke) {
    return rate * Math.max(0, stroke - from);
  }

  double energy(double start, double end) {
    double a = Math.max(0, start - from);
    double b = Math.max(0, end - from);
    return rate / 2 * (b * b - a * a);
  }
}
