package rutbook.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.stats.Summary;
import rutbook.units.Amount;
import rutbook.units.Unit;

/**
 * What a setting was ridden at over several sessions: one value a session, the mean of both legs,
 * in the unit of the setting's step.
 */
public record Spread(int sessions, Amount least, Amount median, Amount most) {
  private static final MathContext DIGITS = new MathContext(10);

  static Spread of(Setting setting, double[] values) {
    Summary summary = Summary.of(values);
    Unit unit = setting.scale().step().unit();
    return new Spread(
        values.length,
        amount(summary.least(), unit),
        amount(summary.median(), unit),
        amount(summary.most(), unit));
  }

  static Amount amount(double value, Unit unit) {
    BigDecimal number = new BigDecimal(value, DIGITS).setScale(4, java.math.RoundingMode.HALF_EVEN);
    return new Amount(number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros(), unit);
  }

  /** Mean of the known legs in the unit of the setting's step; none known is not a number. */
  static double value(Setting setting, Reading reading) {
    List<Amount> known = reading.amounts();
    Unit unit = setting.scale().step().unit();
    return known.stream()
        .filter(amount -> amount.dimension() == unit.dimension())
        .mapToDouble(amount -> amount.doubleIn(unit))
        .average()
        .orElse(Double.NaN);
  }
}
