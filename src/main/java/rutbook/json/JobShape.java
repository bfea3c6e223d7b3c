package rutbook.json;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.EntryId;
import rutbook.notebook.Job;
import rutbook.notebook.OilId;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setup;

/** What a rebuild set out to do. */
final class JobShape extends RecordShape<Job> {
  private final Field<Scope> scope = required("scope", Words.of(Scope.class), Job::scope);
  private final Field<Set<Renewed>> renewed =
      usually(Set.of(), "renewed", Words.several(Renewed.class), Job::renewed);
  private final Field<EntryId> baseline = required("baseline", Ids.ENTRY, Job::baseline);
  private final Field<Setup> before = required("before", new SetupShape(), Job::before);
  private final Field<LocalDate> sheetFrom = required("sheetFrom", Texts.DAY, Job::sheetFrom);
  private final Field<Optional<OilId>> oil = optional("oil", Ids.OIL, Job::oil);

  @Override
  Job make(Got got) {
    return new Job(
        got.get(scope),
        got.get(renewed),
        got.get(baseline),
        got.get(before),
        got.get(sheetFrom),
        got.get(oil));
  }
}
