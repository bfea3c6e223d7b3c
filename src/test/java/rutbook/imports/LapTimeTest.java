package rutbook.imports;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lap times as timing systems write them; the ways of writing are common practice, no source. */
class LapTimeTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1:52.3|112300",
        "112.3|112300",
        "0:01:52.300|112300",
        "00:01:52.300|112300",
        "1:52,3|112300",
        "112,3|112300",
        "1:52:300|112300",
        "1'52.3|112300",
        "1'52\"300|112300",
        "112.3 s|112300",
        "112.3 sec|112300",
        "1:52|112000",
        "0:01:52|112000",
        "62|62000",
        "1:02:03.4|3723400",
        "1:52.34567|112345"
      })
  void aTimeIsReadHoweverItIsWritten(String text, long millis) {
    assertThat(LapTime.millis(text, LapUnit.SECONDS)).hasValue(millis);
  }

  @Test
  void aBareNumberCountsWhatWasSaid() {
    assertThat(LapTime.millis("112300", LapUnit.MILLISECONDS)).hasValue(112_300);
    assertThat(LapTime.millis("1:52.3", LapUnit.MILLISECONDS)).hasValue(112_300);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "DNF", "1:72.0", "1:60:00", "-1:52.3", "1:52.3.4", "1;52", "+1 lap"})
  void whatIsNoTimeIsNone(String text) {
    assertThat(LapTime.millis(text, LapUnit.SECONDS)).isEmpty();
  }
}
