package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Answer;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Timeline;

/**
 * A proposal that was taken before a moto of the latest session and is neither kept nor put back
 * yet, with nothing else changed since.
 *
 * @param at the first moto with the change, counted from 0
 */
public record RiddenProposal(
    Entry.Session session, int at, Entry.Advice advice, Proposal proposal, Setting setting) {
  private static final Set<Class<? extends Answer>> CLOSED =
      Set.of(Answer.Kept.class, Answer.PutBack.class, Answer.Declined.class);

  /** Of the latest session of a bike; empty where none is open or the rider went on to another. */
  public static Optional<RiddenProposal> open(Timeline timeline) {
    return timeline.latest(Entry.Session.class).flatMap(session -> open(timeline, session));
  }

  private static Optional<RiddenProposal> open(Timeline timeline, Entry.Session session) {
    return latest(session)
        .flatMap(id -> found(timeline, session, id))
        .filter(each -> !CLOSED.contains(each.proposal.answer().getClass()))
        .filter(RiddenProposal::nothingElseSince);
  }

  private static Optional<ProposalId> latest(Entry.Session session) {
    return session.motos().stream()
        .flatMap(moto -> moto.changes().stream())
        .flatMap(change -> change.proposal().stream())
        .reduce((earlier, later) -> later);
  }

  private static Optional<RiddenProposal> found(
      Timeline timeline, Entry.Session session, ProposalId id) {
    for (Entry.Advice advice : timeline.entries(Entry.Advice.class)) {
      for (Proposal proposal : advice.proposals()) {
        if (proposal.id().equals(id)) {
          return timeline
              .sheetOn(session.day())
              .setting(proposal.setting())
              .map(
                  setting ->
                      new RiddenProposal(session, first(session, id), advice, proposal, setting));
        }
      }
    }
    return Optional.empty();
  }

  private static int first(Entry.Session session, ProposalId id) {
    int at = 0;
    while (session.motos().get(at).changes().stream().noneMatch(each -> follows(each, id))) {
      at++;
    }
    return at;
  }

  private static boolean follows(Change change, ProposalId id) {
    return change.proposal().equals(Optional.of(id));
  }

  /** Going back and setting it again are parts of the same test; anything else is another. */
  private boolean nothingElseSince() {
    return session.motos().subList(at + 1, session.motos().size()).stream()
        .flatMap(moto -> moto.changes().stream())
        .allMatch(
            change ->
                change.setting().equals(setting.id())
                    && (change.to().sameAs(proposal.to()) || change.to().sameAs(proposal.from())));
  }

  /** The moto that is asked about: the latest. */
  public Moto last() {
    return session.motos().get(session.motos().size() - 1);
  }

  /** Whether the latest moto has a word on feel, or laps. */
  public boolean isRidden() {
    return !last().report().feel().isEmpty() || !last().report().laps().isEmpty();
  }

  /** Whether the change is on the bike in the latest moto. */
  public boolean isOn() {
    Optional<Reading> now = session.setupOf(session.motos().size() - 1).reading(setting.id());
    return now.map(proposal.to()::sameAs).orElse(false);
  }

  /** Whether nothing else was changed together with it. */
  public boolean isAlone() {
    return session.motos().get(at).changes().size() == 1;
  }

  /** The motos before the change: what it was meant to help follows from these alone. */
  List<Moto> before() {
    return session.motos().subList(0, at);
  }
}
