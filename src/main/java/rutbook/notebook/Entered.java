package rutbook.notebook;

import java.util.Optional;

/** What was entered at a step of a rebuild. */
public sealed interface Entered {
  /** Clicks or turns counted, per leg. */
  record Counted(Reading reading) implements Entered {}

  /** A fill, sag or pressure measured, and with what. */
  record Measured(Reading reading, Optional<Instrument> instrument) implements Entered {}

  record Ticked() implements Entered {}

  record Skipped(String why) implements Entered {
    public Skipped {
      why = Checks.name("reason", why);
    }
  }
}
