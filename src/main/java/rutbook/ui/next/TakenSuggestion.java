package rutbook.ui.next;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.SessionEdit;
import rutbook.notebook.Answer;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Report;
import rutbook.notebook.Source;
import rutbook.notebook.Timeline;
import rutbook.reasoning.Suggestion;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.words.ReasoningWords;

/** What a suggestion becomes in the notebook: advice with its answer, and the change itself. */
final class TakenSuggestion {
  private final Desk desk;
  private final Suggestion suggestion;
  private final Bike bike;
  private final ProposalId proposal;

  TakenSuggestion(Desk desk, Suggestion suggestion) {
    this.desk = desk;
    this.suggestion = suggestion;
    this.bike = desk.bike().orElseThrow();
    this.proposal = new ProposalId(desk.ids().next());
  }

  /**
   * On a day of riding whose end is not noted yet it is the next moto's change; otherwise a change
   * between sessions.
   */
  Optional<NotebookException> take() {
    Optional<Entry.Session> today =
        Timeline.of(desk.notebook(), bike.id())
            .latest(Entry.Session.class)
            .filter(session -> session.day().equals(desk.today()))
            .filter(session -> session.check().isEmpty());
    Change change =
        new Change(suggestion.setting().id(), suggestion.to(), Optional.of(proposal), "");
    return today.isPresent() ? nextMoto(today.get(), change) : betweenSessions(change);
  }

  private Optional<NotebookException> nextMoto(Entry.Session session, Change change) {
    MotoId id = new MotoId(desk.ids().next());
    Moto moto = new Moto(id, MotoKind.MOTO, List.of(change), Report.EMPTY, Optional.empty(), "");
    Optional<NotebookException> refused =
        desk.make(
            new Edit.Together(
                List.of(
                    new SessionEdit.AddMoto(session.id(), moto),
                    new EntryEdit.Add(advice(new Answer.Accepted(id), 0)))));
    if (refused.isEmpty()) {
      desk.go(new Place.Session(session.id()));
    }
    return refused;
  }

  private Optional<NotebookException> betweenSessions(Change change) {
    Optional<NotebookException> refused =
        desk.make(
            new Edit.Together(
                List.of(
                    new EntryEdit.Add(advice(new Answer.Open(), 0)),
                    new EntryEdit.Add(new Entry.Adjusted(head(1), List.of(change))))));
    if (refused.isEmpty()) {
      desk.go(new Place.Log());
    }
    return refused;
  }

  Optional<NotebookException> decline(String reason) {
    return desk.make(new EntryEdit.Add(advice(new Answer.Declined(reason), 0)));
  }

  private Entry.Advice advice(Answer answer, int after) {
    Proposal what =
        new Proposal(
            proposal,
            suggestion.setting().id(),
            suggestion.from(),
            suggestion.to(),
            new ReasoningWords(desk.phrases()).chance(suggestion),
            OptionalDouble.of(suggestion.chance()),
            answer);
    return new Entry.Advice(head(after), new Source.Own(desk.rules().version()), List.of(what), "");
  }

  private Head head(int after) {
    Head head = desk.headToday(bike);
    return head.on(head.day(), head.order() + after);
  }
}
