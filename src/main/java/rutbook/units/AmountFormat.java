package rutbook.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;

/**
 * Amounts in the units that the rider chose, with the decimal sign of the locale. What was written
 * in the chosen unit is shown digit by digit; what is converted is rounded as finely as it can be
 * measured. Every text reads back with {@link AmountText} in the same locale.
 */
public final class AmountFormat {
  private static final int MOST_MORE_DECIMALS = 3;

  private final Display display;
  private final Numerals numerals;

  public AmountFormat(Display display, Locale locale) {
    this.display = Objects.requireNonNull(display, "display");
    this.numerals = new Numerals(locale);
  }

  public Display display() {
    return display;
  }

  /** The unit in which the rider sees this kind of quantity. */
  public Unit unit(Dimension dimension) {
    return display.unit(dimension);
  }

  /** In the rider's unit, rounded to the nearest: {@code 9.5 fl oz}. */
  public String text(Amount amount) {
    return text(amount, Edge.NONE);
  }

  /** In the rider's unit; a limit is rounded inwards. */
  public String text(Amount amount, Edge edge) {
    return in(amount, display.unit(amount.dimension()), edge);
  }

  /** The number alone, in the rider's unit: for a field or a column that names the unit. */
  public String number(Amount amount) {
    Unit unit = display.unit(amount.dimension());
    return numerals.text(number(amount, unit, Edge.NONE, 0), unit);
  }

  /** Digit by digit in the unit in which it was written. */
  public String asWritten(Amount amount) {
    return withSign(amount.value(), amount.unit());
  }

  /** In a given unit; a limit is rounded inwards. */
  public String in(Amount amount, Unit unit, Edge edge) {
    return withSign(number(amount, unit, edge, 0), unit);
  }

  /** A difference with its sign, in the rider's unit: {@code +0.2 fl oz}, {@code −2 clicks}. */
  public String change(Amount difference) {
    Unit unit = display.unit(difference.dimension());
    BigDecimal number =
        difference.unit() == unit
            ? difference.value()
            : Decimals.rounded(
                Ratio.ofSteps(difference.unit(), unit),
                difference.value(),
                unit,
                Edge.NONE.rounding());
    return (number.signum() > 0 ? "+" : "") + withSign(number, unit);
  }

  /**
   * Where safety is at stake: as written, and beside it in the other system of units, {@code 16
   * lbf·ft (21.7 N·m)}.
   */
  public String both(Amount amount) {
    return both(amount, Edge.NONE);
  }

  /** The same for a limit: what stands in brackets is rounded inwards. */
  public String both(Amount amount, Edge edge) {
    Unit other = otherSystem(amount.unit());
    return other == amount.unit()
        ? asWritten(amount)
        : asWritten(amount) + " (" + in(amount, other, edge) + ")";
  }

  /**
   * Two limits in the rider's unit, both rounded inwards, with as many decimals more as it takes to
   * keep them apart; where that does not help, as they were written.
   */
  public Shown limits(Amount least, Amount most) {
    Unit unit = display.unit(least.dimension());
    boolean crossed = least.compareQuantity(most) > 0;
    for (int more = 0; more <= MOST_MORE_DECIMALS && !crossed; more++) {
      BigDecimal low = number(least, unit, Edge.LEAST, more);
      BigDecimal high = number(most, unit, Edge.MOST, more);
      if (low.compareTo(high) < 0 || low.compareTo(high) == 0 && least.sameQuantity(most)) {
        return new Shown(withSign(low, unit), withSign(high, unit));
      }
    }
    return new Shown(asWritten(least), asWritten(most));
  }

  /** A least and a most as they are shown. */
  public record Shown(String least, String most) {}

  private Unit otherSystem(Unit unit) {
    Unit chosen = display.unit(unit.dimension());
    if (isMetric(unit) != isMetric(chosen)) {
      return chosen;
    }
    return (isMetric(unit) ? Display.US : Display.METRIC).unit(unit.dimension());
  }

  private static boolean isMetric(Unit unit) {
    return !(unit == Volume.US_FLUID_OUNCE
        || unit == Volume.IMPERIAL_FLUID_OUNCE
        || unit == Length.INCH
        || unit == Length.FOOT
        || unit == SpringRate.POUND_FORCE_PER_INCH
        || unit == Pressure.PSI
        || unit == Torque.POUND_FORCE_FOOT
        || unit == Torque.POUND_FORCE_INCH
        || unit == Temperature.FAHRENHEIT
        || unit == Mass.POUND);
  }

  private static BigDecimal number(Amount amount, Unit unit, Edge edge, int more) {
    if (amount.unit() == unit) {
      return amount.value();
    }
    if (amount.dimension() != unit.dimension()) {
      throw new AmountException(
          AmountException.Fault.OTHER_KIND, amount.unit().symbol() + " / " + unit.symbol());
    }
    return Decimals.rounded(
        Ratio.of(amount.unit(), unit), amount.value(), unit, edge.rounding(), more);
  }

  private String withSign(BigDecimal number, Unit unit) {
    return numerals.text(number, unit) + " " + sign(number, unit);
  }

  /** One click, half a turn; two clicks, no turns. */
  private static String sign(BigDecimal number, Unit unit) {
    BigDecimal size = number.abs();
    if (unit == ClickUnit.CLICK && size.compareTo(BigDecimal.ONE) == 0) {
      return "click";
    }
    if (unit == TurnUnit.TURN && size.signum() > 0 && size.compareTo(BigDecimal.ONE) <= 0) {
      return "turn";
    }
    return unit.symbol();
  }
}
