package rutbook.json;

import java.util.OptionalDouble;
import rutbook.notebook.Answer;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;

/** A change somebody suggests; open until it is answered. */
final class ProposalShape extends RecordShape<Proposal> {
  private final Field<ProposalId> id = required("id", Ids.PROPOSAL, Proposal::id);
  private final Field<SettingId> setting = required("setting", Ids.SETTING, Proposal::setting);
  private final Field<Reading> from = required("from", ReadingShape.READING, Proposal::from);
  private final Field<Reading> to = required("to", ReadingShape.READING, Proposal::to);
  private final Field<String> reason = note("reason", Proposal::reason);
  private final Field<OptionalDouble> chance =
      usually(OptionalDouble.empty(), "chance", Numbers.NUMBER_IF_KNOWN, Proposal::chance);
  private final Field<Answer> answer =
      usually(new Answer.Open(), "answer", new AnswerShape(), Proposal::answer);

  @Override
  Proposal make(Got got) {
    return new Proposal(
        got.get(id),
        got.get(setting),
        got.get(from),
        got.get(to),
        got.get(reason),
        got.get(chance),
        got.get(answer));
  }
}
