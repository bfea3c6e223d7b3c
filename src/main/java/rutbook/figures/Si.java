package rutbook.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rutbook.units.Amount;
import rutbook.units.Unit;

/** SI numbers back into amounts. */
final class Si {
  private Si() {}

  /** An SI number in a unit without offset, rounded to so many decimals of that unit. */
  static Amount amount(double si, Unit unit, int decimals) {
    BigDecimal number =
        BigDecimal.valueOf(si)
            .multiply(unit.denominator())
            .divide(unit.numerator(), decimals, RoundingMode.HALF_EVEN);
    return new Amount(number.subtract(unit.offset()), unit);
  }
}
