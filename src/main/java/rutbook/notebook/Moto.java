package rutbook.notebook;

import java.util.List;
import java.util.Optional;

/** One ride within a session: what was changed before it and what the rider came back with. */
public record Moto(
    MotoId id,
    MotoKind kind,
    List<Change> changes,
    Report report,
    Optional<Conditions> conditions,
    String note) {
  public Moto {
    changes = Checks.unique("change", changes, Change::setting);
    note = Checks.note("note", note);
  }

  public Moto withChanges(List<Change> newChanges) {
    return new Moto(id, kind, newChanges, report, conditions, note);
  }

  public Moto withReport(Report newReport) {
    return new Moto(id, kind, changes, newReport, conditions, note);
  }

  public Moto withConditions(Optional<Conditions> newConditions) {
    return new Moto(id, kind, changes, report, newConditions, note);
  }

  public Moto withNote(String newNote) {
    return new Moto(id, kind, changes, report, conditions, newNote);
  }
}
