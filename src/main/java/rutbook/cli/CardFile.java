package rutbook.cli;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import picocli.CommandLine.Option;
import rutbook.report.Card;
import rutbook.report.CardHtml;
import rutbook.report.CardPdf;
import rutbook.report.CardText;
import rutbook.report.Paper;
import rutbook.words.Phrases;

/** The options of a command that leaves a card behind, and how it is made. */
final class CardFile {
  static final String STANDARD_OUTPUT = "-";

  @Option(names = "--force", description = "Replace the file when it is already there.")
  private boolean force;

  @Option(
      names = "--paper",
      defaultValue = "",
      description = "a4 or letter, for PDF; otherwise what goes with the units.")
  private String paper;

  boolean mayReplace() {
    return force;
  }

  /** The card as bytes of a form. */
  byte[] bytes(OpenedNotebook opened, Card card, CardForm form) {
    Phrases phrases = opened.phrases();
    return switch (form) {
      case HTML -> utf8(new CardHtml(phrases.locale()).page(card));
      case PDF -> new CardPdf(phrases.locale()).pdf(card, paper(opened));
      case TXT -> utf8(CardText.of(card));
      case CSV -> throw Refusal.use(opened.say("card.no-csv"));
    };
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private Paper paper(OpenedNotebook opened) {
    return switch (paper) {
      case "" -> Paper.usual(opened.phrases().display());
      case "a4" -> Paper.A4;
      case "letter" -> Paper.LETTER;
      default -> throw Refusal.use(opened.say("card.paper", paper));
    };
  }

  /** The form that a name asks for. */
  static CardForm form(OpenedNotebook opened, String name) {
    Optional<CardForm> form = CardForm.of(name);
    return form.orElseThrow(() -> Refusal.use(opened.say("card.form", name)));
  }
}
