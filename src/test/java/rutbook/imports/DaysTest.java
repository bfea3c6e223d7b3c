package rutbook.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days as spreadsheets write them; 3/4/2026 is never guessed. */
class DaysTest {
  private static final Optional<LocalDate> MAY_3 = Optional.of(LocalDate.of(2026, 5, 3));

  /** 2026-05-03 is the calendar date of ISO 8601; the rest is common practice, no source. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-05-03",
        "2026/5/3",
        "2026-05-03T14:20:00",
        "2026-05-03 14:20",
        "3 May 2026",
        "3. Mai 2026",
        "Sunday, 3 May 2026",
        "May 3, 2026",
        "3rd May 2026",
        "3 mai 2026"
      })
  void whatSaysItselfNeedsNoOrder(String text) {
    for (DayOrder order : DayOrder.values()) {
      assertThat(Days.read(text, order)).as(order.name()).isEqualTo(MAY_3);
    }
    assertThat(Days.read(text, Optional.empty())).isEqualTo(MAY_3);
    assertThat(Days.needsOrder(List.of(text))).isFalse();
  }

  @Test
  void whatDoesNotIsReadAsSaid() {
    assertThat(Days.read("03/05/2026", DayOrder.DAY_FIRST)).isEqualTo(MAY_3);
    assertThat(Days.read("05/03/2026", DayOrder.MONTH_FIRST)).isEqualTo(MAY_3);
    assertThat(Days.read("26-05-03", DayOrder.YEAR_FIRST)).isEqualTo(MAY_3);
    assertThat(Days.read("3.5.26", DayOrder.DAY_FIRST)).isEqualTo(MAY_3);
    assertThat(Days.read("03/05/2026", Optional.empty())).isEmpty();
    assertThat(Days.needsOrder(List.of("03/05/2026"))).isTrue();
  }

  @Test
  void oneDayOfTheColumnSettlesTheOthers() {
    assertThat(Days.orders(List.of("03/05/2026", "16/05/2026")))
        .containsExactly(DayOrder.DAY_FIRST);
    assertThat(Days.orders(List.of("03/05/2026", "05/16/2026")))
        .containsExactly(DayOrder.MONTH_FIRST);
    assertThat(Days.needsOrder(List.of("03/05/2026", "16/05/2026", "remark"))).isFalse();
  }

  @Test
  void theSameNumberTwiceIsTheSameDayInBothOrders() {
    assertThat(Days.needsOrder(List.of("05/05/2026"))).isFalse();
    assertThat(Days.read("05/05/2026", Optional.empty())).contains(LocalDate.of(2026, 5, 5));
  }

  @ParameterizedTest
  @CsvSource({"31/02/2026", "2026-13-01", "1:52.3", "12", "soon", "3 Foo 2026", "112.3", "''"})
  void whatIsNoDayIsNone(String text) {
    assertThat(Days.isDay(text)).isFalse();
  }
}
