package rutbook.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Optional;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Value;
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
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    Unit unit = setting.scale().step().unit();
    Amount least = amount(sorted[0], unit);
    if (sorted[0] == sorted[sorted.length - 1]) {
      return new Spread(values.length, least, least, least);
    }
    return new Spread(
        values.length,
        least,
        amount(Summary.medianOfSorted(sorted), unit),
        amount(sorted[sorted.length - 1], unit));
  }

  static Amount amount(double value, Unit unit) {
    BigDecimal number = new BigDecimal(value, DIGITS).setScale(4, java.math.RoundingMode.HALF_EVEN);
    return new Amount(number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros(), unit);
  }

  /** Mean of the known legs in the unit of the setting's step; none known is not a number. */
  static double value(Setting setting, Reading reading) {
    Unit unit = setting.scale().step().unit();
    double sum = 0;
    int known = 0;
    for (Value value : reading.values()) {
      Optional<Amount> amount = value.known();
      if (amount.isPresent() && amount.get().dimension() == unit.dimension()) {
        sum += number(amount.get(), unit);
        known++;
      }
    }
    return known == 0 ? Double.NaN : sum / known;
  }

  /** Nearly all are written in the unit of the step: those need no conversion. */
  private static double number(Amount amount, Unit unit) {
    return amount.unit() == unit ? amount.value().doubleValue() : amount.doubleIn(unit);
  }
}
