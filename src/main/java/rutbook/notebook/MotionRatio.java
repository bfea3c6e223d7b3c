package rutbook.notebook;

import java.math.BigDecimal;

/** A motion ratio together with the way round it is written. */
public record MotionRatio(BigDecimal value, RatioConvention convention) {
  public MotionRatio {
    Checks.decimal("motion ratio", value, 0.05, 20);
  }

  /** Spring travel over wheel travel, below 1 on most bikes. */
  public double springOverWheel() {
    double ratio = value.doubleValue();
    return convention == RatioConvention.SPRING_OVER_WHEEL ? ratio : 1 / ratio;
  }
}
