package rutbook.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rutbook.compare.Choice;
import rutbook.compare.FullComparison;
import rutbook.compare.Subject;
import rutbook.json.CardAnswer;
import rutbook.notebook.Entry;
import rutbook.report.Card;
import rutbook.report.CardText;
import rutbook.report.Cards;
import rutbook.report.SessionsCsv;

/** Makes the card of a setup, a session or a comparison, or a table of sessions. */
@Command(
    name = "card",
    description =
        "Make a page to print or send: of one reference a setup or session, of two what differs."
            + " References are those of compare; without one it is what is on the bike now. As"
            + " .csv: the sessions of the reference, or all.")
final class CardCommand extends OnNotebook {
  @Parameters(index = "1", arity = "0..1", paramLabel = "REF")
  private Optional<String> first;

  @Parameters(index = "2", arity = "0..1", paramLabel = "REF2")
  private Optional<String> second;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "NAME",
      description = "A file ending in .html, .pdf, .csv or .txt; - prints the text.")
  private String to;

  @Mixin private CardFile file;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    if (to.equals(CardFile.STANDARD_OUTPUT)) {
      String text = CardText.of(card(opened));
      return answer(
          opened,
          Exit.DONE,
          CardAnswer.printed(text),
          pages -> text.lines().forEach(terminal()::plain));
    }
    CardForm form = CardFile.form(opened, to);
    byte[] bytes = form == CardForm.CSV ? csv(opened) : file.bytes(opened, card(opened), form);
    outbox().put(to, bytes, file.mayReplace());
    return answer(
        opened,
        Exit.DONE,
        CardAnswer.written(to, bytes.length),
        pages -> terminal().line(opened.say("card.written", to)));
  }

  private Card card(OpenedNotebook opened) {
    References references = new References(opened);
    Subject subject = references.subject(first.orElse("now"));
    Cards cards = new Cards(opened.notebook().shelf(), opened.timeline(), opened.phrases());
    if (second.isEmpty()) {
      return cards.card(subject);
    }
    FullComparison comparison =
        FullComparison.of(
            opened.notebook().shelf(),
            opened.timeline(),
            subject,
            references.subject(second.get()));
    return cards.card(comparison, opened.effects(opened.effects(), comparison.sides()));
  }

  /** With the mark by which spreadsheets know the letters for UTF-8. */
  private byte[] csv(OpenedNotebook opened) {
    return CardFile.utf8(
        "\uFEFF"
            + SessionsCsv.of(
                opened.notebook().shelf(), opened.timeline(), opened.phrases(), sessions(opened)));
  }

  private List<Entry.Session> sessions(OpenedNotebook opened) {
    List<Entry.Session> all = opened.timeline().sessions();
    if (first.isEmpty()) {
      return all;
    }
    Choice choice = new References(opened).subject(first.get()).choice();
    if (choice instanceof Choice.OfSession it) {
      return List.of(it.session());
    } else if (choice instanceof Choice.OfMoto it) {
      return List.of(it.session());
    } else if (choice instanceof Choice.BestOf it) {
      return all.stream().filter(each -> each.track().equals(it.track().id())).toList();
    }
    return all;
  }
}
