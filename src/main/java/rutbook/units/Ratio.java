package rutbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The exact way from one unit to another: {@code (number * top + shift) / bottom}. */
record Ratio(BigDecimal top, BigDecimal shift, BigDecimal bottom) {

  static Ratio of(Unit from, Unit to) {
    Ratio steps = ofSteps(from, to);
    BigDecimal shift =
        from.offset().multiply(steps.top).subtract(to.offset().multiply(steps.bottom));
    return new Ratio(steps.top, shift, steps.bottom);
  }

  /** For differences, where the offsets of temperatures cancel. */
  static Ratio ofSteps(Unit from, Unit to) {
    return new Ratio(
        from.numerator().multiply(to.denominator()),
        BigDecimal.ZERO,
        from.denominator().multiply(to.numerator()));
  }

  BigDecimal of(BigDecimal number, int decimals, RoundingMode rounding) {
    return number.multiply(top).add(shift).divide(bottom, decimals, rounding);
  }

  BigDecimal of(BigDecimal number, MathContext digits) {
    return number.multiply(top).add(shift).divide(bottom, digits);
  }
}
