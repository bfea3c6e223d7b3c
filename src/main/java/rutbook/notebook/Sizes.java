package rutbook.notebook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import rutbook.units.Amount;
import rutbook.units.Unit;

/**
 * How much of anything a notebook takes: at most a thousand million of the smallest unit of its
 * kind, so that any two amounts have a difference and can be said in any unit.
 */
final class Sizes {
  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000);
  private static final Map<Unit, BigDecimal> MOST_IN = new HashMap<>();

  static {
    for (Unit unit : Unit.all()) {
      BigDecimal smallest =
          Unit.of(unit.dimension()).stream()
              .map(Sizes::factor)
              .min(BigDecimal::compareTo)
              .orElseThrow();
      MOST_IN.put(
          unit,
          MOST.multiply(smallest).divide(factor(unit), new MathContext(1, RoundingMode.DOWN)));
    }
  }

  private Sizes() {}

  private static BigDecimal factor(Unit unit) {
    return unit.numerator().divide(unit.denominator(), MathContext.DECIMAL128);
  }

  /**
   * @throws NotebookException when it is more than that, either way
   */
  static void check(String field, Amount amount) {
    BigDecimal most = MOST_IN.get(amount.unit());
    if (amount.value().abs().compareTo(most) > 0) {
      throw new NotebookException(
          Fault.OUT_OF_RANGE,
          field,
          amount,
          amount.withValue(most.negate()),
          amount.withValue(most));
    }
  }
}
