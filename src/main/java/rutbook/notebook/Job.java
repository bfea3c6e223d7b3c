package rutbook.notebook;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/** What a rebuild set out to do; frozen when it starts. */
public record Job(
    Scope scope,
    Set<Renewed> renewed,
    EntryId baseline,
    Setup before,
    LocalDate sheetFrom,
    Optional<OilId> oil) {
  public Job {
    renewed = renewed.isEmpty() ? Set.of() : Set.copyOf(renewed);
    Checks.day(sheetFrom);
  }

  public boolean fork() {
    return scope != Scope.SHOCK;
  }

  public boolean shock() {
    return scope != Scope.FORK;
  }
}
