package rutbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Range;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.units.Mass;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.Torque;
import rutbook.units.Unit;
import rutbook.units.Volume;

/**
 * Amounts as text: as written where the rider's unit is the one written in, otherwise converted and
 * rounded to what can be read off an instrument. Quarters of a turn are written as fractions.
 */
public final class AmountWords {
  private static final int MOST_WRITTEN = 12;
  private static final BigDecimal FOUR = BigDecimal.valueOf(4);
  private static final String[] QUARTERS = {"", "¼", "½", "¾"};
  private static final Map<Unit, Integer> DECIMALS =
      Map.ofEntries(
          Map.entry(Volume.MILLILITRE, 0),
          Map.entry(Volume.US_FLUID_OUNCE, 2),
          Map.entry(Volume.IMPERIAL_FLUID_OUNCE, 2),
          Map.entry(Volume.LITRE, 3),
          Map.entry(Length.INCH, 2),
          Map.entry(SpringRate.KILOGRAM_FORCE_PER_MILLIMETRE, 2),
          Map.entry(Pressure.BAR, 2),
          Map.entry(Pressure.KILOPASCAL, 0),
          Map.entry(Mass.POUND, 0),
          Map.entry(Torque.POUND_FORCE_FOOT, 1));

  private final Phrases phrases;

  AmountWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** In the rider's unit, with its sign: "345 mL", "1¾ turns", "14 clicks". */
  public String amount(Amount amount) {
    return withUnit(shown(amount, RoundingMode.HALF_UP));
  }

  /** A least that binds, never rounded below itself. */
  public String least(Amount limit) {
    return withUnit(shown(limit, RoundingMode.CEILING));
  }

  /** A most that binds, never rounded above itself. */
  public String most(Amount limit) {
    return withUnit(shown(limit, RoundingMode.FLOOR));
  }

  /** In the rider's unit and, where it was written in another, as written too. */
  public String both(Amount amount) {
    return andWritten(amount(amount), amount);
  }

  /** {@link #least} and, where it was written in another unit, as written too. */
  public String leastBoth(Amount limit) {
    return andWritten(least(limit), limit);
  }

  /** {@link #most} and, where it was written in another unit, as written too. */
  public String mostBoth(Amount limit) {
    return andWritten(most(limit), limit);
  }

  private String andWritten(String mine, Amount amount) {
    String written = withUnit(amount);
    return mine.equals(written) ? mine : phrases.say("Amounts", "both", mine, written);
  }

  /**
   * The same in the other system of units, such as fl oz beside mL; empty where all measure alike.
   */
  public Optional<String> other(Amount amount) {
    return otherUnit(amount.dimension())
        .map(unit -> withUnit(amount.in(unit, decimals(unit), RoundingMode.HALF_UP)));
  }

  /** Limits in the rider's unit and in the other system, both rounded inwards. */
  public String limits(Range limits) {
    Dimension dimension = limits.least().dimension();
    String mine = limits(limits, phrases.display().unit(dimension));
    return otherUnit(dimension)
        .map(unit -> phrases.say("Amounts", "both", mine, limits(limits, unit)))
        .orElse(mine);
  }

  private String limits(Range limits, Unit unit) {
    Amount least = limits.least().in(unit, decimals(unit), RoundingMode.CEILING);
    Amount most = limits.most().in(unit, decimals(unit), RoundingMode.FLOOR);
    boolean counted = unit.dimension() == Dimension.CLICKS || unit.dimension() == Dimension.TURNS;
    String last = counted ? numberText(most) : withUnit(most);
    return phrases.say("Amounts", "limits", numberText(least), last);
  }

  private Optional<Unit> otherUnit(Dimension dimension) {
    Unit mine = phrases.display().unit(dimension);
    Unit metric = Display.METRIC.unit(dimension);
    Unit other = mine == metric ? Display.US.unit(dimension) : metric;
    return other == mine ? Optional.empty() : Optional.of(other);
  }

  /** A difference with its sign: "+10 mL", "−0.2 N/mm". */
  public String signed(Amount difference) {
    Amount shown = difference(difference);
    String size = withUnit(shown.withValue(shown.value().abs()));
    return switch (shown.value().signum()) {
      case 1 -> phrases.say("Amounts", "plus", size);
      case -1 -> phrases.say("Amounts", "minus", size);
      default -> size;
    };
  }

  /** The number alone in the rider's unit, for columns that name the unit once. */
  public String numberOf(Amount amount) {
    return numberText(shown(amount, RoundingMode.HALF_UP));
  }

  /** A number of the language with at most so many decimals. */
  public String number(double number, int decimals) {
    return format(decimals).format(number);
  }

  /** The sign of the rider's unit for a kind of quantity. */
  public String unit(Dimension dimension) {
    return phrases.display().unit(dimension).symbol();
  }

  private Amount shown(Amount amount, RoundingMode rounding) {
    Unit unit = phrases.display().unit(amount.dimension());
    return amount.in(unit, decimals(unit), rounding);
  }

  /** A difference is scaled and never shifted: five degrees more are five degrees more. */
  private Amount difference(Amount difference) {
    Unit unit = phrases.display().unit(difference.dimension());
    if (unit == difference.unit()) {
      return difference;
    }
    BigDecimal top =
        difference.value().multiply(difference.unit().numerator()).multiply(unit.denominator());
    BigDecimal bottom = difference.unit().denominator().multiply(unit.numerator());
    return new Amount(top.divide(bottom, decimals(unit), RoundingMode.HALF_UP), unit);
  }

  private static int decimals(Unit unit) {
    return DECIMALS.getOrDefault(unit, 1);
  }

  private String withUnit(Amount amount) {
    if (amount.dimension() == Dimension.CLICKS || amount.dimension() == Dimension.TURNS) {
      boolean one =
          amount.value().abs().compareTo(BigDecimal.ONE) <= 0 && amount.value().signum() != 0;
      String key = (amount.dimension() == Dimension.CLICKS ? "click" : "turn") + (one ? "" : "s");
      return phrases.say("Amounts", key, numberText(amount));
    }
    return numberText(amount) + " " + amount.unit().symbol();
  }

  private String numberText(Amount amount) {
    if (amount.dimension() == Dimension.TURNS) {
      BigDecimal quarters = amount.value().abs().multiply(FOUR);
      if (quarters.stripTrailingZeros().scale() <= 0) {
        return quarterTurns(amount.value().signum() < 0, quarters.longValueExact());
      }
    }
    return format(MOST_WRITTEN).format(amount.value());
  }

  private String quarterTurns(boolean negative, long quarters) {
    long whole = quarters / 4;
    String fraction = QUARTERS[(int) (quarters % 4)];
    String text = whole == 0 && !fraction.isEmpty() ? fraction : whole + fraction;
    return negative ? phrases.say("Amounts", "minus", text) : text;
  }

  private NumberFormat format(int decimals) {
    NumberFormat format = NumberFormat.getNumberInstance(phrases.locale());
    format.setGroupingUsed(false);
    format.setMaximumFractionDigits(decimals);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format;
  }
}
