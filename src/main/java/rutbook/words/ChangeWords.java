package rutbook.words;

import java.util.Optional;
import java.util.function.BiFunction;
import rutbook.notebook.End;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * What moves from one reading to another, always with the number and the sense: "12 → 14 out (2
 * softer)", "335 mL → 345 mL (+10 mL, firmer)", "5 mm → 7 mm (+2 mm, lowers the front)".
 */
public final class ChangeWords {
  private static final String AREA = "Readings";

  private final Phrases phrases;
  private final ReadingWords readings;
  private final boolean spelled;

  public ChangeWords(Phrases phrases) {
    this(phrases, new ReadingWords(phrases), false);
  }

  private ChangeWords(Phrases phrases, ReadingWords readings, boolean spelled) {
    this.phrases = phrases;
    this.readings = readings;
    this.spelled = spelled;
  }

  /** The same for whoever does not know the bike: "12 → 14 out (2 clicks softer)". */
  public ChangeWords spelled() {
    return new ChangeWords(phrases, readings, true);
  }

  /** The same for what is to be set: in no unit is it said to lie beyond limits that it keeps. */
  public ChangeWords within(Range limits) {
    return new ChangeWords(phrases, readings.within(limits), spelled);
  }

  /** From one reading to another; legs apart where they move differently. */
  public String change(Setting setting, Reading from, Reading to) {
    return legs(from, to, (before, after) -> change(setting, before, after));
  }

  /** From one value to another: the same twice is said once. */
  public String change(Setting setting, Value from, Value to) {
    return bothKnown(from, to)
        ? change(setting, from.known().orElseThrow(), to.known().orElseThrow())
        : unknownMove(setting, from, to);
  }

  /** From one amount to another. */
  public String change(Setting setting, Amount from, Amount to) {
    String after = readings.amount(setting, to);
    if (from.sameQuantity(to)) {
      return after;
    }
    return phrases.say(
        AREA, "change", readings.bare(setting, from), after, difference(setting, from, to));
  }

  /** {@link #change} without the difference: "12 → 14 out". */
  public String move(Setting setting, Reading from, Reading to) {
    return legs(from, to, (before, after) -> move(setting, before, after));
  }

  /** The same for one value; the same twice is said once. */
  public String move(Setting setting, Value from, Value to) {
    if (!bothKnown(from, to)) {
      return unknownMove(setting, from, to);
    }
    Amount before = from.known().orElseThrow();
    String after = readings.amount(setting, to.known().orElseThrow());
    return before.sameQuantity(to.known().orElseThrow())
        ? after
        : phrases.say(AREA, "change.plain", readings.bare(setting, before), after);
  }

  private String unknownMove(Setting setting, Value from, Value to) {
    String before = readings.value(setting, from);
    String after = readings.value(setting, to);
    return before.equals(after) ? after : phrases.say(AREA, "change.plain", before, after);
  }

  /**
   * The difference alone: "2 softer", "left same, right 2 softer"; empty where nothing moved or
   * something is not known.
   */
  public String difference(Setting setting, Reading from, Reading to) {
    boolean known =
        from.values().stream().allMatch(value -> value.known().isPresent())
            && to.values().stream().allMatch(value -> value.known().isPresent());
    return !known || from.sameAs(to)
        ? ""
        : legs(
            from,
            to,
            (before, after) ->
                difference(setting, before.known().orElseThrow(), after.known().orElseThrow()));
  }

  private String legs(Reading from, Reading to, BiFunction<Value, Value, String> said) {
    if (!(from instanceof Reading.Pair a) || !(to instanceof Reading.Pair b)) {
      return said.apply(from.values().get(0), to.values().get(0));
    }
    String left = said.apply(a.left(), b.left());
    String right = said.apply(a.right(), b.right());
    return left.equals(right) ? left : phrases.say(AREA, "legs", left, right);
  }

  private static boolean bothKnown(Value from, Value to) {
    return from.known().isPresent() && to.known().isPresent();
  }

  /** The difference alone, with its sign: "2 softer", "+10 mL, firmer", "same". */
  public String difference(Setting setting, Amount from, Amount to) {
    Optional<Sense> sense = setting.sense(from, to);
    if (sense.isEmpty()) {
      return phrases.say(AREA, "same");
    }
    Amount by = to.minus(from);
    String word = sense(setting, sense.get());
    if (by.dimension() == Dimension.CLICKS && !spelled) {
      Amount size = by.withValue(by.value().abs());
      return phrases.say(AREA, "difference.counted", phrases.amounts().numberOf(size), word);
    }
    if (by.dimension() == Dimension.CLICKS || by.dimension() == Dimension.TURNS) {
      return phrases.say(AREA, "difference.counted", phrases.amounts().size(by), word);
    }
    return phrases.say(AREA, "difference.measured", phrases.amounts().signed(by), word);
  }

  /** The difference of one leg said with the leg: "right 2 firmer". */
  public String ofLeg(Side leg, String said) {
    return phrases.say(AREA, "leg", readings.leg(leg), said);
  }

  /** What a sense does on this setting: "softer", "faster", "lowers the front". */
  public String sense(Setting setting, Sense sense) {
    boolean moves = sense == Sense.HIGHER || sense == Sense.LOWER;
    End end = setting.role().end();
    return moves ? phrases.say(AREA, "moves." + sense.name(), end) : phrases.name(sense);
  }
}
