package rutbook.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers of a drawing as every reader of markup takes them. */
final class Numbers {
  private static final int DECIMALS = 2;

  private Numbers() {}

  /** Two decimals at most, a point, no exponent, no trailing zeros. */
  static String plain(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
