package rutbook.notebook;

import java.util.Optional;

/** One setting moved to an absolute target, with the proposal it follows and the reason, if any. */
public record Change(SettingId setting, Reading to, Optional<ProposalId> proposal, String why) {
  public Change {
    why = Checks.note("why", why);
  }

  public static Change of(SettingId setting, Reading to) {
    return new Change(setting, to, Optional.empty(), "");
  }
}
