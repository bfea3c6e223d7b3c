package rutbook.reasoning;

import java.util.Optional;
import rutbook.notebook.EntryId;
import rutbook.notebook.Gate;

/** Something to put right before any clicker, and the entry that shows it, if there is one. */
public record GateCard(Gate gate, Optional<EntryId> because) {
  /** Whether no proposal is made at all until it is cleared. */
  public boolean blocks() {
    return gate == Gate.FAULT_OR_CRASH;
  }
}
