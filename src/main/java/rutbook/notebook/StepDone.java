package rutbook.notebook;

import java.time.Instant;

/** A step of a rebuild with what was entered and when; the plan itself is computed again. */
public record StepDone(StepId step, Instant at, Entered entered) {}
