package rutbook.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A number and its unit exactly as the rider wrote them: 9.5 fl oz stays 9.5 fl oz.
 *
 * <p>The value is kept without trailing zeros, so that equal writing is equal: at most {@value
 * #MOST_DIGITS} digits and a decimal exponent within ±{@value #MOST_EXPONENT}.
 */
public record Amount(BigDecimal value, Unit unit) {
  public static final int MOST_DIGITS = 12;
  public static final int MOST_EXPONENT = 9;

  public Amount {
    Objects.requireNonNull(unit, "unit");
    value = canonical(value);
  }

  /** From a plain decimal such as {@code "9.5"}. */
  public static Amount of(String value, Unit unit) {
    return new Amount(new BigDecimal(value), unit);
  }

  public static Amount of(long value, Unit unit) {
    return new Amount(BigDecimal.valueOf(value), unit);
  }

  private static BigDecimal canonical(BigDecimal value) {
    Objects.requireNonNull(value, "value");
    if (value.signum() == 0) {
      return BigDecimal.ZERO;
    }
    // Looked at before stripping: 1E+200000000 must not be written out.
    int exponent = value.precision() - value.scale() - 1;
    if (Math.abs((long) value.scale()) > 1000 || Math.abs(exponent) > MOST_EXPONENT) {
      throw new AmountException(AmountException.Fault.TOO_LARGE_OR_SMALL, value.toString());
    }
    BigDecimal stripped = value.stripTrailingZeros();
    if (stripped.precision() > MOST_DIGITS) {
      throw new AmountException(AmountException.Fault.TOO_MANY_DIGITS, value.toString());
    }
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  public Dimension dimension() {
    return unit.dimension();
  }

  /** In the SI unit of the dimension (clicks and turns as they are); for physics only. */
  public double si() {
    return value.add(unit.offset()).multiply(unit.numerator()).doubleValue()
        / unit.denominator().doubleValue();
  }

  /**
   * Compares exactly, across units of one dimension: no rounding stands between an amount and its
   * limit.
   *
   * @throws AmountException when the dimensions differ
   */
  public int compareQuantity(Amount other) {
    requireSameDimension(other);
    BigDecimal mine = value.add(unit.offset()).multiply(unit.numerator());
    BigDecimal theirs = other.value.add(other.unit.offset()).multiply(other.unit.numerator());
    return mine.multiply(other.unit.denominator()).compareTo(theirs.multiply(unit.denominator()));
  }

  public boolean sameQuantity(Amount other) {
    return compareQuantity(other) == 0;
  }

  /** In another unit of the dimension, rounded to so many decimals in the given direction. */
  public Amount in(Unit wanted, int decimals, RoundingMode rounding) {
    if (wanted == unit) {
      return this;
    }
    return new Amount(exactly(wanted, decimals, rounding), wanted);
  }

  /** In another unit of the dimension, as a double: for drawing and statistics. */
  public double doubleIn(Unit wanted) {
    if (wanted == unit) {
      return value.doubleValue();
    }
    return exactly(wanted, 15, RoundingMode.HALF_EVEN).doubleValue();
  }

  /** This amount with another number, same unit. */
  public Amount withValue(BigDecimal newValue) {
    return new Amount(newValue, unit);
  }

  /**
   * The difference to another amount, in this amount's unit, rounded to nine decimals where units
   * differ. A difference of temperatures has no offset.
   */
  public Amount minus(Amount other) {
    requireSameDimension(other);
    if (other.unit == unit) {
      return new Amount(value.subtract(other.value), unit);
    }
    BigDecimal converted = other.exactly(unit, MOST_EXPONENT, RoundingMode.HALF_EVEN);
    return new Amount(rounded(value.subtract(converted)), unit);
  }

  /** The sum with another amount, in this amount's unit, rounded to nine decimals. */
  public Amount plus(Amount other) {
    requireSameDimension(other);
    if (other.unit == unit) {
      return new Amount(value.add(other.value), unit);
    }
    BigDecimal converted = other.exactly(unit, MOST_EXPONENT, RoundingMode.HALF_EVEN);
    return new Amount(rounded(value.add(converted)), unit);
  }

  private static BigDecimal rounded(BigDecimal number) {
    return number.round(new java.math.MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
  }

  private BigDecimal exactly(Unit wanted, int decimals, RoundingMode rounding) {
    requireSameDimension(wanted);
    BigDecimal top =
        value.add(unit.offset()).multiply(unit.numerator()).multiply(wanted.denominator());
    BigDecimal bottom = unit.denominator().multiply(wanted.numerator());
    if (wanted.offset().signum() == 0) {
      return top.divide(bottom, decimals, rounding);
    }
    return top.subtract(wanted.offset().multiply(bottom)).divide(bottom, decimals, rounding);
  }

  private void requireSameDimension(Amount other) {
    requireSameDimension(other.unit);
  }

  private void requireSameDimension(Unit other) {
    if (other.dimension() != unit.dimension()) {
      throw new AmountException(
          AmountException.Fault.OTHER_KIND, unit.symbol() + " / " + other.symbol());
    }
  }

  /** As written in the file: the plain number, a space and the sign of the unit. */
  @Override
  public String toString() {
    return value.toPlainString() + " " + unit.symbol();
  }
}
