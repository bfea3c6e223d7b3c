package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Change;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;

/** One setting moved to an absolute target. */
final class ChangeShape extends RecordShape<Change> {
  {
    onOneLine();
  }

  private final Field<SettingId> setting = required("setting", Ids.SETTING, Change::setting);
  private final Field<Reading> to = required("to", ReadingShape.READING, Change::to);
  private final Field<Optional<ProposalId>> proposal =
      optional("proposal", Ids.PROPOSAL, Change::proposal);
  private final Field<String> why = note("why", Change::why);

  @Override
  Change make(Got got) {
    return new Change(got.get(setting), got.get(to), got.get(proposal), got.get(why));
  }
}
