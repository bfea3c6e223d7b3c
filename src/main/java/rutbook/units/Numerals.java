package rutbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Numbers in writing: plain digits with a language's point or comma, turns with fractions.
 *
 * @param decimalSign a point or a comma
 */
public record Numerals(char decimalSign) {
  /** Decimals behind a point. */
  public static final Numerals POINT = new Numerals('.');

  /** U+2212, as wide as a plus. */
  private static final char MINUS = '−';

  private static final MathContext KEPT =
      new MathContext(Amount.MOST_DIGITS, RoundingMode.HALF_EVEN);

  private record Part(int top, int bottom, char sign) {}

  private static final List<Part> PARTS =
      List.of(
          new Part(1, 4, '¼'),
          new Part(1, 2, '½'),
          new Part(3, 4, '¾'),
          new Part(1, 8, '⅛'),
          new Part(3, 8, '⅜'),
          new Part(5, 8, '⅝'),
          new Part(7, 8, '⅞'),
          new Part(1, 3, '⅓'),
          new Part(2, 3, '⅔'));

  /** As a locale writes them. */
  public static Numerals of(Locale locale) {
    return new Numerals(AmountText.decimalSign(locale));
  }

  /** All digits of the number, never grouped, as its unit is written. */
  public String text(Shown shown) {
    BigDecimal size = shown.number().abs();
    String digits =
        shown.unit() == TurnUnit.TURN ? mixed(size).orElseGet(() -> decimal(size)) : decimal(size);
    return shown.number().signum() < 0 ? MINUS + digits : digits;
  }

  /** A number that is no amount, with at most so many decimals. */
  public String text(double number, int decimals) {
    if (!Double.isFinite(number)) {
      return Double.toString(number);
    }
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    String digits = decimal(rounded.abs());
    return rounded.signum() < 0 ? MINUS + digits : digits;
  }

  /** With exactly so many decimals, as numbers stand under each other. */
  public String aligned(BigDecimal number, int decimals) {
    BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP);
    String digits = rounded.abs().toPlainString().replace('.', decimalSign);
    return rounded.signum() < 0 ? MINUS + digits : digits;
  }

  private String decimal(BigDecimal size) {
    String plain = size.signum() == 0 ? "0" : size.stripTrailingZeros().toPlainString();
    return plain.replace('.', decimalSign);
  }

  /** As {@code 1¾}, where the number is exactly what that fraction is kept as. */
  private static Optional<String> mixed(BigDecimal size) {
    BigDecimal whole = size.setScale(0, RoundingMode.DOWN);
    if (whole.compareTo(size) == 0) {
      return Optional.empty();
    }
    for (Part part : PARTS) {
      BigDecimal bottom = BigDecimal.valueOf(part.bottom);
      BigDecimal same =
          whole.multiply(bottom).add(BigDecimal.valueOf(part.top)).divide(bottom, KEPT);
      if (same.compareTo(size) == 0) {
        return Optional.of((whole.signum() == 0 ? "" : whole.toPlainString()) + part.sign);
      }
    }
    return Optional.empty();
  }
}
