package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.compare.LapComparison;
import rutbook.compare.LapDifference;
import rutbook.compare.Spread;
import rutbook.compare.TrackDifference;
import rutbook.notebook.Bench;
import rutbook.notebook.Setting;
import rutbook.stats.MotoComparison;
import rutbook.stats.MotoScatter;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;
import rutbook.units.Display;

class ComparedWordsTest {
  private final ComparedWords words = new ComparedWords(Phrases.english(Display.METRIC));

  /** The second side by so many seconds slower, three laps a moto, motos that scatter by 0.3 s. */
  private String said(double by) {
    List<double[]> first = List.of(new double[] {100, 100.4, 99.6});
    List<double[]> second = List.of(new double[] {100 + by, 100.4 + by, 99.6 + by});
    Optional<LapDifference> result =
        MotoComparison.of(second, first, new MotoScatter(0.3, 20)).map(LapDifference::of);
    return words.laps(
        new LapComparison(LapComparison.State.COMPARED, List.of(), List.of(), result, 0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-3.0|3 s a lap quicker, more than noise (95 %: 1.9 to 4.1 s)",
        "3.0|3 s a lap slower, more than noise (95 %: 1.9 to 4.1 s)",
        "0.01|No difference in laps",
      })
  void aDifferenceIsSaidWithItsSenseAndItsInterval(double by, String expected) {
    assertThat(said(by)).isEqualTo(expected);
  }

  @Test
  void whatIsInsideTheNoiseIsNotCalledADifferenceAndSaysWhatWouldTell() {
    assertThat(said(-0.8))
        .isEqualTo(
            "0.8 s a lap quicker, inside the noise: one more moto on each side would tell, if it"
                + " stays so");
    assertThat(said(0.1))
        .isEqualTo(
            "0.1 s a lap slower, inside the noise: not even 30 motos on each side would tell");
  }

  @Test
  void everyStateHasASentence() {
    for (LapComparison.State state : LapComparison.State.values()) {
      if (state != LapComparison.State.COMPARED) {
        assertThat(words.laps(new LapComparison(state, List.of(), List.of(), Optional.empty(), 0)))
            .isNotBlank();
      }
    }
  }

  @Test
  void aMiddleThatNoClickHasIsSaidAsTheTwoBesideItAndAHabitAsItsCount() {
    Setting setting =
        Bench.notebook().bikes().get(0).latestSheet().setting(Bench.SHOCK_REBOUND).orElseThrow();
    Amount between = Amount.of("11.5", ClickUnit.CLICK);
    Spread first = new Spread(4, Bench.clicks(11), between, Bench.clicks(12));
    Spread second = new Spread(5, Bench.clicks(8), Bench.clicks(9), Bench.clicks(12));
    TrackDifference row =
        new TrackDifference(
            setting,
            Optional.of(first),
            Optional.of(second),
            TrackDifference.Verdict.CONSISTENT,
            4,
            0.01,
            Optional.empty());
    assertThat(words.setting(row)).contains("between 11 and 12 out (11 to 12, 4 sessions)");
    assertThat(words.sure(row))
        .startsWith(
            "in 4 of 5 sessions at the second track it was on that side of what is usual at the"
                + " first");
  }
}
