package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.EventKind;
import rutbook.notebook.Feel;
import rutbook.notebook.Gate;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Ready;
import rutbook.notebook.Rider;
import rutbook.notebook.Section;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.units.Amount;
import rutbook.units.Duration;
import rutbook.units.Mass;
import rutbook.units.SpringRate;

class GatesTest {
  private static final LocalDate LATER = Bench.SPRING.plusDays(20);

  private static Head head(String id, LocalDate day) {
    return Head.of(new EntryId(id), Bench.BIKE, day, 0);
  }

  private static Head head(String id, LocalDate day, String hours) {
    return head(id, day).withMeter(Optional.of(Amount.of(hours, Duration.HOUR)));
  }

  private static Entry.SagMeasured sag(Head head) {
    return new Entry.SagMeasured(
        head,
        End.REAR,
        Optional.of(Bench.mm("104")),
        Optional.of(Bench.mm("33")),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Entry.Session ready(Head head, Setup setup, Set<Ready> ready) {
    Entry.Session session =
        Bench.session(
            "s",
            head.day(),
            Bench.HOLLOW,
            setup,
            List.of(
                Bench.moto(
                    "a",
                    List.of(),
                    List.of(Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, 4)))));
    Conditions was = session.conditions();
    return session
        .with(head)
        .withConditions(
            new Conditions(was.ground(), was.moisture(), was.roughness(), was.air(), ready));
  }

  private static Entry.Session ready(Head head) {
    return ready(head, Bench.setup(), Set.of(Ready.values()));
  }

  private static NextChange after(Notebook notebook, Entry... entries) {
    Notebook with = notebook;
    for (Entry each : entries) {
      with = with.with(each);
    }
    return NextChange.of(with, Bench.BIKE, RulesJson.ofTheTrade());
  }

  private static List<Gate> gates(Entry... entries) {
    return after(Bench.notebook(), entries).gates().stream().map(GateCard::gate).toList();
  }

  private static Entry event(String id, LocalDate day, EventKind kind, End end) {
    return new Entry.Event(head(id, day), kind, Optional.of(end), Optional.empty(), "seen");
  }

  @Test
  void withEverythingCheckedNothingComesBeforeTheClickers() {
    assertThat(gates(sag(head("sag", Bench.SPRING)), ready(head("s", LATER)))).isEmpty();
  }

  @Test
  void aCrashStopsAllSuggestionsUntilTheBikeIsCheckedAndNoReasonWavesItThrough() {
    Entry sag = sag(head("sag", Bench.SPRING));
    Entry ridden = ready(head("s", LATER));
    Entry crash = event("crash", LATER.plusDays(1), EventKind.CRASH, End.FRONT);
    NextChange stopped = after(Bench.notebook(), sag, ridden, crash);
    assertThat(stopped.kind()).isEqualTo(NextChange.Kind.STOP);
    assertThat(stopped.suggestions()).isEmpty();
    assertThat(stopped.gates())
        .containsExactly(new GateCard(Gate.FAULT_OR_CRASH, Optional.of(crash.id())));
    Entry reason =
        new Entry.GateDismissed(head("why", LATER.plusDays(1)), Gate.FAULT_OR_CRASH, "looks fine");
    assertThat(after(Bench.notebook(), sag, ridden, crash, reason).kind())
        .isEqualTo(NextChange.Kind.STOP);
    Entry sound = event("sound", LATER.plusDays(2), EventKind.CHECKED_SOUND, End.FRONT);
    NextChange again = after(Bench.notebook(), sag, ridden, crash, sound);
    assertThat(again.gates()).isEmpty();
    assertThat(again.kind()).isEqualTo(NextChange.Kind.CHANGE);
  }

  @Test
  void anyOtherGateMayBeWavedThroughWithAReasonForThatDay() {
    Entry ridden = ready(head("s", LATER));
    assertThat(gates(ridden)).containsExactly(Gate.SAG_OUT);
    Entry reason = new Entry.GateDismissed(head("why", LATER), Gate.SAG_OUT, "no scale here");
    assertThat(gates(ridden, reason)).isEmpty();
  }

  @Test
  void sagIsTooOldAfterTenHours() {
    Entry sag = sag(head("sag", Bench.SPRING, "10"));
    assertThat(gates(sag, ready(head("s", LATER, "19.9")))).isEmpty();
    assertThat(gates(sag, ready(head("s", LATER, "20")))).containsExactly(Gate.SAG_OUT);
  }

  @Test
  void sagIsTooOldOnceTheRiderIsThreeKilogramsHeavierOrLighter() {
    assertThat(sagOfRiderThen("84.9")).isEmpty();
    assertThat(sagOfRiderThen("85")).containsExactly(Gate.SAG_OUT);
    assertThat(sagOfRiderThen("79")).containsExactly(Gate.SAG_OUT);
  }

  private static List<Gate> sagOfRiderThen(String kilograms) {
    Rider rider = Bench.shelf().rider(Bench.RIDER).orElseThrow();
    List<Rider.Weight> weights = new java.util.ArrayList<>(rider.weights());
    weights.add(new Rider.Weight(LATER, Amount.of(kilograms, Mass.KILOGRAM)));
    Notebook empty = Bench.notebook();
    Notebook heavier =
        Notebook.of(
            empty.id(),
            empty.shelf().with(new Rider(rider.id(), rider.name(), weights)),
            empty.entries(),
            empty.ruleChanges(),
            empty.display());
    return after(heavier, sag(head("sag", Bench.SPRING)), ready(head("s", LATER))).gates().stream()
        .map(GateCard::gate)
        .toList();
  }

  @Test
  void sagIsTooOldWithAnotherSpringOrAnotherPartOfTheRear() {
    Entry sag = sag(head("sag", Bench.SPRING));
    Reading was = Bench.setup().reading(Bench.SHOCK_SPRING).orElseThrow();
    Reading stiffer = was.map(each -> each.plus(Amount.of(3, SpringRate.NEWTON_PER_MILLIMETRE)));
    Setup sprung = Bench.setup().with(Placed.set(Bench.SHOCK_SPRING, stiffer));
    assertThat(gates(sag, ready(head("s", LATER), sprung, Set.of(Ready.values()))))
        .contains(Gate.SAG_OUT);
    Entry linkage = event("link", Bench.SPRING.plusDays(3), EventKind.PART_CHANGED, End.REAR);
    assertThat(gates(sag, linkage, ready(head("s", LATER)))).containsExactly(Gate.SAG_OUT);
  }

  @Test
  void anAxleThatWasOutIsAskedForUntilItIsNotedAsAligned() {
    Entry sag = sag(head("sag", Bench.SPRING));
    Entry wheel = event("wheel", Bench.SPRING.plusDays(3), EventKind.PART_CHANGED, End.FRONT);
    Set<Ready> others = Set.of(Ready.TYRES_COLD, Ready.AIR_SPRING_COLD, Ready.FORK_AIR_BLED);
    assertThat(gates(sag, wheel, ready(head("s", LATER), Bench.setup(), others)))
        .containsExactly(Gate.AXLE_NOT_ALIGNED);
    assertThat(gates(sag, wheel, ready(head("s", LATER)))).isEmpty();
  }

  @Test
  void whatWasNotCheckedThatDayIsAskedForInTheTradesOrder() {
    assertThat(gates(ready(head("s", LATER), Bench.setup(), Set.of())))
        .containsExactly(Gate.PRESSURES_NOT_CHECKED, Gate.SAG_OUT, Gate.FORK_NOT_BLED);
  }

  @Test
  void aDayWithChangesAndNoCheckAtItsEndIsSaidTheNextTimeOut() {
    Entry sag = sag(head("sag", Bench.SPRING));
    Entry.Session moved = moved("before", LATER.minusDays(1));
    Entry.Session next = ready(head("s", LATER), moved.end(), Set.of(Ready.values()));
    assertThat(after(Bench.notebook(), sag, moved, next).gates())
        .containsExactly(new GateCard(Gate.NOT_CHECKED_AFTER, Optional.of(moved.id())));
    assertThat(gates(sag, moved)).isEmpty();
    assertThat(gates(sag, moved.withMotos(moved.motos().subList(0, 1)), next)).isEmpty();
  }

  @Test
  void aCheckAtTheEndOfThatDayOrOfAnyLaterOneClearsIt() {
    Entry sag = sag(head("sag", Bench.SPRING));
    Entry.Session moved = moved("before", LATER.minusDays(1));
    Entry.Session next = ready(head("s", LATER), moved.end(), Set.of(Ready.values()));
    Optional<EndOfDayCheck> check = Optional.of(new EndOfDayCheck(List.of()));
    assertThat(gates(sag, moved.withCheck(check), next)).isEmpty();
    assertThat(gates(sag, moved, next.withCheck(check))).isEmpty();
    Entry reason = new Entry.GateDismissed(head("why", LATER), Gate.NOT_CHECKED_AFTER, "counted");
    assertThat(gates(sag, moved, next, reason)).isEmpty();
  }

  /** A day with everything ready, two motos, a change before the second, no check at its end. */
  private static Entry.Session moved(String id, LocalDate day) {
    Entry.Session one = ready(head(id, day), Bench.setup(), Set.of(Ready.values()));
    Reading was = Bench.setup().reading(Bench.FORK_COMPRESSION).orElseThrow();
    Change change = Change.of(Bench.FORK_COMPRESSION, was.map(each -> each.plus(Bench.clicks(1))));
    return one.withMotos(List.of(one.motos().get(0), Bench.moto("b", List.of(change), List.of())));
  }

  @Test
  void aServiceThatIsDueIsSaid() {
    Entry sag = sag(head("sag", LATER, "31"));
    assertThat(gates(sag, ready(head("s", LATER, "31")))).containsExactly(Gate.SERVICE_DUE);
  }
}
