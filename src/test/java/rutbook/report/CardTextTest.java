package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A card as plain text. */
class CardTextTest {
  @Test
  void aCellWithNothingInItLeavesNoComma() {
    Card.Table motos =
        new Card.Table(
            "Motos",
            List.of("moto", "changed", "feel", "trust"),
            List.of(List.of("1", "", "harsh 2", "5"), List.of("2", "two clicks", "", "6")));
    Card card = new Card("Bike", List.of(), List.of(motos), List.of());
    assertThat(CardText.of(card).lines())
        .contains("1: feel harsh 2, trust 5", "2: changed two clicks, trust 6");
  }
}
