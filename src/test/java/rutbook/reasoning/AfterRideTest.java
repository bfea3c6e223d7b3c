package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Answer;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Source;
import rutbook.notebook.Symptom;

class AfterRideTest {
  private static final RuleBook RULES = RulesJson.ofTheTrade();
  private static final ProposalId PROPOSAL = new ProposalId("p");
  private static final Feel HARSH = Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, 0);
  private static final Feel BOUNCY = Feel.of(End.REAR, Section.DOWNHILL, Symptom.BOUNCY, 1);
  private static final Reading FROM = Reading.bothLegs(Bench.clicks(12));
  private static final Reading TO = Reading.bothLegs(Bench.clicks(14));
  private static final Change THERE =
      new Change(Bench.FORK_COMPRESSION, TO, Optional.of(PROPOSAL), "");
  private static final Change BACK = Change.of(Bench.FORK_COMPRESSION, FROM);

  private static Moto rated(String id, List<Change> changes, int severity) {
    return Bench.moto(id, changes, List.of(HARSH.withSeverity(severity)));
  }

  private static Notebook notebook(Answer answer, Moto... motos) {
    Entry.Session session =
        Bench.session("s", Bench.SPRING, Bench.HOLLOW, Bench.setup(), List.of(motos));
    Proposal proposal =
        new Proposal(
            PROPOSAL, Bench.FORK_COMPRESSION, FROM, TO, "", OptionalDouble.empty(), answer);
    Entry.Advice advice =
        new Entry.Advice(
            Head.of(new EntryId("a"), Bench.BIKE, Bench.SPRING, 40),
            new Source.Own("1"),
            List.of(proposal),
            "");
    return Bench.notebook().with(session).with(advice);
  }

  private static Optional<AfterRide> after(Moto... motos) {
    return AfterRide.of(notebook(new Answer.Accepted(new MotoId("b")), motos), Bench.BIKE, RULES);
  }

  @Test
  void whatItWasMeantToHelpIsAskedWhereTheRiderDidNotSayIt() {
    AfterRide after =
        after(rated("a", List.of(), 4), Bench.moto("b", List.of(THERE), List.of(BOUNCY)))
            .orElseThrow();
    assertThat(after.hasOpenQuestion()).isTrue();
    assertThat(after.asked())
        .containsExactly(
            new AfterRide.Asked(Complaint.of(HARSH), HARSH.withSeverity(4), Optional.empty()));
  }

  @Test
  void whatTheRiderSaidIsNotAskedAgainAndTheVerdictGoesByIt() {
    AfterRide after = after(rated("a", List.of(), 4), rated("b", List.of(THERE), 0)).orElseThrow();
    assertThat(after.hasOpenQuestion()).isFalse();
    assertThat(after.verdict().outcome()).isEqualTo(Verdict.Outcome.BETTER);
    assertThat(after.advised())
        .containsExactly(AfterRide.Step.GO_BACK, AfterRide.Step.KEEP, AfterRide.Step.ONE_MORE);
  }

  @Test
  void havingGoneBackItIsSetAgainOnlyWhereThatProvedIt() {
    AfterRide proved =
        after(rated("a", List.of(), 4), rated("b", List.of(THERE), 0), rated("c", List.of(BACK), 4))
            .orElseThrow();
    assertThat(proved.verdict().outcome()).isEqualTo(Verdict.Outcome.CONFIRMED);
    assertThat(proved.advised().get(0)).isEqualTo(AfterRide.Step.SET_AGAIN);
    AfterRide not =
        after(rated("a", List.of(), 4), rated("b", List.of(THERE), 0), rated("c", List.of(BACK), 0))
            .orElseThrow();
    assertThat(not.verdict().outcome()).isEqualTo(Verdict.Outcome.NOT_THE_CHANGE);
    assertThat(not.advised().get(0)).isEqualTo(AfterRide.Step.LEAVE_BACK);
  }

  @Test
  void worseIsAdvisedToGoBackAndNoDifferenceToRideOnceMore() {
    AfterRide worse = after(rated("a", List.of(), 2), rated("b", List.of(THERE), 5)).orElseThrow();
    assertThat(worse.advised().get(0)).isEqualTo(AfterRide.Step.GO_BACK);
    AfterRide same = after(rated("a", List.of(), 3), rated("b", List.of(THERE), 2)).orElseThrow();
    assertThat(same.advised().get(0)).isEqualTo(AfterRide.Step.ONE_MORE);
  }

  @Test
  void beforeItIsRiddenNothingFollows() {
    AfterRide after =
        after(rated("a", List.of(), 4), Bench.moto("b", List.of(THERE), List.of())).orElseThrow();
    assertThat(after.hasOpenQuestion()).isFalse();
    assertThat(after.advised()).isEmpty();
    assertThat(after.asked()).hasSize(1);
  }

  @Test
  void onceAnsweredOrOnceSomethingElseIsChangedItIsNotAskedAnyMore() {
    Moto a = rated("a", List.of(), 4);
    Moto b = rated("b", List.of(THERE), 2);
    for (Answer closed :
        List.of(
            new Answer.Kept(new MotoId("b")),
            new Answer.PutBack(new MotoId("b")),
            new Answer.Declined("no"))) {
      assertThat(AfterRide.of(notebook(closed, a, b), Bench.BIKE, RULES)).isEmpty();
    }
    Change other = Change.of(Bench.FORK_REBOUND, Reading.bothLegs(Bench.clicks(13)));
    assertThat(after(a, b, rated("c", List.of(other), 2))).isEmpty();
  }

  @Test
  void aChangeMadeTogetherWithAnotherIsSaidNotToBeAlone() {
    Change other = Change.of(Bench.FORK_REBOUND, Reading.bothLegs(Bench.clicks(13)));
    List<Change> both = new ArrayList<>(List.of(THERE, other));
    AfterRide after = after(rated("a", List.of(), 4), rated("b", both, 1)).orElseThrow();
    assertThat(after.ridden().isAlone()).isFalse();
  }

  @Test
  void aProposalThatTheReasoningWouldNotMakeIsAskedAboutByWhatBotheredThen() {
    Feel swaps = Feel.of(End.REAR, Section.WHOOPS, Symptom.SWAPS, 4);
    AfterRide after =
        after(
                Bench.moto("a", List.of(), List.of(swaps)),
                Bench.moto("b", List.of(THERE), List.of(BOUNCY)))
            .orElseThrow();
    assertThat(after.asked()).extracting(AfterRide.Asked::before).contains(swaps);
  }

  /** Taken after the first day was over; the second day starts with it. */
  private static Notebook takenBetween(List<Change> others, Moto... second) {
    Entry.Session first =
        Bench.session(
            "s", Bench.SPRING, Bench.HOLLOW, Bench.setup(), List.of(rated("a", List.of(), 4)));
    Proposal proposal =
        new Proposal(
            PROPOSAL,
            Bench.FORK_COMPRESSION,
            FROM,
            TO,
            "",
            OptionalDouble.empty(),
            new Answer.Open());
    Entry.Advice advice =
        new Entry.Advice(
            Head.of(new EntryId("a"), Bench.BIKE, Bench.SPRING, 40),
            new Source.Own("1"),
            List.of(proposal),
            "");
    List<Change> changes = new ArrayList<>(others);
    changes.add(THERE);
    Entry.Adjusted adjusted =
        new Entry.Adjusted(Head.of(new EntryId("adj"), Bench.BIKE, Bench.SPRING, 41), changes);
    Entry.Session next =
        Bench.session(
            "t",
            Bench.SPRING.plusDays(6),
            Bench.HOLLOW,
            Bench.setup().after(changes),
            List.of(second));
    return Bench.notebook().with(first).with(advice).with(adjusted).with(next);
  }

  private static Optional<AfterRide> between(Moto... second) {
    return AfterRide.of(takenBetween(List.of(), second), Bench.BIKE, RULES);
  }

  @Test
  void whatWasTakenBetweenTwoDaysIsAskedAboutAfterTheNextDaysFirstMoto() {
    assertThat(between()).as("nothing ridden yet").isEmpty();
    AfterRide after = between(Bench.moto("b", List.of(), List.of(BOUNCY))).orElseThrow();
    assertThat(after.hasOpenQuestion()).isTrue();
    assertThat(after.asked())
        .containsExactly(
            new AfterRide.Asked(Complaint.of(HARSH), HARSH.withSeverity(4), Optional.empty()));
    assertThat(after.ridden().isAlone()).isTrue();
    assertThat(after.advised().get(0)).isEqualTo(AfterRide.Step.GO_BACK);
  }

  /** Another day is another track: feel of two days alone proves nothing. */
  @Test
  void whatWasTakenBetweenTwoDaysIsJudgedByMotosOfOneDayOnly() {
    Moto with = rated("b", List.of(), 0);
    assertThat(between(with).orElseThrow().verdict().outcome())
        .isEqualTo(Verdict.Outcome.NOT_RIDDEN);
    AfterRide back = between(with, rated("c", List.of(BACK), 4)).orElseThrow();
    assertThat(back.verdict().outcome()).isEqualTo(Verdict.Outcome.BETTER);
    assertThat(back.advised().get(0)).isEqualTo(AfterRide.Step.SET_AGAIN);
    AfterRide same = between(with, rated("c", List.of(BACK), 0)).orElseThrow();
    assertThat(same.advised().get(0)).isEqualTo(AfterRide.Step.LEAVE_BACK);
  }

  @Test
  void whatWasTakenBetweenTwoDaysIsNotAskedAboutOnceItWasUndoneOrSomethingElseChanged() {
    Change other = Change.of(Bench.FORK_REBOUND, Reading.bothLegs(Bench.clicks(13)));
    assertThat(between(rated("b", List.of(BACK), 4))).isEmpty();
    assertThat(between(rated("b", List.of(), 4), rated("c", List.of(other), 4))).isEmpty();
    AfterRide both =
        AfterRide.of(takenBetween(List.of(other), rated("b", List.of(), 4)), Bench.BIKE, RULES)
            .orElseThrow();
    assertThat(both.ridden().isAlone()).isFalse();
  }
}
