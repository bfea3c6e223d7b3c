package rutbook.words;

import java.math.BigDecimal;
import java.util.Optional;
import rutbook.notebook.Range;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.ClickUnit;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Edge;
import rutbook.units.Numerals;
import rutbook.units.Shown;
import rutbook.units.TurnUnit;
import rutbook.units.Unit;

/**
 * Amounts as text, in the rider's units and with the decimal sign of the language: "345 mL", "1¾
 * turns", "14 clicks". In English, {@link rutbook.units.AmountText} reads every one of them back.
 */
public final class AmountWords {
  private static final String AREA = "Amounts";

  private final Phrases phrases;
  private final Numerals numerals;

  AmountWords(Phrases phrases) {
    this.phrases = phrases;
    this.numerals = Numerals.of(phrases.locale());
  }

  /** In the rider's unit, with its sign. */
  public String amount(Amount amount) {
    return text(display().shown(amount, Edge.NONE));
  }

  /** Digit by digit in the unit in which it was written. */
  public String asWritten(Amount amount) {
    return text(display().with(amount.unit()).shown(amount, Edge.NONE));
  }

  /** In the rider's unit, never outside limits that the amount itself keeps. */
  public String inside(Amount amount, Range limits) {
    return text(display().shownInside(amount, limits.least(), limits.most()));
  }

  /** What stands beside {@link #inside} in the other system; empty where all measure alike. */
  public Optional<String> otherInside(Amount amount, Range limits) {
    return display().besideInside(amount, limits.least(), limits.most()).map(this::text);
  }

  /** A least that binds, never rounded below itself. */
  public String least(Amount limit) {
    return text(display().shown(limit, Edge.LEAST));
  }

  /** A most that binds, never rounded above itself. */
  public String most(Amount limit) {
    return text(display().shown(limit, Edge.MOST));
  }

  /** In both systems of units, the rider's first: "21.7 N·m (16 lbf·ft)". For torques and fills. */
  public String both(Amount amount) {
    return both(amount, Edge.NONE);
  }

  /** {@link #least} in both systems of units. */
  public String leastBoth(Amount limit) {
    return both(limit, Edge.LEAST);
  }

  /** {@link #most} in both systems of units. */
  public String mostBoth(Amount limit) {
    return both(limit, Edge.MOST);
  }

  private String both(Amount amount, Edge edge) {
    return both(display().shown(amount, edge), display().beside(amount, edge));
  }

  private String both(Shown mine, Optional<Shown> other) {
    return other.isPresent()
        ? phrases.say(AREA, "both", text(mine), text(other.get()))
        : text(mine);
  }

  /** What stands beside {@link #amount} in {@link #both}; empty where all measure alike. */
  public Optional<String> other(Amount amount) {
    return display().beside(amount, Edge.NONE).map(this::text);
  }

  /** From a least to a most that bind, in both systems: "296 to 384 mL (10 to 13 fl oz)". */
  public String limits(Range limits) {
    String mine = window(limits);
    return display()
        .limitsBeside(limits.least(), limits.most())
        .map(other -> phrases.say(AREA, "both", mine, window(other)))
        .orElse(mine);
  }

  /** A window that is wished for, in the rider's unit: "95 to 105 mm". */
  public String window(Range window) {
    return window(display().limits(window.least(), window.most()));
  }

  private String window(Shown.Pair shown) {
    boolean oneUnit = shown.least().unit() == shown.most().unit();
    String least = oneUnit ? numerals.text(shown.least()) : text(shown.least());
    return phrases.say(AREA, "limits", least, text(shown.most()));
  }

  /** A difference with its sign: "+10 mL", "−0.2 N/mm". */
  public String signed(Amount difference) {
    Shown step = display().step(difference);
    return switch (step.number().signum()) {
      case 1 -> phrases.say(AREA, "plus", text(step.size()));
      case -1 -> phrases.say(AREA, "minus", text(step.size()));
      default -> text(step);
    };
  }

  /** The size of a difference, without its sign. */
  public String size(Amount difference) {
    return text(display().step(difference).size());
  }

  /** The number alone in the rider's unit, for columns and fields that name the unit. */
  public String numberOf(Amount amount) {
    return numerals.text(display().shown(amount, Edge.NONE));
  }

  /** A number of the language with at most so many decimals. */
  public String number(double number, int decimals) {
    return numerals.text(number, decimals);
  }

  /** How numbers are written, for drawings. */
  public Numerals numerals() {
    return numerals;
  }

  /** The rider's unit for a kind of quantity, as {@link #name} has it. */
  public String unit(Dimension dimension) {
    return name(display().unit(dimension));
  }

  /** The sign of a unit; clicks and turns have none and are said. */
  public String name(Unit unit) {
    if (unit == ClickUnit.CLICK) {
      return phrases.say(AREA, "unit.clicks");
    }
    return unit == TurnUnit.TURN ? phrases.say(AREA, "unit.turns") : unit.symbol();
  }

  private Display display() {
    return phrases.display();
  }

  /** One click, half a turn; two clicks, no turns. */
  private String text(Shown shown) {
    String number = numerals.text(shown);
    BigDecimal size = shown.number().abs();
    if (shown.unit() == ClickUnit.CLICK) {
      return phrases.say(AREA, size.compareTo(BigDecimal.ONE) == 0 ? "click" : "clicks", number);
    }
    if (shown.unit() == TurnUnit.TURN) {
      boolean one = size.signum() > 0 && size.compareTo(BigDecimal.ONE) <= 0;
      return phrases.say(AREA, one ? "turn" : "turns", number);
    }
    return shown.unit() == Angle.DEGREE
        ? phrases.say(AREA, "degrees", number)
        : phrases.say(AREA, "measured", number, shown.unit().symbol());
  }
}
