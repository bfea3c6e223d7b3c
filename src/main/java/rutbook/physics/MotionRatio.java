package rutbook.physics;

/**
 * How far spring and wheel travel against each other. Print has two opposite conventions, so a
 * number means nothing without its own.
 */
public record MotionRatio(double value, Convention convention) {

  /** Which travel is divided by which. */
  public enum Convention {
    /** Spring travel over wheel travel: about 1/3 at the rear of a motocross bike. */
    SPRING_OVER_WHEEL,
    /** Wheel travel over spring travel: about 3 at the rear of a motocross bike. */
    WHEEL_OVER_SPRING
  }

  public MotionRatio {
    Given.within("motion ratio", value, 0.05, 20);
  }

  /** Spring travel over wheel travel, whichever way it was written. */
  public double springOverWheel() {
    return convention == Convention.SPRING_OVER_WHEEL ? value : 1 / value;
  }

  /**
   * Rate at the wheel of a spring, {@code K = k MR²}, in the unit of the spring's rate (SI: N/m).
   */
  public double wheelRate(double springRate) {
    double ratio = springOverWheel();
    return springRate(springRate) * ratio * ratio;
  }

  /** Rate of the spring that gives a rate at the wheel: the inverse. */
  public double springRateFor(double wheelRate) {
    double ratio = springOverWheel();
    return Given.within("wheel rate", wheelRate, 1e-6, 1e7) / (ratio * ratio);
  }

  static double springRate(double springRate) {
    return Given.within("spring rate", springRate, 1e-6, 1e7);
  }
}
