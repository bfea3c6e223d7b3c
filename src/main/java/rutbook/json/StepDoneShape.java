package rutbook.json;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import rutbook.notebook.Entered;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;

/** A step of a rebuild with what was entered. */
final class StepDoneShape extends RecordShape<StepDone> {
  {
    onOneLine();
  }

  private final Field<StepId> step = required("step", Ids.STEP, StepDone::step);
  private final Field<Instant> at = required("at", Texts.MOMENT, StepDone::at);
  private final Field<Entered> entered = required("entered", new EnteredShape(), StepDone::entered);
  private final Field<Optional<LocalDate>> doneOn = optional("doneOn", Texts.DAY, StepDone::doneOn);

  @Override
  StepDone make(Got got) {
    return new StepDone(got.get(step), got.get(at), got.get(entered), got.get(doneOn));
  }
}
