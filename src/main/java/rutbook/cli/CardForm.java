package rutbook.cli;

import java.util.Locale;
import java.util.Optional;

/** What a card can be written as, by the ending of the file's name. */
enum CardForm {
  HTML,
  PDF,
  CSV,
  TXT;

  /** Empty for an ending that names none. */
  static Optional<CardForm> of(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    for (CardForm form : values()) {
      if (small.endsWith("." + form.name().toLowerCase(Locale.ROOT))) {
        return Optional.of(form);
      }
    }
    return small.endsWith(".htm") ? Optional.of(HTML) : Optional.empty();
  }
}
