package rutbook.words;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import rutbook.notebook.Id;
import rutbook.notebook.Range;
import rutbook.units.Amount;
import rutbook.units.Display;

/**
 * Sentences of the resource bundles in one language and in the rider's units; the core that every
 * maker of words stands on.
 *
 * <p>A bundle is a file {@code rutbook/words/<Area>.properties}; its patterns are those of {@link
 * MessageFormat}, so an apostrophe is written twice. Facts are worded by their kind: amounts in the
 * rider's units, enum constants by their name, days by the language's custom, and text made safe.
 * Whole numbers stay numbers, so that a pattern can choose between one and many.
 */
public final class Phrases {
  private static final String FOLDER = "rutbook.words.";
  private static final ResourceBundle.Control FILES_ONLY =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private final Locale locale;
  private final Display display;
  private final AmountWords amounts;
  private final DayWords days;
  private final Map<String, ResourceBundle> bundles = new ConcurrentHashMap<>();

  public Phrases(Locale locale, Display display) {
    this.locale = locale;
    this.display = display;
    this.days = new DayWords(locale);
    this.amounts = new AmountWords(this);
  }

  public Phrases(Language language, Display display) {
    this(language.locale(), display);
  }

  /** In British English, the language of the bundles without a suffix. */
  public static Phrases english(Display display) {
    return new Phrases(Locale.UK, display);
  }

  public Locale locale() {
    return locale;
  }

  public Display display() {
    return display;
  }

  /** The same language in other units. */
  public Phrases in(Display newDisplay) {
    return new Phrases(locale, newDisplay);
  }

  public AmountWords amounts() {
    return amounts;
  }

  public DayWords days() {
    return days;
  }

  /**
   * The phrase of a bundle, with its facts in place.
   *
   * @throws MissingResourceException when the bundle or the key does not exist
   */
  public String say(String area, String key, Object... facts) {
    MessageFormat pattern = new MessageFormat(bundle(area).getString(key), locale);
    Object[] worded = new Object[facts.length];
    for (int i = 0; i < facts.length; i++) {
      worded[i] = worded(facts[i]);
    }
    return pattern.format(worded);
  }

  /** The phrase, or empty when the bundle has no such key. */
  public Optional<String> sayIfKnown(String area, String key, Object... facts) {
    return bundle(area).containsKey(key) ? Optional.of(say(area, key, facts)) : Optional.empty();
  }

  /** The name of an enum constant within a sentence, such as "braking bumps". */
  public String name(Enum<?> constant) {
    return say("Names", key(constant));
  }

  static String key(Enum<?> constant) {
    return constant.getDeclaringClass().getSimpleName() + "." + constant.name();
  }

  /** Text that somebody typed, made safe to show on one line. */
  public String safe(String text) {
    return SafeText.line(text);
  }

  /** First letter large, for headings and sentences that begin with a name. */
  public String sentence(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(locale) + text.substring(first);
  }

  /** The help of the commands; what is not in it stands in English beside them. */
  public ResourceBundle usage() {
    return bundle("Usage");
  }

  private Object worded(Object fact) {
    if (fact instanceof Integer || fact instanceof Long) {
      return fact;
    }
    if (fact instanceof Number number) {
      return amounts.number(number.doubleValue(), 2);
    }
    if (fact instanceof Amount amount) {
      return amounts.amount(amount);
    }
    if (fact instanceof Range window) {
      return amounts.window(window);
    }
    if (fact instanceof Enum<?> constant) {
      return name(constant);
    }
    if (fact instanceof LocalDate day) {
      return days.day(day);
    }
    if (fact instanceof Id id) {
      return id.text();
    }
    return safe(String.valueOf(fact));
  }

  private ResourceBundle bundle(String area) {
    return bundles.computeIfAbsent(
        area,
        name ->
            ResourceBundle.getBundle(
                FOLDER + name, locale, Phrases.class.getClassLoader(), FILES_ONLY));
  }
}
