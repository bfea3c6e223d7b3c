package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rutbook.notebook.Answer;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;

/**
 * A proposal that was taken before a moto of the latest session, or between it and the session
 * before, and is neither kept nor put back yet, with nothing else changed since.
 *
 * @param at the first moto with the change, counted from 0
 * @param between the changes that it was one of, when it was taken between the two sessions
 */
public record RiddenProposal(
    Entry.Session session,
    int at,
    Optional<Entry.Adjusted> between,
    Entry.Advice advice,
    Proposal proposal,
    Setting setting) {
  private static final Set<Class<? extends Answer>> CLOSED =
      Set.of(Answer.Kept.class, Answer.PutBack.class, Answer.Declined.class);

  /** Of the latest session of a bike; empty where none is open or the rider went on to another. */
  public static Optional<RiddenProposal> open(Timeline timeline) {
    return timeline.latest(Entry.Session.class).flatMap(session -> open(timeline, session));
  }

  private static Optional<RiddenProposal> open(Timeline timeline, Entry.Session session) {
    Optional<RiddenProposal> latest =
        follows(session.motos().stream().flatMap(moto -> moto.changes().stream()))
            .map(id -> found(timeline, session, first(session, id), Optional.empty(), id))
            .orElseGet(() -> takenBetween(timeline, session));
    return latest
        .filter(each -> !CLOSED.contains(each.proposal.answer().getClass()))
        .filter(RiddenProposal::nothingElseSince);
  }

  /** The last proposal that changes follow. */
  private static Optional<ProposalId> follows(Stream<Change> changes) {
    return changes.flatMap(change -> change.proposal().stream()).reduce((earlier, later) -> later);
  }

  /** Taken after the session before, with no other change until this one's first moto. */
  private static Optional<RiddenProposal> takenBetween(Timeline timeline, Entry.Session session) {
    List<Entry> entries = timeline.entries();
    for (int i = entries.indexOf(session) - 1; i >= 0 && !session.motos().isEmpty(); i--) {
      if (entries.get(i) instanceof Entry.Session) {
        break;
      }
      if (entries.get(i) instanceof Entry.Adjusted adjusted) {
        return follows(adjusted.changes().stream())
            .flatMap(id -> found(timeline, session, 0, Optional.of(adjusted), id));
      }
    }
    return Optional.empty();
  }

  private static Optional<RiddenProposal> found(
      Timeline timeline,
      Entry.Session session,
      int at,
      Optional<Entry.Adjusted> between,
      ProposalId id) {
    for (Entry.Advice advice : timeline.entries(Entry.Advice.class)) {
      for (Proposal proposal : advice.proposals()) {
        if (proposal.id().equals(id)) {
          return timeline
              .sheetOn(session.day())
              .setting(proposal.setting())
              .map(setting -> new RiddenProposal(session, at, between, advice, proposal, setting));
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
    boolean ridden = between.isEmpty() || isAt(at, proposal.to());
    return ridden
        && session.motos().subList(at + 1, session.motos().size()).stream()
            .flatMap(moto -> moto.changes().stream())
            .allMatch(
                change ->
                    change.setting().equals(setting.id())
                        && (change.to().sameAs(proposal.to())
                            || change.to().sameAs(proposal.from())));
  }

  private boolean isAt(int moto, Reading reading) {
    Optional<Reading> there = session.setupOf(moto).reading(setting.id());
    return there.map(reading::sameAs).orElse(false);
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
    return isAt(session.motos().size() - 1, proposal.to());
  }

  /** Whether nothing else was changed together with it. */
  public boolean isAlone() {
    int others = session.motos().get(at).changes().size();
    return between.map(each -> each.changes().size() + others).orElse(others) == 1;
  }

  /** The setup without it, all else as it was first ridden with it. */
  Setup without() {
    return at > 0
        ? session.setupOf(at - 1)
        : session.setupOf(at).with(Placed.set(setting.id(), proposal.from()));
  }

  /** The notebook as it was when it was taken. */
  Notebook before(Notebook notebook) {
    return between
        .map(each -> Past.before(notebook, each))
        .orElseGet(() -> Past.upTo(notebook, session, at));
  }

  /** The motos before the change: what it was meant to help follows from these alone. */
  List<Moto> before() {
    return session.motos().subList(0, at);
  }
}
