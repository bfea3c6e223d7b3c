package rutbook.json;

import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.Job;
import rutbook.notebook.Outcome;
import rutbook.notebook.StepDone;

/** A rebuild under way or ended. */
final class RebuildShape extends EntryShape<Entry.RebuildJob> {
  private final Field<Job> job = required("job", new JobShape(), Entry.RebuildJob::job);
  private final Field<List<StepDone>> done =
      list("done", new StepDoneShape(), Entry.RebuildJob::done);
  private final Field<Outcome> outcome =
      required("outcome", Words.of(Outcome.class), Entry.RebuildJob::outcome);

  RebuildShape() {
    super("rebuild");
  }

  @Override
  Entry.RebuildJob make(Got got) {
    return new Entry.RebuildJob(head(got), got.get(job), got.get(done), got.get(outcome));
  }
}
