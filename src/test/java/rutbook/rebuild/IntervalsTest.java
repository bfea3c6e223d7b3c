package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.notebook.Bench;
import rutbook.notebook.Due;
import rutbook.notebook.ServiceKind;
import rutbook.units.Duration;

class IntervalsTest {
  private static double forkOil() {
    return Intervals.commonPractice(ServiceKind.FORK_OIL).orElseThrow().doubleIn(Duration.HOUR);
  }

  // Common practice, no source: fork oil about every 30 hours.
  @Test
  void forkOilIsChangedAboutEveryThirtyHours() {
    assertThat(Intervals.commonPractice(ServiceKind.FORK_OIL)).contains(Bench.hours("30"));
    assertThat(Intervals.commonPractice(ServiceKind.OTHER)).isEmpty();
  }

  // The sources of the rows disagree (fading from 20 h on; every 50 h after a first change at
  // 10 h): the default lies between what they say, and no farther from either than their spread.
  @Test
  void theDefaultLiesWithinWhatIsPrinted() {
    List<Row> rows =
        Checks.topic("f-oil").stream().filter(row -> row.id().startsWith("f.interval.")).toList();
    assertThat(rows)
        .extracting(Row::id)
        .containsExactlyInAnyOrder("f.interval.forkoil.mag", "f.interval.newfork.first");
    double[] printed =
        rows.stream().flatMapToDouble(row -> Arrays.stream(row.expectedList(""))).toArray();
    assertThat(forkOil())
        .isBetween(
            Arrays.stream(printed).min().orElseThrow(), Arrays.stream(printed).max().orElseThrow());
    // Where performance suffers, it is not yet forgotten; where it must be done, it is not yet
    // late.
    assertThat(Due.of(20, forkOil())).isEqualTo(Due.NOT_YET);
    assertThat(Due.of(50, forkOil())).isEqualTo(Due.OVERDUE);
  }
}
