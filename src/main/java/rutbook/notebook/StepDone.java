package rutbook.notebook;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A step of a rebuild with what was entered and when; the plan itself is computed again.
 *
 * @param at when it was entered
 * @param doneOn the day on which it was done, where it was written on paper and entered later
 */
public record StepDone(StepId step, Instant at, Entered entered, Optional<LocalDate> doneOn) {
  public StepDone {
    doneOn.ifPresent(Checks::day);
  }

  /** Entered while it was done. */
  public StepDone(StepId step, Instant at, Entered entered) {
    this(step, at, entered, Optional.empty());
  }
}
