package rutbook.ui.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.notebook.Lap;
import rutbook.words.WindowWords;

/** Lap times out of whatever was copied. */
class PastedLapsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1:52.3|112300",
        "112.3|112300",
        "112|112000",
        "1:52|112000",
        "0:59.999|59999",
        "1:02:03.4|3723400",
        "1:52,3|112300",
        "Lap 3: 1:52.3|112300",
        "3. 1:52.3|112300",
        "#3 1:52.3|112300",
        "112.3 s|112300",
        "1:52.34567|112345"
      })
  void aTimeIsReadHoweverItIsWritten(String text, long millis) {
    assertThat(PastedLaps.of(text)).isEqualTo(new PastedLaps(List.of(Lap.of(millis)), List.of()));
  }

  @Test
  void linesSemicolonsAndCommasPartLaps() {
    List<Lap> three = List.of(Lap.of(112_300), Lap.of(111_900), Lap.of(113_000));
    assertThat(PastedLaps.of("1:52.3\n1:51.9\r\n1:53.0").laps()).isEqualTo(three);
    assertThat(PastedLaps.of("1:52.3, 1:51.9, 1:53.0").laps()).isEqualTo(three);
    assertThat(PastedLaps.of("1:52,3; 1:51,9; 1:53,0").laps()).isEqualTo(three);
    assertThat(PastedLaps.of("1:52,3\n1:51,9\n1:53,0").laps()).isEqualTo(three);
  }

  @Test
  void whatIsNoLapIsToldAndNotLost() {
    PastedLaps pasted = PastedLaps.of("1:52.3\nslow one\n1:72.0\n0\n1:53.0");
    assertThat(pasted)
        .isEqualTo(
            new PastedLaps(
                List.of(Lap.of(112_300), Lap.of(113_000)), List.of("slow one", "1:72.0", "0")));
  }

  @Test
  void nothingIsNothing() {
    assertThat(PastedLaps.of(" \n,; \n")).isEqualTo(new PastedLaps(List.of(), List.of()));
  }

  @Test
  void aLapLongerThanAnyIsTold() {
    assertThat(PastedLaps.of("99:59:59").laps()).isEmpty();
    assertThat(PastedLaps.of("99:59:59").bad()).containsExactly("99:59:59");
  }

  @Property(tries = 200, seed = "11")
  void whatTheWindowWritesIsReadBack(
      @ForAll @Size(max = 20) List<@LongRange(min = 1, max = 3_000_000) Long> millis) {
    WindowWords words = new WindowWords(java.util.Locale.UK);
    String text = String.join("\n", millis.stream().map(words::lap).toList());
    assertThat(PastedLaps.of(text).laps()).isEqualTo(millis.stream().map(Lap::of).toList());
  }
}
