package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.mm;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.EventKind;
import rutbook.notebook.Gate;
import rutbook.notebook.Head;
import rutbook.notebook.Job;
import rutbook.notebook.Notebook;
import rutbook.notebook.Outcome;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Ready;
import rutbook.notebook.Scope;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;
import rutbook.units.Mass;

/** What comes before the clickers, card by card; common practice, no source. */
class GateCardsTest {
  private static final LocalDate DAY = Bench.SPRING.plusDays(20);
  private static final Entry SAG = sag("sag", Bench.SPRING, "104", Optional.empty());

  private static Head head(String id, LocalDate day) {
    return Head.of(new EntryId(id), Bench.BIKE, day, 0);
  }

  private static Entry sag(String id, LocalDate day, String race, Optional<Amount> weight) {
    return new Entry.SagMeasured(
        head(id, day),
        End.REAR,
        Optional.of(mm(race)),
        Optional.empty(),
        Optional.empty(),
        weight,
        Optional.empty());
  }

  private static Entry.Session ride(Setup start, Set<Ready> ready) {
    Entry.Session session = Bench.session("s", DAY, Bench.HOLLOW, start, List.of());
    Conditions was = session.conditions();
    return session.withConditions(
        new Conditions(was.ground(), was.moisture(), was.roughness(), was.air(), ready));
  }

  private static Entry.Session ride(Setup start) {
    return ride(start, Set.of(Ready.values()));
  }

  private static List<GateCard> cards(Notebook notebook, Entry.Session ride, Entry... others) {
    Notebook with = notebook.with(ride);
    for (Entry each : others) {
      with = with.with(each);
    }
    return Gates.of(Timeline.of(with, Bench.BIKE), with.shelf(), ride);
  }

  private static List<Gate> gates(Entry.Session ride, Entry... others) {
    return cards(Bench.notebook(), ride, others).stream().map(GateCard::gate).toList();
  }

  private static Setup with(Placed placed) {
    return Bench.setup().with(placed);
  }

  @Test
  void aReadingBeyondALimitOrWithUnequalLegsIsInDoubt() {
    assertThat(gates(ride(Bench.setup()), SAG)).isEmpty();
    Setup beyond = with(Placed.found(Bench.FORK_REBOUND, Reading.bothLegs(clicks(40))));
    assertThat(gates(ride(beyond), SAG)).containsExactly(Gate.READINGS_IN_DOUBT);
    Setup apart = with(Placed.set(Bench.FORK_REBOUND, Reading.of(clicks(10), clicks(12))));
    assertThat(gates(ride(apart), SAG)).containsExactly(Gate.READINGS_IN_DOUBT);
    assertThat(cards(Bench.notebook().with(Bench.baseline(apart)), ride(apart), SAG))
        .as("the baseline has them apart on purpose")
        .isEmpty();
    assertThat(cards(Bench.notebook().with(Bench.baseline(apart)), ride(Bench.setup()), SAG))
        .extracting(GateCard::gate)
        .containsExactly(Gate.READINGS_IN_DOUBT);
  }

  private static Entry rebuild(Scope scope) {
    Job job =
        new Job(
            scope, Set.of(), Bench.FIRST_BASELINE, Bench.setup(), Bench.SPRING, Optional.empty());
    return new Entry.RebuildJob(
        head("job", Bench.SPRING.plusDays(5)), job, List.of(), Outcome.BACK);
  }

  @Test
  void aForkJobTakesTheWheelOutAndAShockJobDoesNot() {
    Set<Ready> notAligned = Set.of(Ready.TYRES_COLD, Ready.FORK_AIR_BLED);
    Entry.Session ride = ride(Bench.setup(), notAligned);
    Entry later = sag("later", DAY.minusDays(1), "104", Optional.empty());
    assertThat(cards(Bench.notebook(), ride, rebuild(Scope.FORK), later))
        .containsExactly(new GateCard(Gate.AXLE_NOT_ALIGNED, Optional.of(new EntryId("job"))));
    assertThat(gates(ride, rebuild(Scope.SHOCK), later)).isEmpty();
    Entry after =
        new Entry.Event(
            head("wheel", DAY.plusDays(1)),
            EventKind.PART_CHANGED,
            Optional.of(End.FRONT),
            Optional.empty(),
            "");
    assertThat(gates(ride, later, after)).as("after that day").isEmpty();
  }

  /** A reason holds for that day and that card. */
  @Test
  void aReasonWavesThroughItsOwnCardFromItsDayOn() {
    Entry.Session ride = ride(Bench.setup());
    assertThat(gates(ride)).containsExactly(Gate.SAG_OUT);
    assertThat(gates(ride, reason(DAY, Gate.FORK_NOT_BLED))).containsExactly(Gate.SAG_OUT);
    assertThat(gates(ride, reason(DAY.minusDays(1), Gate.SAG_OUT))).containsExactly(Gate.SAG_OUT);
    assertThat(gates(ride, reason(DAY, Gate.SAG_OUT))).isEmpty();
  }

  private static Entry reason(LocalDate day, Gate gate) {
    return new Entry.GateDismissed(head("why", day), gate, "no scale here");
  }

  @Test
  void onlyAFaultBlocksEverything() {
    for (Gate gate : Gate.values()) {
      assertThat(new GateCard(gate, Optional.empty()).blocks())
          .isEqualTo(gate == Gate.FAULT_OR_CRASH);
    }
  }

  private static Entry part(LocalDate day) {
    return new Entry.Event(
        head("part", day), EventKind.PART_CHANGED, Optional.of(End.REAR), Optional.empty(), "");
  }

  @Test
  void sagIsPutRightWhereItLiesOutsideItsWindow() {
    for (String inside : List.of("100", "108")) {
      assertThat(gates(ride(Bench.setup()), sag("sag", Bench.SPRING, inside, Optional.empty())))
          .isEmpty();
    }
    Entry out = sag("sag", Bench.SPRING, "109", Optional.empty());
    assertThat(cards(Bench.notebook(), ride(Bench.setup()), out))
        .containsExactly(new GateCard(Gate.SAG_OUT, Optional.of(out.id())));
  }

  @Test
  void sagIsOldWithAPartChangedSinceAndNotWithOneBeforeOrAfter() {
    Entry.Session ride = ride(Bench.setup());
    Entry sag = sag("sag", Bench.SPRING.plusDays(5), "104", Optional.empty());
    assertThat(gates(ride, sag, part(Bench.SPRING.plusDays(4)))).isEmpty();
    assertThat(gates(ride, sag, part(Bench.SPRING.plusDays(6)))).containsExactly(Gate.SAG_OUT);
    assertThat(gates(ride, sag, part(DAY.plusDays(1)))).isEmpty();
  }

  /** The weight that was written with the sag counts before the rider's own of that day. */
  @Test
  void sagIsOldWithAnotherWeightThanItWasMeasuredWith() {
    for (String[] row : new String[][] {{"79.1", "0"}, {"79", "1"}, {"84.9", "0"}, {"85", "1"}}) {
      Optional<Amount> weight = Optional.of(Amount.of(row[0], Mass.KILOGRAM));
      assertThat(gates(ride(Bench.setup()), sag("sag", Bench.SPRING, "104", weight)))
          .as(row[0])
          .hasSize(Integer.parseInt(row[1]));
    }
  }
}
