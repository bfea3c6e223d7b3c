package rutbook.words;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.units.AmountException;
import rutbook.units.Display;

/** Labels and sentences of the window that belong to no other area, in the rider's language. */
public final class WindowWords {
  private static final String AREA = "Window";

  private final Phrases phrases;
  private final Locale locale;

  public WindowWords(Locale locale) {
    this.locale = locale;
    this.phrases = new Phrases(locale, Display.METRIC);
  }

  public Locale locale() {
    return locale;
  }

  /** The text under a key, with the facts put into their places. */
  public String text(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  /**
   * The trade's word for a section, a symptom, an end and the like, as it stands in a sentence; a
   * role of a setting in short.
   */
  public String name(Enum<?> thing) {
    return phrases.sayIfKnown(AREA, Phrases.key(thing)).orElseGet(() -> phrases.name(thing));
  }

  /** The same as it stands alone or first, with a capital. */
  public String label(Enum<?> thing) {
    return phrases.sentence(name(thing));
  }

  /** The name of an edit, as undo and redo tell it. */
  public String edit(Edit edit) {
    if (edit instanceof Edit.Together together) {
      Optional<Edit> lead = together.lead();
      if (lead.isPresent()) {
        return edit(lead.get());
      }
    }
    String name = edit.getClass().getName();
    return text("edit." + name.substring(name.lastIndexOf('.') + 1).replace('$', '.'));
  }

  /** Why what was typed is no amount. */
  public String fault(AmountException fault) {
    return new FaultWords(phrases).sentence(fault);
  }

  public String day(LocalDate day) {
    return DateTimeFormatter.ofPattern(text("day.long"), locale).format(day);
  }

  public String shortDay(LocalDate day) {
    return DateTimeFormatter.ofPattern(text("day.short"), locale).format(day);
  }

  public String month(YearMonth month) {
    return DateTimeFormatter.ofPattern("LLLL", locale).format(month);
  }

  public String time(LocalTime time) {
    return DateTimeFormatter.ofPattern("HH:mm", locale).format(time);
  }

  public String lap(long millis) {
    return phrases.days().lap(millis);
  }

  /** Hours with one decimal at most. */
  public String hours(double hours) {
    return phrases.amounts().number(hours, 1);
  }
}
