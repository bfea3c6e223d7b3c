package rutbook.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Job;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.RebuildReadings;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.StepDone;
import rutbook.notebook.Timeline;
import rutbook.notebook.WhyUnknown;

/**
 * All that a plan is computed from: the sheet in force, the baseline, the job, what is entered.
 *
 * @param oil what goes into the fork, as it stands on the shelf; empty when none was named
 */
public record PlanFrom(
    Sheet sheet, Entry.Baseline baseline, Job job, List<StepDone> done, Optional<Oil> oil) {
  public PlanFrom {
    done = List.copyOf(done);
  }

  /** Without an oil of the shelf. */
  public PlanFrom(Sheet sheet, Entry.Baseline baseline, Job job, List<StepDone> done) {
    this(sheet, baseline, job, done, Optional.empty());
  }

  /** Of a job in a notebook; empty when its baseline is gone. */
  public static Optional<PlanFrom> of(Notebook notebook, Entry.RebuildJob rebuild) {
    Job job = rebuild.job();
    return notebook
        .entry(job.baseline())
        .filter(Entry.Baseline.class::isInstance)
        .map(Entry.Baseline.class::cast)
        .map(
            baseline ->
                new PlanFrom(
                    notebook.shelf().bike(rebuild.bike()).orElseThrow().sheetOn(job.sheetFrom()),
                    baseline,
                    job,
                    rebuild.done(),
                    job.oil().flatMap(notebook.shelf()::oil)));
  }

  /** The same job with an oil of the shelf by name. */
  public PlanFrom pouring(Optional<Oil> named) {
    return new PlanFrom(sheet, baseline, job, done, named);
  }

  /** Of a job that has not begun: the newest sheet and baseline, and what is on the bike now. */
  public static Optional<PlanFrom> beginning(
      Timeline timeline, Scope scope, java.util.Set<Renewed> renewed) {
    return beginning(timeline, scope, renewed, Optional.empty());
  }

  /** The same with the oil that goes in. */
  public static Optional<PlanFrom> beginning(
      Timeline timeline, Scope scope, java.util.Set<Renewed> renewed, Optional<OilId> oil) {
    Sheet sheet = timeline.bike().latestSheet();
    return timeline
        .baseline()
        .map(
            baseline ->
                new PlanFrom(
                    sheet,
                    baseline,
                    new Job(
                        scope, renewed, baseline.id(), known(sheet, timeline), sheet.from(), oil),
                    List.of()));
  }

  /** What is on the bike of the settings that the sheet has. */
  private static Setup known(Sheet sheet, Timeline timeline) {
    return new Setup(
        timeline.now().placed().stream()
            .filter(placed -> sheet.setting(placed.setting()).isPresent())
            .toList());
  }

  /** Whether the cartridge is opened: for its oil or valving, or when nothing else was named. */
  public boolean opensCartridge() {
    return job.renewed().isEmpty()
        || job.renewed().contains(Renewed.OIL)
        || job.renewed().contains(Renewed.VALVING);
  }

  /** Whether the job leaves the reading of a setting unknown until it is put back. */
  public boolean unsettles(Setting setting) {
    Role role = setting.role();
    return switch (role) {
      case FORK_OIL,
          FORK_AIR,
          FORK_PRELOAD,
          TUBE_ABOVE_CLAMP,
          FORK_COMPRESSION,
          FORK_HIGH_SPEED_COMPRESSION,
          FORK_REBOUND ->
          job.fork();
      case FORK_CARTRIDGE_OIL -> job.fork() && opensCartridge();
      case FORK_SPRING -> job.fork() && job.renewed().contains(Renewed.SPRING);
      case SHOCK_PRELOAD, SHOCK_LOW_SPEED, SHOCK_HIGH_SPEED, SHOCK_REBOUND -> job.shock();
      case SHOCK_SPRING -> job.shock() && job.renewed().contains(Renewed.SPRING);
      case AXLE_POSITION, TYRE_FRONT, TYRE_REAR, OTHER -> false;
    };
  }

  /** What was on the bike before, with what the job unsettles unknown. */
  public Setup stripped() {
    List<Placed> placed = new ArrayList<>();
    for (Placed before : job.before().placed()) {
      Optional<Setting> setting = sheet.setting(before.setting());
      if (setting.isPresent() && unsettles(setting.get())) {
        Reading unknown = Reading.unknown(setting.get().carrier(), WhyUnknown.STRIPPED);
        placed.add(Placed.found(before.setting(), unknown));
      } else {
        placed.add(before);
      }
    }
    return new Setup(placed);
  }

  /** The stripped setup with what the shop left and what has been put back so far. */
  public Setup now() {
    return RebuildReadings.applied(stripped(), done);
  }
}
