package rutbook.words;

import java.util.function.Supplier;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Numerals;
import rutbook.units.Unit;

/**
 * What the window says of a setting, in the units that the notebook has chosen at that moment:
 * {@link ReadingWords}, {@link ChangeWords} and {@link FaultWords} in one.
 */
public final class SettingWords {
  private final Supplier<Phrases> phrases;

  public SettingWords(Supplier<Phrases> phrases) {
    this.phrases = phrases;
  }

  /** The units that the notebook has chosen now. */
  public Display display() {
    return phrases.get().display();
  }

  /** How numbers along a ruler are written. */
  public Numerals numerals() {
    return phrases.get().amounts().numerals();
  }

  /** The unit in which a kind of quantity is shown, and a bare number is read. */
  public Unit unit(Dimension dimension) {
    return display().unit(dimension);
  }

  /** The unit of a kind of quantity in words: mm, clicks. */
  public String unitName(Dimension dimension) {
    return phrases.get().amounts().unit(dimension);
  }

  /** The bare number: 14, 1¾, 335. */
  public String number(Amount amount) {
    return phrases.get().amounts().numberOf(amount);
  }

  /** Clicks and turns bare, the rest with its unit. */
  public String brief(Amount amount) {
    return readings().brief(amount);
  }

  /** As it stands in the strip, both legs where they differ. */
  public String brief(Reading reading) {
    return readings().brief(reading);
  }

  /** With its unit: 1 click, 1¾ turns, 335 mL. */
  public String amount(Amount amount) {
    return phrases.get().amounts().amount(amount);
  }

  /** In both systems of units: a torque, a fill. */
  public String both(Amount amount) {
    return phrases.get().amounts().both(amount);
  }

  /** What binds, in both systems of units and rounded inwards. */
  public String limits(Range limits) {
    return phrases.get().amounts().limits(limits);
  }

  /** The reading, such as {@code 14 out}, {@code left 12 out, right 14 out}, {@code 335 mL}. */
  public String reading(Setting setting, Reading reading) {
    return readings().reading(setting, reading);
  }

  /** From one reading to another, without the sense: {@code 12 → 14 out}. */
  public String move(Setting setting, Reading from, Reading to) {
    return changes().move(setting, from, to);
  }

  /** How far and in which sense: {@code 2 softer}, {@code ¼ turn slower}; empty for no move. */
  public String sense(Setting setting, Reading from, Reading to) {
    return changes().difference(setting, from, to);
  }

  /** The whole move: {@code 12 → 14 out (2 softer)}. */
  public String change(Setting setting, Reading from, Reading to) {
    return changes().change(setting, from, to);
  }

  /** Why something was refused, with the limit in it. */
  public String refusal(NotebookException refused) {
    return new FaultWords(phrases.get()).what(refused);
  }

  private ReadingWords readings() {
    return new ReadingWords(phrases.get());
  }

  private ChangeWords changes() {
    return new ChangeWords(phrases.get());
  }
}
