package rutbook.words;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rutbook.notebook.Carrier;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Range;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;
import rutbook.units.AmountException;

/** What the Bike page says: labels, a setting in one line, limits, faults below a field. */
public final class BikeWords {
  private static final String AREA = "Bike";

  private final Phrases phrases;
  private final FaultWords faults;
  private final ReadingWords readings;

  public BikeWords(Phrases phrases) {
    this.phrases = phrases;
    this.faults = new FaultWords(phrases);
    this.readings = new ReadingWords(phrases);
  }

  /** The text under a key of the page's bundle. */
  public String text(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  /** The name of a constant as a label: with a capital. */
  public String name(Enum<?> constant) {
    return phrases.sentence(phrases.name(constant));
  }

  /** The name of a constant within a sentence. */
  public String within(Enum<?> constant) {
    return phrases.name(constant);
  }

  public String day(LocalDate day) {
    return phrases.days().day(day);
  }

  /** In the rider's unit. */
  public String amount(Amount amount) {
    return phrases.amounts().amount(amount);
  }

  /** As it was written, for a field where it is put right: no unit is changed by looking at it. */
  public String written(Amount amount) {
    return phrases.amounts().asWritten(amount);
  }

  /** In both systems of units: torques, and whatever binds. */
  public String both(Amount amount) {
    return phrases.amounts().both(amount);
  }

  /** A number with so many decimals at most. */
  public String number(double number, int decimals) {
    return phrases.amounts().number(number, decimals);
  }

  /** From the least to the most in the rider's unit, rounded inwards. */
  public String range(Range range) {
    return phrases.amounts().window(range);
  }

  /** The same in both systems of units, where a limit is at stake. */
  public String limits(Range range) {
    return phrases.amounts().limits(range);
  }

  /** The limits, the count and the legs of a setting on one line. */
  public String bounds(Sheet sheet, Setting setting) {
    String range = limits(sheet.limits(setting));
    String counted = text("counted." + setting.scale().datum().name(), range);
    return setting.carrier() == Carrier.SINGLE
        ? counted
        : text("bounds.legs", counted, phrases.name(setting.carrier()));
  }

  /** What a greater number does: "more is softer". */
  public String greater(Setting setting) {
    return text("more.is", setting.scale().greater());
  }

  public ReadingWords readings() {
    return readings;
  }

  /** Why an amount was not understood. */
  public String fault(AmountException fault) {
    return faults.sentence(fault);
  }

  /** Why a value cannot be, without its place in the file. */
  public String fault(NotebookException fault) {
    return faults.what(fault);
  }

  /** Things in a row: "a, b and c". */
  public String list(List<String> things) {
    if (things.size() < 2) {
      return String.join("", things);
    }
    String first = String.join(", ", things.subList(0, things.size() - 1));
    return text("and", first, things.get(things.size() - 1));
  }

  /** What is known, joined by dots; a dash when nothing is. */
  public String joined(List<Optional<String>> parts) {
    String text =
        parts.stream()
            .flatMap(Optional::stream)
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" · "));
    return text.isEmpty() ? text("not.known") : text;
  }
}
