package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;

class SettingHistoryTest {
  private static final Setting COMPRESSION =
      Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();

  private static List<Reading> readings(SettingHistory history) {
    return history.steps().stream().map(SettingHistory.Step::reading).toList();
  }

  @Test
  void aStepIsWhereTheReadingChangedAndNowhereElse() {
    Reading twelve = Reading.bothLegs(Bench.clicks(12));
    Reading fourteen = Reading.bothLegs(Bench.clicks(14));
    Timeline timeline =
        Rides.timeline(
            Rides.session(0, Bench.HOLLOW, Rides.compression(12), Rides.moto("a")),
            Rides.session(
                7,
                Bench.HOLLOW,
                Rides.compression(12),
                Rides.moto("b"),
                Rides.changed(Rides.moto("c"), Bench.FORK_COMPRESSION, fourteen),
                Rides.moto("d")));
    SettingHistory history = SettingHistory.of(timeline, COMPRESSION);
    List<Reading> readings = readings(history);
    assertThat(readings.subList(readings.size() - 2, readings.size()))
        .containsExactly(twelve, fourteen);
    SettingHistory.Step last = history.steps().get(history.steps().size() - 1);
    assertThat(last.day()).isEqualTo(Rides.MAY.plusDays(7));
    assertThat(last.moto()).isEqualTo(OptionalInt.of(1));
    assertThat(history.marks()).allMatch(mark -> mark.kind() == SettingHistory.Kind.BASELINE);
  }

  @Test
  void theLastStepIsWhatIsOnTheBikeNow() {
    Notebook season = Samples.season();
    Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
    for (SettingHistory history : SettingHistory.of(timeline)) {
      Reading now = timeline.now().reading(history.setting().id()).orElseThrow();
      List<Reading> readings = readings(history);
      assertThat(readings.get(readings.size() - 1).sameAs(now))
          .as(history.setting().name())
          .isTrue();
    }
  }

  @Test
  void aBikeWithNothingNotedHasNoSteps() {
    Notebook empty = Notebook.empty(new rutbook.notebook.NotebookId("n")).with(Bench.shelf());
    SettingHistory history = SettingHistory.of(Timeline.of(empty, Bench.BIKE), COMPRESSION);
    assertThat(history.steps()).isEmpty();
    assertThat(history.marks()).isEmpty();
  }
}
