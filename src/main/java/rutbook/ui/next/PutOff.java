package rutbook.ui.next;

import java.util.Optional;
import rutbook.notebook.Answer;
import rutbook.notebook.Entry;
import rutbook.notebook.Proposal;
import rutbook.reasoning.Suggestion;
import rutbook.ui.Desk;

/** What the rider said "not now" to today: it is not put again before tomorrow. */
final class PutOff {
  private final Desk desk;

  PutOff(Desk desk) {
    this.desk = desk;
  }

  /** The rider's reason; empty where the suggestion was not put off today. */
  Optional<String> why(Suggestion suggestion) {
    return desk.timeline(desk.bike().orElseThrow().id()).entries(Entry.Advice.class).stream()
        .filter(advice -> advice.day().equals(desk.today()))
        .flatMap(advice -> advice.proposals().stream())
        .filter(proposal -> isOf(proposal, suggestion))
        .flatMap(proposal -> word(proposal.answer()).stream())
        .reduce((earlier, later) -> later);
  }

  private static boolean isOf(Proposal proposal, Suggestion suggestion) {
    return proposal.setting().equals(suggestion.setting().id())
        && proposal.to().sameAs(suggestion.to());
  }

  private static Optional<String> word(Answer answer) {
    return answer instanceof Answer.Declined declined
        ? Optional.of(declined.word())
        : Optional.empty();
  }
}
