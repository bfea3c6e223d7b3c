package rutbook.ui.rebuild;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Outcome;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.BaselineMotos;
import rutbook.rebuild.ConfirmMoto;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;

/** The rebuilds of a bike, and the plan of one as it stands in the notebook now. */
final class Jobs {
  private Jobs() {}

  /** Under way or at the shop, the newest first. */
  static List<Entry.RebuildJob> open(Notebook notebook, BikeId bike) {
    return all(notebook, bike).stream().filter(Jobs::isOpen).toList();
  }

  static List<Entry.RebuildJob> ended(Notebook notebook, BikeId bike) {
    return all(notebook, bike).stream().filter(each -> !isOpen(each)).toList();
  }

  static boolean isOpen(Entry.RebuildJob job) {
    return job.outcome() == Outcome.UNDER_WAY || job.outcome() == Outcome.AT_THE_SHOP;
  }

  private static List<Entry.RebuildJob> all(Notebook notebook, BikeId bike) {
    return Timeline.of(notebook, bike).entries(Entry.RebuildJob.class).stream()
        .sorted(Comparator.comparing(Entry.RebuildJob::day).reversed())
        .toList();
  }

  static Optional<Entry.RebuildJob> job(Notebook notebook, EntryId id) {
    return notebook
        .entry(id)
        .filter(Entry.RebuildJob.class::isInstance)
        .map(Entry.RebuildJob.class::cast);
  }

  static Optional<Plan> plan(Notebook notebook, Entry.RebuildJob job, Advisor advisor) {
    return PlanFrom.of(notebook, job).map(from -> Planner.plan(from, advisor));
  }

  /** What the motos since the job say, beside those on the baseline before it. */
  static Optional<ConfirmMoto> confirmed(Notebook notebook, Entry.RebuildJob job, Plan plan) {
    Timeline timeline = Timeline.of(notebook, job.bike());
    return PlanFrom.of(notebook, job)
        .map(
            from ->
                ConfirmMoto.judge(
                    BaselineMotos.before(timeline, job.id(), from.baseline().setup()),
                    BaselineMotos.after(timeline, job.id()),
                    plan));
  }
}
