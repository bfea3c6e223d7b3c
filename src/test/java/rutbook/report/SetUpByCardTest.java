package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What somebody who never saw the bike asked of its card is answered on it. */
class SetUpByCardTest {
  private static List<String> lines(String name) {
    return CardText.of(SampleCards.all().get(name)).lines().toList();
  }

  @Test
  void aSetupSaysOfEverySettingWhatIsOnTheBikeNowAndWhatToDo() {
    Card card = SampleCards.all().get("season-setup");
    List<Card.Row> rows =
        card.blocks().stream()
            .filter(Card.Rulers.class::isInstance)
            .flatMap(block -> ((Card.Rulers) block).list().stream())
            .toList();
    assertThat(rows).hasSize(13).allSatisfy(row -> assertThat(row.todo().text()).isNotEmpty());
    assertThat(rows)
        .filteredOn(row -> !row.todo().done())
        .extracting(Card.Row::name)
        .containsExactly("Fork compression", "Shock high-speed compression", "Shock rebound");
    assertThat(lines("season-setup"))
        .contains(
            "Shock rebound: 10 out (clicks from closed) – Now 12 out: 2 clicks in.",
            "Fork spring (each leg): 4.6 N/mm (26.3 lbf/in) – As it is.");
  }

  @Test
  void theBikeAsItStandsAsksForNothing() {
    assertThat(lines("season-now"))
        .anyMatch(line -> line.startsWith("As the bike stands on 17 Oct 2026"))
        .noneMatch(line -> line.contains("As it is.") || line.contains("Now "));
  }

  @Test
  void eachSagHasItsDayAndSagDecidesOverPreload() {
    assertThat(lines("season-now"))
        .anyMatch(line -> line.startsWith("Rear race sag, measured: 104 mm (4.09 in) on 11 Jul"))
        .anyMatch(line -> line.contains("race sag decides: move Shock preload"));
  }
}
