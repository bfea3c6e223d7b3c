package rutbook.share;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Timeline;

/**
 * Where a proposal was followed: the change before a moto, or between sessions.
 *
 * @param moto empty between sessions
 */
public record Followed(Entry entry, Optional<Moto> moto, Change change) {

  /** Empty when nobody followed it. */
  public static Optional<Followed> of(Timeline timeline, ProposalId proposal) {
    for (Entry entry : timeline.entries()) {
      if (entry instanceof Entry.Adjusted adjusted) {
        Optional<Change> change = change(adjusted.changes(), proposal);
        if (change.isPresent()) {
          return Optional.of(new Followed(entry, Optional.empty(), change.get()));
        }
      } else if (entry instanceof Entry.Session session) {
        for (Moto moto : session.motos()) {
          Optional<Change> change = change(moto.changes(), proposal);
          if (change.isPresent()) {
            return Optional.of(new Followed(entry, Optional.of(moto), change.get()));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Change> change(List<Change> changes, ProposalId proposal) {
    return changes.stream()
        .filter(each -> each.proposal().filter(proposal::equals).isPresent())
        .findFirst();
  }
}
