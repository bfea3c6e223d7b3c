package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DueTest {
  @ParameterizedTest
  @CsvSource({
    "0, NOT_YET",
    "26.9, NOT_YET",
    "27, NEARLY",
    "29.9, NEARLY",
    "30, DUE",
    "33, DUE",
    "33.1, OVERDUE",
    "90, OVERDUE"
  })
  void theLastTenthIsNearlyDueAndATenthPastItOverdue(double hours, Due due) {
    assertThat(Due.of(hours, 30)).isEqualTo(due);
  }

  @Test
  void sumsOfTenthsDoNotDecideByAHair() {
    double sum = 0;
    for (int i = 0; i < 300; i++) {
      sum += 0.1;
    }
    assertThat(sum).isNotEqualTo(30.0);
    assertThat(Due.of(sum, 30)).isEqualTo(Due.DUE);
  }

  @Test
  void hoursBelowZeroAreRefused() {
    assertThatThrownBy(() -> Due.of(-1, 30)).hasMessageContaining("-1");
    assertThatThrownBy(() -> Due.of(1, 0)).hasMessageContaining("0");
  }
}
