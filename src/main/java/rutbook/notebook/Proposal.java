package rutbook.notebook;

import java.util.OptionalDouble;

/** A change somebody suggests, with the reason and, where it was said, the chance that it helps. */
public record Proposal(
    ProposalId id,
    SettingId setting,
    Reading from,
    Reading to,
    String reason,
    OptionalDouble chance,
    Answer answer) {
  public Proposal {
    reason = Checks.note("reason", reason);
    chance.ifPresent(number -> Checks.range("chance", number, 0, 1));
  }

  public Proposal answered(Answer newAnswer) {
    return new Proposal(id, setting, from, to, reason, chance, newAnswer);
  }
}
