package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Hours worked by hand: readings 10, 14, 20; the fork oil new at 14. */
class HoursTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);
  private static final ServiceItem FORK_OIL = Bench.services().get(0);
  private static final ServiceItem SHOCK_OIL = Bench.services().get(1);

  private static Head head(String id, int day, String meter) {
    return Head.of(new EntryId(id), Bench.BIKE, APRIL.plusDays(day), 0)
        .withMeter(Optional.of(hours(meter)));
  }

  private static Entry service(String id, int day, String meter, ServiceItem item) {
    return new Entry.Serviced(head(id, day, meter), List.of(item.id()), "");
  }

  private static Entry.RebuildJob rebuild(Scope scope, Set<Renewed> renewed, Outcome outcome) {
    Job job =
        new Job(
            scope, renewed, Bench.FIRST_BASELINE, Bench.setup(), Bench.SPRING, Optional.empty());
    return new Entry.RebuildJob(head("job-1", 1, "14"), job, List.of(), outcome);
  }

  private static Hours hoursOf(Entry... entries) {
    Notebook notebook = Bench.notebook();
    for (Entry entry : entries) {
      notebook = notebook.with(entry);
    }
    return Timeline.of(notebook, Bench.BIKE).hours();
  }

  private static Entry event(String id, int day, String meter) {
    return new Entry.Event(
        head(id, day, meter), EventKind.CRASH, Optional.empty(), Optional.empty(), "");
  }

  @Test
  void hoursRunAndSinceAServiceAtEveryEntry() {
    Hours run =
        hoursOf(event("e-1", 0, "10"), service("sv-1", 1, "14", FORK_OIL), event("e-2", 2, "20"));
    assertThat(run.total()).isEqualTo(20);
    assertThat(run.at(new EntryId("e-1"))).isEqualTo(10);
    assertThat(run.at(new EntryId("sv-1"))).isEqualTo(14);
    assertThat(run.since(FORK_OIL)).isEqualTo(6);
    assertThat(run.since(SHOCK_OIL)).isEqualTo(20);
    assertThat(run.sinceAtEach(FORK_OIL)).containsExactly(0, 10, 0, 6);
    assertThat(run.sinceAtEach(SHOCK_OIL)).containsExactly(0, 10, 14, 20);
    assertThat(run.everDone(FORK_OIL)).isTrue();
    assertThat(run.everDone(SHOCK_OIL)).isFalse();
    assertThat(run.meter()).contains(hours("20"));
  }

  @Test
  void nothingWrittenDownHasRunNothing() {
    Notebook empty =
        Notebook.of(
            new NotebookId("nb"),
            Bench.shelf(),
            List.of(),
            List.of(),
            rutbook.units.Display.METRIC);
    Hours none = Timeline.of(empty, Bench.BIKE).hours();
    assertThat(none.total()).isZero();
    assertThat(none.meter()).isEmpty();
    assertThat(none.since(FORK_OIL)).isZero();
  }

  /** A reading below the last is no reading of the meter; the one after counts from the highest. */
  @Test
  void aReadingBelowTheLastIsPassedOver() {
    Hours run = hoursOf(event("e-1", 0, "50"), event("e-2", 1, "48"), event("e-3", 2, "50"));
    assertThat(run.total()).isEqualTo(50);
    assertThat(run.meter()).contains(hours("50"));
    assertThat(hoursOf(event("e-1", 0, "50"), event("e-2", 1, "48")).meter()).contains(hours("50"));
  }

  @Test
  void aNewMeterShowsWhatItReads() {
    Entry change =
        new Entry.MeterChange(
            Head.of(new EntryId("mc"), Bench.BIKE, APRIL.plusDays(1), 0),
            hours("12.5"),
            hours("3"));
    Hours run = hoursOf(event("e-1", 0, "10"), change);
    assertThat(run.total()).isCloseTo(12.5, within(1e-9));
    assertThat(run.meter()).contains(hours("3"));
    assertThat(hoursOf(event("e-1", 0, "10"), change, event("e-2", 2, "5")).total())
        .isCloseTo(14.5, within(1e-9));
  }

  private static List<ServiceKind> settled(Scope scope, Set<Renewed> renewed, Outcome outcome) {
    List<ServiceKind> settled = new ArrayList<>();
    for (ServiceKind kind : ServiceKind.values()) {
      ServiceItem item =
          new ServiceItem(new ServiceId("any"), "Any", End.FRONT, kind, hours("10"), true);
      if (Hours.settles(rebuild(scope, renewed, outcome), item)) {
        settled.add(kind);
      }
    }
    return settled;
  }

  /** Oil and seals are new where the rebuild reached and they were renewed. */
  @Test
  void aRebuildSettlesWhatItRenewed() {
    Set<Renewed> all = Set.of(Renewed.values());
    assertThat(settled(Scope.BOTH, all, Outcome.BACK))
        .containsExactly(ServiceKind.FORK_OIL, ServiceKind.FORK_SEALS, ServiceKind.SHOCK_OIL);
    assertThat(settled(Scope.FORK, all, Outcome.NOT_BACK))
        .containsExactly(ServiceKind.FORK_OIL, ServiceKind.FORK_SEALS);
    assertThat(settled(Scope.SHOCK, all, Outcome.BACK)).containsExactly(ServiceKind.SHOCK_OIL);
    assertThat(settled(Scope.BOTH, Set.of(Renewed.SEALS), Outcome.BACK))
        .containsExactly(ServiceKind.FORK_SEALS);
    assertThat(settled(Scope.BOTH, Set.of(Renewed.SPRING), Outcome.BACK)).isEmpty();
  }

  @Test
  void aRebuildThatIsNotDoneSettlesNothing() {
    Set<Renewed> all = Set.of(Renewed.values());
    for (Outcome open : List.of(Outcome.GIVEN_UP, Outcome.UNDER_WAY, Outcome.AT_THE_SHOP)) {
      assertThat(settled(Scope.BOTH, all, open)).as(open.name()).isEmpty();
    }
    assertThat(Hours.settles(event("e-1", 0, "10"), FORK_OIL)).isFalse();
  }

  @Test
  void hoursSinceAServiceRunFromItsLastTime() {
    Hours run =
        hoursOf(
            service("sv-1", 0, "10", FORK_OIL),
            event("e-1", 1, "13"),
            service("sv-2", 2, "14", FORK_OIL),
            event("e-2", 3, "20"));
    assertThat(run.sinceAtEach(FORK_OIL)).containsExactly(0, 0, 3, 0, 6);
    assertThat(run.since(FORK_OIL)).isEqualTo(6);
  }

  @Test
  void hoursRunFromTheRebuildThatChangedTheOil() {
    Hours run =
        hoursOf(
            event("e-1", 0, "10"),
            rebuild(Scope.FORK, Set.of(Renewed.OIL), Outcome.BACK),
            event("e-2", 2, "20"));
    assertThat(run.since(FORK_OIL)).isEqualTo(6);
    assertThat(run.since(SHOCK_OIL)).isEqualTo(20);
    assertThat(run.sinceAtEach(FORK_OIL)).containsExactly(0, 10, 0, 6);
  }

  private static Entry.RebuildJob readAtTheFirstStep(Reading meter) {
    Entry.RebuildJob job = rebuild(Scope.FORK, Set.of(Renewed.OIL), Outcome.BACK);
    return job.with(job.head().withMeter(Optional.empty()))
        .withDone(new StepDone(StepId.METER, Instant.EPOCH, new Entered.Counted(meter)));
  }

  @Test
  void aRebuildReadsTheMeterAtItsFirstStep() {
    Hours run =
        hoursOf(
            event("e-1", 0, "10"),
            readAtTheFirstStep(Reading.of(hours("14"))),
            event("e-2", 2, "20"));
    assertThat(run.at(new EntryId("job-1"))).isEqualTo(14);
    assertThat(run.since(FORK_OIL)).isEqualTo(6);
    Hours noHours = hoursOf(event("e-1", 0, "10"), readAtTheFirstStep(Reading.of(Bench.mm("14"))));
    assertThat(noHours.total()).isEqualTo(10);
    Hours head = hoursOf(readAtTheFirstStep(Reading.of(hours("14"))).with(head("job-1", 1, "12")));
    assertThat(head.total()).isEqualTo(12);
  }
}
