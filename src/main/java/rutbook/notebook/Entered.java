package rutbook.notebook;

import java.util.Optional;

/** What was entered at a step of a rebuild. */
public sealed interface Entered {
  /** Clicks or turns counted, per leg. */
  record Counted(Reading reading) implements Entered {}

  /** A fill, sag or pressure measured, and with what. */
  record Measured(Reading reading, Optional<Instrument> instrument) implements Entered {}

  /**
   * Done.
   *
   * @param note what there is to say of it; may be empty
   */
  record Ticked(String note) implements Entered {
    public Ticked {
      note = Checks.note("note", note);
    }

    /** Done, with nothing to say of it. */
    public Ticked() {
      this("");
    }
  }

  record Skipped(String why) implements Entered {
    public Skipped {
      why = Checks.name("reason", why);
    }
  }
}
