package rutbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and its unit exactly as the rider wrote them: 9.5 fl oz stays 9.5 fl oz.
 *
 * <p>The value is kept without trailing zeros, so that equal writing is equal: at most {@value
 * #MOST_DIGITS} digits and a decimal exponent within ±{@value #MOST_EXPONENT}.
 */
public record Amount(BigDecimal value, Unit unit) {
  public static final int MOST_DIGITS = 12;
  public static final int MOST_EXPONENT = 9;

  private static final BigDecimal LEAST = BigDecimal.ONE.movePointLeft(MOST_EXPONENT);

  /**
   * As {@link #toString} writes it, without zeros in front; longer numbers have more digits than
   * are kept, and a sign of 40 letters is more than any unit has.
   */
  private static final Pattern EXACT =
      Pattern.compile("(-?(?:0|[1-9]\\d{0,39})(?:\\.\\d{1,40})?) (\\S.{0,39})");

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

  /**
   * From the form that {@link #toString} writes, as in the file: a plain number, one space, the
   * sign of the unit letter by letter. Trailing zeros are taken; nothing else is guessed.
   *
   * @throws AmountException saying which part is wrong
   */
  public static Amount parseExact(String text) {
    Matcher parts = EXACT.matcher(text);
    if (!parts.matches()) {
      throw new AmountException(
          text.isBlank() ? AmountException.Fault.EMPTY : AmountException.Fault.NO_NUMBER, text);
    }
    Unit unit =
        Unit.ofSymbol(parts.group(2))
            .orElseThrow(() -> new AmountException(AmountException.Fault.UNKNOWN_UNIT, text));
    return new Amount(new BigDecimal(parts.group(1)), unit);
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
    return value
        .add(unit.offset())
        .multiply(unit.numerator())
        .divide(unit.denominator(), MathContext.DECIMAL128)
        .doubleValue();
  }

  /**
   * Compares exactly, across units of one dimension: no rounding stands between an amount and its
   * limit.
   *
   * @throws AmountException when the dimensions differ
   */
  public int compareQuantity(Amount other) {
    if (other.unit == unit) {
      return value.compareTo(other.value);
    }
    requireSameDimension(other);
    BigDecimal mine = value.add(unit.offset()).multiply(unit.numerator());
    BigDecimal theirs = other.value.add(other.unit.offset()).multiply(other.unit.numerator());
    return mine.multiply(other.unit.denominator()).compareTo(theirs.multiply(unit.denominator()));
  }

  public boolean sameQuantity(Amount other) {
    return compareQuantity(other) == 0;
  }

  /**
   * In another unit of the dimension, rounded in the given direction to so many decimals, and to
   * fewer where these are more digits than an amount keeps.
   *
   * @throws AmountException when the dimensions differ, or the result is too large for an amount
   */
  public Amount in(Unit wanted, int decimals, RoundingMode rounding) {
    if (wanted == unit) {
      return this;
    }
    BigDecimal number = numberIn(wanted, decimals, rounding);
    return new Amount(number.round(new MathContext(MOST_DIGITS, rounding)), wanted);
  }

  /** In another unit of the dimension, as a double: for drawing and statistics. */
  public double doubleIn(Unit wanted) {
    requireSameDimension(wanted);
    return wanted == unit
        ? value.doubleValue()
        : Ratio.of(unit, wanted).of(value, MathContext.DECIMAL128).doubleValue();
  }

  /** This amount with another number, same unit. */
  public Amount withValue(BigDecimal newValue) {
    return new Amount(newValue, unit);
  }

  /**
   * The difference to another amount, in this amount's unit, rounded to what an amount keeps. A
   * difference of temperatures has no offset.
   */
  public Amount minus(Amount other) {
    return new Amount(kept(value.subtract(other.near(unit))), unit);
  }

  /**
   * This amount moved by a difference, in this amount's unit, rounded to what an amount keeps: 20
   * °C moved by 9 °F is 25 °C.
   */
  public Amount plus(Amount difference) {
    BigDecimal step = difference.stepIn(unit, MOST_DIGITS + MOST_EXPONENT, RoundingMode.HALF_EVEN);
    return new Amount(kept(value.add(step)), unit);
  }

  private BigDecimal near(Unit wanted) {
    return numberIn(wanted, MOST_DIGITS + MOST_EXPONENT, RoundingMode.HALF_EVEN);
  }

  /** A computed number with as many digits as an amount keeps. */
  private static BigDecimal kept(BigDecimal number) {
    BigDecimal rounded = number.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
    return rounded.abs().compareTo(LEAST) < 0
        ? rounded.setScale(MOST_EXPONENT, RoundingMode.HALF_EVEN)
        : rounded;
  }

  /** The number in another unit, however many digits it takes. */
  BigDecimal numberIn(Unit wanted, int decimals, RoundingMode rounding) {
    requireSameDimension(wanted);
    return wanted == unit ? value : Ratio.of(unit, wanted).of(value, decimals, rounding);
  }

  /** The same for a difference: no offset of temperatures. */
  BigDecimal stepIn(Unit wanted, int decimals, RoundingMode rounding) {
    requireSameDimension(wanted);
    return wanted == unit ? value : Ratio.ofSteps(unit, wanted).of(value, decimals, rounding);
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
