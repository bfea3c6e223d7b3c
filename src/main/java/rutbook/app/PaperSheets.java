package rutbook.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import rutbook.file.Disk;
import rutbook.file.DurableFile;
import rutbook.file.FileNames;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.rebuild.ShopSheet;
import rutbook.report.Card;
import rutbook.report.CardHtml;
import rutbook.report.CardPdf;
import rutbook.report.Cards;
import rutbook.report.Paper;
import rutbook.ui.Printing;
import rutbook.words.FileWords;
import rutbook.words.Phrases;

/** Sheets for the bench as files beside the notebook, shown by the system's viewer. */
final class PaperSheets implements Printing {
  private static final String AREA = "App";
  private static final int MOST_OF_A_DAY = 99;

  /**
   * What it works with.
   *
   * @param notebook where the open notebook lies; empty while it lies nowhere
   * @param worker where sheets are made and written
   * @param window where answers are given
   */
  record Means(
      Disk disk,
      Clock clock,
      Supplier<Optional<Path>> notebook,
      Executor worker,
      Executor window,
      SystemViewer viewer) {}

  private final Means means;
  private final Phrases phrases;

  PaperSheets(Means means, Phrases phrases) {
    this.means = means;
    this.phrases = phrases;
  }

  @Override
  public void print(Notebook notebook, Sheet sheet, Form form, Consumer<Printed> answer) {
    Optional<Path> beside = means.notebook().get();
    if (beside.isEmpty()) {
      answer.accept(new Printed.Refused(phrases.say(AREA, "sheet.nowhere")));
      return;
    }
    means
        .worker()
        .execute(
            () -> {
              Printed printed = made(notebook, sheet, form, beside.get());
              means.window().execute(() -> answer.accept(printed));
            });
  }

  private Printed made(Notebook notebook, Sheet sheet, Form form, Path beside) {
    FileWords words = new FileWords(phrases, means.clock().getZone());
    return FileNames.beside(beside, name(notebook, sheet, form, 1))
        .then(first -> FileNames.beside(beside, free(notebook, sheet, form, beside)))
        .then(path -> new DurableFile(means.disk()).write(path, bytes(notebook, sheet, form)))
        .<Printed>fold(
            path -> means.viewer().show(path) ? new Printed.Shown(path) : new Printed.Kept(path),
            fault -> new Printed.Refused(words.sentence(fault)));
  }

  /** A name that no file beside the notebook has; the last one tried where all are taken. */
  private String free(Notebook notebook, Sheet sheet, Form form, Path beside) {
    for (int i = 1; i < MOST_OF_A_DAY; i++) {
      String name = name(notebook, sheet, form, i);
      if (!means.disk().exists(beside.resolveSibling(name))) {
        return name;
      }
    }
    return name(notebook, sheet, form, MOST_OF_A_DAY);
  }

  private String name(Notebook notebook, Sheet sheet, Form form, int number) {
    String bike =
        notebook
            .shelf()
            .bike(sheet.bike())
            .map(each -> each.name())
            .orElse("")
            .replaceAll("[^\\p{L}\\p{N} _-]", "-");
    String kind =
        phrases.say(AREA, sheet instanceof Sheet.Work ? "sheet.work" : "sheet.shop", bike);
    String again = number == 1 ? "" : " (" + number + ")";
    String ending = form == Form.PDF ? ".pdf" : ".html";
    return kind + " " + LocalDate.now(means.clock()) + again + ending;
  }

  private byte[] bytes(Notebook notebook, Sheet sheet, Form form) {
    Phrases spoken = phrases.in(notebook.display());
    Card card = card(notebook, sheet, spoken, means.clock().getZone());
    return form == Form.PDF
        ? new CardPdf(spoken.locale()).pdf(card, Paper.usual(notebook.display()))
        : new CardHtml(spoken.locale()).page(card).getBytes(StandardCharsets.UTF_8);
  }

  private static Card card(Notebook notebook, Sheet sheet, Phrases spoken, ZoneId zone) {
    Timeline timeline = Timeline.of(notebook, sheet.bike());
    Cards cards = new Cards(notebook.shelf(), timeline, spoken);
    return sheet instanceof Sheet.Work
        ? cards.workSheet(sheet.plan(), zone)
        : cards.shopSheet(
            ShopSheet.of(notebook.shelf(), timeline, sheet.plan().from()), sheet.plan().sheet());
  }
}
