package rutbook.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/** A card as PDF, from the same template as its page, in the bundled font. */
public final class CardPdf {
  private static final String WORDS = "IBM Plex Sans";
  private static final String NUMBERS = "IBM Plex Sans Condensed";
  private static final int REGULAR = 400;
  private static final int SEMI_BOLD = 600;

  /** Stands for a letter that the bundled font does not have; the HTML page shows it. */
  private static final String NOT_IN_FONT = "\uFFFD";

  private final CardHtml template;
  private final PrintFont words = PrintFont.named("IBMPlexSans-Regular");
  private final PrintFont boldWords = PrintFont.named("IBMPlexSans-SemiBold");
  private final PrintFont numbers = PrintFont.named("IBMPlexSansCondensed-Regular");
  private final PrintFont boldNumbers = PrintFont.named("IBMPlexSansCondensed-SemiBold");

  public CardPdf(Locale language) {
    this.template = new CardHtml(language);
  }

  /** The bytes of the file. */
  public byte[] pdf(Card card, Paper paper) {
    XRLog.setLoggingEnabled(false);
    words.onlyThis();
    String css = Resources.text("card.css") + paper.css();
    String page = MarkupText.document((Markup.Element) drawable(template.document(card, css)));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    font(builder, words, WORDS, REGULAR);
    font(builder, boldWords, WORDS, SEMI_BOLD);
    font(builder, numbers, NUMBERS, REGULAR);
    font(builder, boldNumbers, NUMBERS, SEMI_BOLD);
    builder.useSVGDrawer(new SvgPainter(numbers, boldNumbers));
    // So that it can be read out too.
    builder.usePdfUaAccessibility(true);
    builder.useFastMode();
    builder.withProducer("Rutbook");
    builder.withHtmlContent(page, null);
    builder.toStream(out);
    try {
      builder.run();
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return out.toByteArray();
  }

  private static void font(PdfRendererBuilder builder, PrintFont font, String family, int weight) {
    builder.useFont(
        () -> new ByteArrayInputStream(font.bytes()), family, weight, FontStyle.NORMAL, true);
  }

  /** The document with every letter that cannot be set shown as a box. */
  private Markup drawable(Markup markup) {
    if (markup instanceof Markup.Text text) {
      return new Markup.Text(drawable(text.text()));
    } else if (markup instanceof Markup.Element element) {
      List<Markup> children = element.children().stream().map(this::drawable).toList();
      return new Markup.Element(element.name(), element.attributes(), children);
    }
    return markup;
  }

  private String drawable(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              if (words.has(point) && numbers.has(point)) {
                shown.appendCodePoint(point);
              } else {
                shown.append(NOT_IN_FONT);
              }
            });
    return shown.toString();
  }
}
