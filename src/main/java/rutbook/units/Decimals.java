package rutbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How finely a converted number is shown: as fine as the thing is measured, no finer. */
final class Decimals {
  private static final BigDecimal TEN = BigDecimal.TEN;
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private Decimals() {}

  /** Decimals for a number of this size in this unit. */
  static int of(Unit unit, BigDecimal number) {
    BigDecimal size = number.abs();
    if (unit == Volume.MILLILITRE
        || unit == Pressure.KILOPASCAL
        || unit == Torque.POUND_FORCE_INCH) {
      return size.compareTo(HUNDRED) < 0 ? 1 : 0;
    }
    if (unit == SpringRate.NEWTON_PER_MILLIMETRE || unit == Length.INCH) {
      return size.compareTo(TEN) < 0 ? 2 : 1;
    }
    return fixed(unit);
  }

  private static int fixed(Unit unit) {
    if (unit == ClickUnit.CLICK || unit == Duration.MINUTE || unit == Mass.POUND) {
      return 0;
    }
    if (unit == Volume.LITRE || unit == Length.METRE) {
      return 3;
    }
    if (unit == TurnUnit.TURN
        || unit == Volume.US_FLUID_OUNCE
        || unit == Volume.IMPERIAL_FLUID_OUNCE
        || unit == Length.FOOT
        || unit == SpringRate.KILOGRAM_FORCE_PER_MILLIMETRE
        || unit == Pressure.BAR
        || unit == Pressure.MEGAPASCAL
        || unit == Pressure.KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE
        || unit == Torque.KILOGRAM_FORCE_METRE) {
      return 2;
    }
    return 1;
  }

  /** Rounded for its unit; what is not zero keeps one digit, so that it is not shown as zero. */
  static BigDecimal rounded(Ratio way, BigDecimal number, Unit wanted, RoundingMode rounding) {
    return rounded(way, number, wanted, rounding, 0);
  }

  /** The same with some decimals more. */
  static BigDecimal rounded(
      Ratio way, BigDecimal number, Unit wanted, RoundingMode rounding, int more) {
    BigDecimal near = way.of(number, MathContext.DECIMAL64);
    int decimals = of(wanted, near) + more;
    if (near.signum() != 0) {
      decimals = Math.max(decimals, near.scale() - near.precision() + 1);
    }
    return way.of(number, decimals, rounding);
  }
}
