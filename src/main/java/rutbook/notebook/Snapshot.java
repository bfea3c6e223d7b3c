package rutbook.notebook;

import java.time.LocalDate;
import java.util.Set;

/** What was handed over: the setup and the sheet it was read against. */
public record Snapshot(Setup setup, LocalDate sheetFrom, Set<Shared> shared) {
  public Snapshot {
    Checks.day(sheetFrom);
    shared = Set.copyOf(shared);
  }
}
