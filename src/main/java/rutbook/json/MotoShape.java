package rutbook.json;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Report;

/** One ride within a session. */
final class MotoShape extends RecordShape<Moto> {
  private final Field<MotoId> id = required("id", Ids.MOTO, Moto::id);
  private final Field<MotoKind> kind = required("kind", Words.of(MotoKind.class), Moto::kind);
  private final Field<List<Change>> changes = list("changes", new ChangeShape(), Moto::changes);
  private final Field<Report> report =
      usually(Report.EMPTY, "report", new ReportShape(), Moto::report);
  private final Field<Optional<Conditions>> conditions =
      optional("conditions", new ConditionsShape(), Moto::conditions);
  private final Field<String> note = note("note", Moto::note);

  @Override
  Moto make(Got got) {
    return new Moto(
        got.get(id),
        got.get(kind),
        got.get(changes),
        got.get(report),
        got.get(conditions),
        got.get(note));
  }
}
