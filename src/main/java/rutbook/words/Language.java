package rutbook.words;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The languages that every sentence of the program exists in. */
public enum Language {
  ENGLISH(Locale.UK),
  GERMAN(Locale.GERMANY);

  private final Locale usual;

  Language(Locale usual) {
    this.usual = usual;
  }

  /**
   * The language with the customs for days and numbers of the country most of its riders are in.
   */
  public Locale locale() {
    return usual;
  }

  /** Its own name in itself, such as "Deutsch". */
  public String ownName() {
    String name = usual.getDisplayLanguage(usual);
    return name.substring(0, 1).toUpperCase(usual) + name.substring(1);
  }

  /** The language of the system where it is one of ours, English otherwise. */
  public static Language of(Locale system) {
    return Stream.of(values())
        .filter(each -> each.usual.getLanguage().equals(system.getLanguage()))
        .findFirst()
        .orElse(ENGLISH);
  }

  /** By its tag, such as "de"; empty for anything else. */
  public static Optional<Language> tagged(String tag) {
    return Stream.of(values()).filter(each -> each.tag().equals(tag)).findFirst();
  }

  /** Such as "de", as in BCP 47. */
  public String tag() {
    return usual.getLanguage();
  }
}
