package rutbook.samples;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.BikeId;
import rutbook.notebook.End;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.Job;
import rutbook.notebook.Notebook;
import rutbook.notebook.OilId;
import rutbook.notebook.Outcome;
import rutbook.notebook.Placed;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Timeline;

/** Rebuilds of the sample season as the rider walked them: each setting put where it belongs. */
final class SampleRebuilds {
  private SampleRebuilds() {}

  static Entry.RebuildJob walked(
      Notebook notebook,
      BikeId bike,
      Head head,
      Scope scope,
      Set<Renewed> renewed,
      Optional<OilId> oil,
      Setup target) {
    Timeline timeline = Timeline.of(notebook, bike);
    Sheet sheet = timeline.sheetOn(head.day());
    Job job =
        new Job(
            scope,
            renewed,
            timeline.baseline().orElseThrow().id(),
            timeline.now(),
            sheet.from(),
            oil);
    List<StepDone> done = new ArrayList<>();
    Instant at = head.day().atTime(9, 0).toInstant(ZoneOffset.UTC);
    for (Placed placed : target.placed()) {
      Setting setting = sheet.setting(placed.setting()).orElseThrow();
      boolean touched = setting.role().end() == (scope == Scope.FORK ? End.FRONT : End.REAR);
      if (touched && setting.role().isClicker()
          || !timeline.now().placed(placed.setting()).equals(Optional.of(placed))) {
        at = at.plusSeconds(600);
        done.add(
            new StepDone(
                StepId.placing(setting.id()),
                at,
                setting.role().isClicker()
                    ? new Entered.Counted(placed.reading())
                    : new Entered.Measured(placed.reading(), Optional.empty())));
      }
    }
    return new Entry.RebuildJob(head, job, done, Outcome.BACK);
  }
}
