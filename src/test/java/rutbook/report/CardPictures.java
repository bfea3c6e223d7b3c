package rutbook.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import rutbook.notebook.Notebook;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.ShopSheet;
import rutbook.samples.Samples;

/** Cards and sheets of the samples as HTML, PDF and pictures in {@code target/cards}. */
public final class CardPictures {
  private static final Path FOLDER = Path.of("target", "cards");
  private static final int DOTS_PER_INCH = 110;

  private CardPictures() {}

  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(FOLDER);
    Map<String, Card> cards = SampleCards.all();
    Notebook season = Samples.season();
    Timeline timeline = SampleCards.timeline(season);
    Cards maker = SampleCards.cards(season, SampleCards.phrases(season));
    PlanFrom fork =
        PlanFrom.beginning(timeline, Scope.FORK, Set.of(Renewed.OIL, Renewed.SEALS)).orElseThrow();
    cards.put(
        "work-sheet",
        maker.workSheet(Planner.plan(fork, Advisor.SILENT), java.time.ZoneOffset.UTC));
    PlanFrom shock = PlanFrom.beginning(timeline, Scope.SHOCK, Set.of(Renewed.OIL)).orElseThrow();
    ShopSheet shop = ShopSheet.of(season.shelf(), timeline, shock);
    cards.put("shop-sheet", maker.shopSheet(shop, shock.sheet()));
    for (Map.Entry<String, Card> card : cards.entrySet()) {
      write(card.getKey(), card.getValue());
    }
  }

  private static void write(String name, Card card) throws IOException {
    Files.writeString(FOLDER.resolve(name + ".html"), new CardHtml(Locale.UK).page(card));
    byte[] pdf = new CardPdf(Locale.UK).pdf(card, Paper.A4);
    Files.write(FOLDER.resolve(name + ".pdf"), pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        Path picture = FOLDER.resolve(name + "-" + (page + 1) + ".png");
        ImageIO.write(renderer.renderImageWithDPI(page, DOTS_PER_INCH), "png", picture.toFile());
      }
    }
  }
}
