package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CardPdfTest {
  private final CardPdf template = new CardPdf(Locale.UK);

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyCardIsOnePageWithAllItsReadings(Paper paper) throws IOException {
    for (var each : SampleCards.all().entrySet()) {
      if (each.getKey().startsWith("hostile")) {
        continue;
      }
      try (PDDocument document = Loader.loadPDF(template.pdf(each.getValue(), paper))) {
        assertThat(document.getNumberOfPages()).as(each.getKey() + " " + paper).isEqualTo(1);
        String text = flat(new PDFTextStripper().getText(document));
        for (Card.Block block : each.getValue().blocks()) {
          if (block instanceof Card.Rulers rulers) {
            for (Card.Row row : rulers.list()) {
              assertThat(text).as(each.getKey()).contains(flat(row.name()), flat(row.reading()));
            }
          }
        }
      }
    }
  }

  /** Lines may break anywhere within a cell. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", "");
  }

  @Test
  void theFontIsBundledAndEmbedded() throws IOException {
    Card card = SampleCards.all().get("season-now");
    try (PDDocument document = Loader.loadPDF(template.pdf(card, Paper.A4))) {
      for (PDPage page : document.getPages()) {
        for (var name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.getName()).contains("IBMPlexSans");
          assertThat(font.isEmbedded()).isTrue();
        }
      }
    }
  }

  @Test
  void thePaperIsThatOfThePage() throws IOException {
    Card card = SampleCards.all().get("season-now");
    try (PDDocument a4 = Loader.loadPDF(template.pdf(card, Paper.A4));
        PDDocument letter = Loader.loadPDF(template.pdf(card, Paper.LETTER))) {
      assertThat(Math.round(a4.getPage(0).getMediaBox().getHeight())).isEqualTo(842);
      assertThat(Math.round(letter.getPage(0).getMediaBox().getHeight())).isEqualTo(792);
    }
  }

  @Test
  void hostileTextIsPrintedAsTextAndALetterNotInTheFontAsItsMark() throws IOException {
    Card card = SampleCards.all().get("hostile-session");
    try (PDDocument document = Loader.loadPDF(template.pdf(card, Paper.A4))) {
      String text = flat(new PDFTextStripper().getText(document));
      assertThat(text).contains("<script>alert(1)</script>", "<U+202E>", "\uFFFD\uFFFD");
    }
  }

  @Test
  void anEmptyCardIsAPage() throws IOException {
    Card card = new Card("Nothing", java.util.List.of(), java.util.List.of(), java.util.List.of());
    try (PDDocument document = Loader.loadPDF(template.pdf(card, Paper.A4))) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
    }
  }
}
