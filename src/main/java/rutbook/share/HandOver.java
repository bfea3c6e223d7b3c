package rutbook.share;

import java.time.LocalDate;
import java.util.Set;
import rutbook.notebook.Checks;
import rutbook.notebook.HandOverId;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Shared;

/**
 * One handing over: by which it is known again, from which notebook, when, what was ticked to go
 * along, and what the rider asks the coach.
 *
 * @param question what the rider wants to know; may be empty
 */
public record HandOver(
    HandOverId id, NotebookId notebook, LocalDate day, Set<Shared> shared, String question) {
  public HandOver {
    Checks.day(day);
    shared = shared.isEmpty() ? Set.of() : Set.copyOf(shared);
    question = Checks.note("question", question);
  }

  public boolean shares(Shared what) {
    return shared.contains(what);
  }
}
