package rutbook.words;

import java.util.Optional;
import rutbook.notebook.End;
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

  public ChangeWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
  }

  /** From one reading to another; legs apart where they move differently. */
  public String change(Setting setting, Reading from, Reading to) {
    if (!(from instanceof Reading.Pair a) || !(to instanceof Reading.Pair b)) {
      return change(setting, from.values().get(0), to.values().get(0));
    }
    String left = change(setting, a.left(), b.left());
    String right = change(setting, a.right(), b.right());
    return left.equals(right) ? left : phrases.say(AREA, "legs.change", left, right);
  }

  /** From one value to another: the same twice is said once. */
  public String change(Setting setting, Value from, Value to) {
    Optional<Amount> a = from.known();
    Optional<Amount> b = to.known();
    if (a.isEmpty() || b.isEmpty()) {
      String before = readings.value(setting, from);
      String after = readings.value(setting, to);
      return before.equals(after) ? after : phrases.say(AREA, "change.plain", before, after);
    }
    return change(setting, a.get(), b.get());
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

  /** From one value to another without the sense: "12 → 14 out"; the same twice is said once. */
  public String move(Setting setting, Value from, Value to) {
    String after = readings.value(setting, to);
    boolean same = new Reading.One(from).sameAs(new Reading.One(to));
    if (same) {
      return after;
    }
    String before =
        from.known()
            .map(amount -> readings.bare(setting, amount))
            .orElseGet(() -> readings.value(setting, from));
    return phrases.say(AREA, "change.plain", before, after);
  }

  /** The difference alone, with its sense: "2 softer", "+10 mL, firmer", "same". */
  public String difference(Setting setting, Amount from, Amount to) {
    Optional<Sense> sense = setting.sense(from, to);
    if (sense.isEmpty()) {
      return phrases.say(AREA, "same");
    }
    Amount by = to.minus(from);
    String word = sense(setting, sense.get());
    if (by.dimension() == Dimension.CLICKS || by.dimension() == Dimension.TURNS) {
      Amount size = by.withValue(by.value().abs());
      String number =
          by.dimension() == Dimension.CLICKS
              ? phrases.amounts().numberOf(size)
              : phrases.amounts().amount(size);
      return phrases.say(AREA, "difference.counted", number, word);
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
