package rutbook.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Hours;
import rutbook.notebook.Notebook;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Scope;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Timeline;
import rutbook.units.Duration;

class SamplesTest {
  private final Notebook season = SampleSeason.make();
  private final Timeline timeline = Timeline.of(season, season.bikes().get(0).id());

  @Test
  void theSeasonTellsOfAllThatARiderMeets() {
    assertThat(timeline.sessions()).hasSizeGreaterThanOrEqualTo(14);
    assertThat(timeline.sessions().stream().mapToInt(session -> session.motos().size()).sum())
        .isGreaterThanOrEqualTo(45);
    assertThat(rebuilds(Scope.FORK)).isEqualTo(2);
    assertThat(rebuilds(Scope.SHOCK)).isEqualTo(1);
    assertThat(timeline.entries(Entry.Baseline.class)).hasSize(3);
  }

  private long rebuilds(Scope scope) {
    return timeline.entries(Entry.RebuildJob.class).stream()
        .filter(job -> job.job().scope() == scope)
        .count();
  }

  @Test
  void aLegMismatchIsFoundOnce() {
    List<Reading> off =
        timeline.sessions().stream()
            .flatMap(session -> session.check().stream())
            .flatMap(check -> check.found().stream())
            .map(found -> found.seen())
            .filter(Reading::legsDiffer)
            .toList();
    assertThat(off).hasSize(1);
  }

  @Test
  void theForkOilIsOverdueOnce() {
    ServiceItem oil =
        timeline.sheetOn(timeline.lastDay().orElseThrow()).services().stream()
            .filter(item -> item.kind() == ServiceKind.FORK_OIL)
            .findFirst()
            .orElseThrow();
    Hours hours = timeline.hours();
    double interval = oil.interval().doubleIn(Duration.HOUR);
    double last = 0;
    int overdue = 0;
    for (Entry entry : timeline.entries()) {
      if (Hours.settles(entry, oil)) {
        overdue += hours.at(entry.id()) - last > interval && last > 0 ? 1 : 0;
        last = hours.at(entry.id());
      }
    }
    assertThat(overdue).isEqualTo(1);
  }

  @Test
  void raceSagIsOutsideItsWindowOnce() {
    Range window = timeline.bike().latestSheet().parts().sag().race(End.REAR).orElseThrow();
    assertThat(
            timeline.entries(Entry.SagMeasured.class).stream()
                .filter(sag -> sag.end() == End.REAR)
                .filter(sag -> !window.contains(sag.race().orElseThrow())))
        .hasSize(1);
  }

  @Test
  void theSameSeasonIsMadeEveryTime() {
    assertThat(SampleSeason.make()).isEqualTo(season);
  }

  @Test
  void theSplitForkKeepsEachAdjusterInItsLeg() {
    Notebook split = SampleSplitFork.make();
    assertThat(split.bikes().get(0).latestSheet().setting(Bench.FORK_REBOUND))
        .get()
        .extracting(setting -> setting.carrier().name())
        .isEqualTo("RIGHT");
    assertThat(SampleFirstDay.make().entries()).hasSize(2);
  }

  @Test
  void theSampleFilesAreWhatIsTold() throws java.io.IOException {
    for (var sample : MakeSamples.byName().entrySet()) {
      assertThat(java.nio.file.Files.readAllBytes(MakeSamples.FOLDER.resolve(sample.getKey())))
          .as(sample.getKey())
          .isEqualTo(rutbook.json.NotebookJson.write(sample.getValue()));
    }
  }
}
