package rutbook.units;

import java.math.BigDecimal;
import java.util.Objects;

/** A number and its unit as the rider sees them: rounded for that unit, not what was written. */
public record Shown(BigDecimal number, Unit unit) {
  public Shown {
    Objects.requireNonNull(number, "number");
    Objects.requireNonNull(unit, "unit");
  }

  static Shown asWritten(Amount amount) {
    return new Shown(amount.value(), amount.unit());
  }

  /**
   * Compares exactly what is shown with an amount of the same kind.
   *
   * @throws AmountException when the dimensions differ
   */
  public int compareQuantity(Amount amount) {
    if (amount.dimension() != unit.dimension()) {
      throw new AmountException(
          AmountException.Fault.OTHER_KIND, unit.symbol() + " / " + amount.unit().symbol());
    }
    BigDecimal mine = number.add(unit.offset()).multiply(unit.numerator());
    BigDecimal theirs = amount.value().add(amount.unit().offset());
    return mine.multiply(amount.unit().denominator())
        .compareTo(theirs.multiply(amount.unit().numerator()).multiply(unit.denominator()));
  }

  /** The same without its sign. */
  public Shown size() {
    return new Shown(number.abs(), unit);
  }

  /** A least and a most as they are shown: never crossed, never outside what was written. */
  public record Pair(Shown least, Shown most) {}
}
