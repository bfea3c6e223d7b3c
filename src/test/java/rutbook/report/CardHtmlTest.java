package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import rutbook.compare.Subject;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

class CardHtmlTest {
  private final CardHtml template = new CardHtml(Locale.UK);

  /** By the validator that stands behind the web's own checking service. */
  private static List<String> faults(String page) throws Exception {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
    validator.setNoLangDetect(true);
    String said =
        validator.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    List<String> faults = new ArrayList<>();
    for (JsonNode message : new ObjectMapper().readTree(said).path("messages")) {
      boolean selfClosed = message.path("message").asText().contains("Trailing slash on void");
      if (!selfClosed) {
        faults.add(message.path("type").asText() + ": " + message.path("message").asText());
      }
    }
    return faults;
  }

  @Test
  void everyCardIsValid() throws Exception {
    for (var card : SampleCards.all().entrySet()) {
      assertThat(faults(template.page(card.getValue()))).as(card.getKey()).isEmpty();
    }
  }

  @Test
  void theValidatorFindsWhatIsWrong() throws Exception {
    String page = template.page(new Card("A", List.of(), List.of(), List.of()));
    assertThat(faults(page.replace("<h1>", "<h1 nonsense=\"1\"><div>"))).isNotEmpty();
  }

  @Test
  void noCardRunsAScriptOrRefersToAnythingOutside() {
    Pattern reference =
        Pattern.compile(
            "<script|<link|<img|<iframe|<a\\b|\\b(src|href|srcset|on\\w+)=|url\\(|@import");
    SampleCards.all()
        .forEach(
            (name, card) -> {
              String page = template.page(card).replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
              assertThat(reference.matcher(tags(page)).find()).as(name).isFalse();
              assertThat(page).as(name).doesNotContain("http");
            });
  }

  /** The page without its texts and the values of its attributes, where anything may stand. */
  private static String tags(String page) {
    return page.replaceAll("=\"[^\"]*\"", "=\"\"").replaceAll(">[^<]*<", "><");
  }

  @Test
  void theCardSaysEveryReadingWithItsLimitsInBothSystems() {
    Notebook season = Samples.season();
    Card card =
        SampleCards.cards(season, SampleCards.phrases(season))
            .card(Subject.now(SampleCards.timeline(season)));
    assertThat(template.page(card))
        .contains("345 mL", "11.67 fl oz", "Limits 300 to 380 mL (10.15 to 12.84 fl oz).")
        .contains("2¼ turns out", "Baseline 2 turns out.")
        .contains("The service manual rules on torques, fills and intervals.")
        .contains("Never open a gas-charged reservoir");
  }
}
