package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rutbook.compare.FullComparison;
import rutbook.compare.Subject;
import rutbook.drawing.Shape;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Display;
import rutbook.words.Language;
import rutbook.words.Phrases;

/** Numbers along rulers and axes have the sign of the language, on the card and in its PDF. */
class DrawnNumbersTest {
  private static final Pattern POINT = Pattern.compile("−?\\d+\\.\\d+");
  private static final Pattern COMMA = Pattern.compile("−?\\d+,\\d+");

  /** In ounces and inches, where limits have decimals. */
  private static List<Card> cards(Language language) {
    Notebook season = Samples.season();
    Phrases phrases = new Phrases(language, Display.US);
    Timeline timeline = SampleCards.timeline(season);
    List<Entry.Session> sessions = timeline.sessions();
    Entry.Session first = sessions.get(0);
    Entry.Session last = sessions.get(sessions.size() - 1);
    Subject now = Subject.now(timeline);
    Subject before = Subject.of(timeline, first, SampleCards.track(season, first));
    Subject after = Subject.of(timeline, last, SampleCards.track(season, last));
    return List.of(
        SampleCards.cards(season, phrases).card(now),
        SampleCards.compared(
            season, phrases, FullComparison.of(season.shelf(), timeline, before, after)));
  }

  private static List<String> drawn(Card card) {
    List<Card.Picture> pictures = new ArrayList<>();
    for (Card.Block block : card.blocks()) {
      if (block instanceof Card.Rulers rulers) {
        rulers.list().forEach(row -> row.ruler().ifPresent(pictures::add));
      }
      if (block instanceof Card.Figure figure) {
        pictures.add(figure.picture());
      }
    }
    return pictures.stream()
        .flatMap(picture -> picture.drawing().shapes(Shape.Text.class).stream())
        .map(Shape.Text::text)
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theCardFollowsTheLanguage(Language language) {
    Pattern own = language == Language.GERMAN ? COMMA : POINT;
    Pattern other = language == Language.GERMAN ? POINT : COMMA;
    for (Card card : cards(language)) {
      assertThat(drawn(card)).anyMatch(own.asMatchPredicate());
      assertThat(drawn(card)).noneMatch(other.asMatchPredicate());
    }
  }

  @Test
  void soDoesItsPdf() throws IOException {
    for (Card card : cards(Language.GERMAN)) {
      CardPdf template = new CardPdf(Language.GERMAN.locale());
      try (PDDocument document = Loader.loadPDF(template.pdf(card, Paper.A4))) {
        List<String> words = List.of(new PDFTextStripper().getText(document).split("\\s+"));
        assertThat(words).anyMatch(COMMA.asMatchPredicate());
        assertThat(words).noneMatch(POINT.asMatchPredicate());
      }
    }
  }
}
