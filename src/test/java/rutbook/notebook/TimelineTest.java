package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.hours;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.units.Display;

class TimelineTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);
  private static final ServiceItem FORK_OIL = Bench.services().get(0);

  private static Timeline of(Notebook notebook) {
    return Timeline.of(notebook, Bench.BIKE);
  }

  private static Entry.Session ride(String id, LocalDate day, Setup start, Change... changes) {
    return Bench.session(
        id, day, Bench.HOLLOW, start, List.of(Bench.moto(id + "-m1", List.of(changes), List.of())));
  }

  private static Entry at(Entry entry, int order, String meter) {
    Head head = entry.head().on(entry.day(), order).withMeter(Optional.of(hours(meter)));
    return entry.with(head);
  }

  @Test
  void beforeAnythingIsRiddenTheFirstBaselineIsOnTheBike() {
    assertThat(of(Bench.notebook()).now()).isEqualTo(Bench.setup());
  }

  @Test
  void whatIsOnTheBikeIsTheLastSessionWithItsChangesAndTheAdjustmentsSince() {
    Change softer = Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(14)));
    Change lower = Change.of(Bench.TUBE, Reading.of(mm("7")));
    Notebook notebook =
        Bench.notebook()
            .with(ride("s-1", APRIL, Bench.setup(), softer))
            .with(
                new Entry.Adjusted(
                    Head.of(new EntryId("a-1"), Bench.BIKE, APRIL.plusDays(1), 0), List.of(lower)));
    Setup expected =
        Bench.setup()
            .with(Placed.set(Bench.FORK_COMPRESSION, softer.to()))
            .with(Placed.set(Bench.TUBE, lower.to()));
    assertThat(of(notebook).now()).isEqualTo(expected);
    assertThat(of(notebook).before(new EntryId("s-1"))).isEqualTo(Bench.setup());
  }

  @Test
  void anEarlySessionEditedLeavesTheLaterStartsAlone() {
    Change softer = Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(14)));
    Notebook notebook =
        Bench.notebook()
            .with(ride("s-1", APRIL, Bench.setup()))
            .with(ride("s-2", APRIL.plusDays(7), Bench.setup()));
    Notebook edited = notebook.with(ride("s-1", APRIL, Bench.setup(), softer));
    assertThat(of(edited).now()).isEqualTo(of(notebook).now());
  }

  @Test
  void whatTheEndOfDayCheckFindsIsWhatIsOnTheBike() {
    Reading seen = Reading.of(clicks(11), clicks(13));
    Entry.Session checked =
        ride("s-1", APRIL, Bench.setup())
            .withCheck(
                Optional.of(
                    new EndOfDayCheck(List.of(new EndOfDayCheck.Found(Bench.FORK_REBOUND, seen)))));
    assertThat(of(Bench.notebook().with(checked)).now().placed(Bench.FORK_REBOUND))
        .contains(Placed.found(Bench.FORK_REBOUND, seen));
  }

  @Test
  void aRebuildPutsWhatItsStepsSay() {
    Entry.RebuildJob job =
        new Entry.RebuildJob(
            Head.of(new EntryId("job-1"), Bench.BIKE, APRIL, 0),
            new Job(
                Scope.FORK,
                Set.of(Renewed.OIL),
                Bench.FIRST_BASELINE,
                Bench.setup(),
                Bench.SPRING,
                Optional.empty()),
            List.of(
                new StepDone(
                    StepId.placing(Bench.FORK_OIL),
                    Instant.EPOCH,
                    new Entered.Measured(Reading.of(ml("340"), ml("341")), Optional.empty()))),
            Outcome.UNDER_WAY);
    assertThat(of(Bench.notebook().with(job)).now().reading(Bench.FORK_OIL))
        .contains(Reading.of(ml("340"), ml("341")));
  }

  @Test
  void storageOrderMeansNothing() {
    List<Entry> entries = new ArrayList<>(Bench.notebook().entries());
    for (int i = 0; i < 12; i++) {
      Change change = Change.of(Bench.FORK_REBOUND, Reading.bothLegs(clicks(5 + i)));
      entries.add(at(ride("s-" + i, APRIL.plusDays(i / 3), Bench.setup(), change), i % 3, "1" + i));
    }
    Timeline straight = of(notebook(entries));
    for (int seed = 0; seed < 20; seed++) {
      List<Entry> shuffled = new ArrayList<>(entries);
      Collections.shuffle(shuffled, new Random(seed));
      Timeline mixed = of(notebook(shuffled));
      assertThat(mixed.entries()).isEqualTo(straight.entries());
      assertThat(mixed.now()).isEqualTo(straight.now());
      assertThat(mixed.hours().total()).isEqualTo(straight.hours().total());
    }
  }

  private static Notebook notebook(List<Entry> entries) {
    return Notebook.of(new NotebookId("nb-1"), Bench.shelf(), entries, List.of(), Display.METRIC);
  }

  @Test
  void hoursRunOnOverANewMeter() {
    Notebook notebook =
        Bench.notebook()
            .with(at(ride("s-1", APRIL, Bench.setup()), 0, "100"))
            .with(at(serviced("sv-1", APRIL), 1, "100"))
            .with(at(ride("s-2", APRIL.plusDays(7), Bench.setup()), 0, "104.5"))
            .with(
                new Entry.MeterChange(
                    Head.of(new EntryId("mc-1"), Bench.BIKE, APRIL.plusDays(8), 0),
                    hours("105"),
                    hours("0")))
            .with(at(ride("s-3", APRIL.plusDays(14), Bench.setup()), 0, "3.5"));
    Hours run = of(notebook).hours();
    assertThat(run.total()).isCloseTo(108.5, within(1e-9));
    assertThat(run.since(FORK_OIL)).isCloseTo(8.5, within(1e-9));
  }

  @Test
  void aMeterThatReadsLessAddsNothing() {
    Notebook notebook =
        Bench.notebook()
            .with(at(ride("s-1", APRIL, Bench.setup()), 0, "50"))
            .with(at(ride("s-2", APRIL.plusDays(1), Bench.setup()), 0, "48"))
            .with(at(ride("s-3", APRIL.plusDays(2), Bench.setup()), 0, "52"));
    assertThat(of(notebook).hours().total()).isCloseTo(52, within(1e-9));
  }

  private static Entry serviced(String id, LocalDate day) {
    return new Entry.Serviced(
        Head.of(new EntryId(id), Bench.BIKE, day, 0), List.of(FORK_OIL.id()), "");
  }

  @Test
  void aDayBeforeTheFirstSheetIsRefused() {
    assertThatThrownBy(
            () -> Bench.notebook().with(ride("s-1", Bench.SPRING.minusDays(1), Bench.setup())))
        .isInstanceOfSatisfying(
            NotebookException.class, fault -> assertThat(fault.fault()).isEqualTo(Fault.NO_SHEET));
    assertThatThrownBy(() -> Head.of(new EntryId("x"), Bench.BIKE, LocalDate.of(1900, 1, 1), 0))
        .isInstanceOfSatisfying(
            NotebookException.class, fault -> assertThat(fault.fault()).isEqualTo(Fault.BAD_DAY));
  }

  @Test
  void aNewSheetLeavesOlderEntriesWithTheirs() {
    Chamber narrower =
        new Chamber(
            Bench.OUTER,
            "Outer chamber",
            Carrier.PAIR,
            Measure.VOLUME,
            new Range(ml("300"), ml("330")),
            Optional.empty(),
            Optional.empty());
    Sheet later =
        Bench.sheet()
            .with(APRIL, "narrower limit")
            .withChambers(List.of(Bench.chambers().get(0), narrower));
    Notebook notebook = Bench.notebook().with(Bench.bike().with(later));
    assertThat(of(notebook).now().reading(Bench.FORK_OIL)).contains(Reading.bothLegs(ml("335")));
    assertThatThrownBy(() -> notebook.with(ride("s-1", APRIL, Bench.setup())))
        .isInstanceOfSatisfying(
            NotebookException.class,
            fault -> assertThat(fault.fault()).isEqualTo(Fault.ABOVE_MOST));
    Setup start = of(notebook).startOn(APRIL);
    assertThat(start)
        .isEqualTo(Bench.setup().with(Placed.found(Bench.FORK_OIL, Reading.bothLegs(ml("335")))));
    assertThat(of(notebook.with(ride("s-1", APRIL, start))).now()).isEqualTo(start);
  }

  @Test
  void aSettingIdKeepsItsUnitAndDatumAcrossSheets() {
    Setting inTurns =
        Bench.measured(
            Bench.FORK_REBOUND,
            "Fork rebound",
            Role.FORK_REBOUND,
            Carrier.PAIR,
            new Range(Bench.turns("0"), Bench.turns("3")),
            "0.25");
    List<Setting> settings = new ArrayList<>(Bench.settings());
    settings.replaceAll(each -> each.id().equals(Bench.FORK_REBOUND) ? inTurns : each);
    Sheet later = Bench.sheet().with(APRIL, "new adjuster").withSettings(settings);
    assertThatThrownBy(() -> Bench.bike().with(later)).isInstanceOf(NotebookException.class);
  }

  @Test
  void aCrashBeforeTheFirstBaselineDoesNotHideIt() {
    Entry.Event crash =
        new Entry.Event(
            Head.of(new EntryId("a-crash"), Bench.BIKE, Bench.SPRING, 0),
            EventKind.CRASH,
            Optional.empty(),
            Optional.empty(),
            "");
    Timeline timeline = Timeline.of(Bench.notebook().with(crash), Bench.BIKE);
    assertThat(timeline.entries().get(0)).isEqualTo(crash);
    assertThat(timeline.now()).isEqualTo(Bench.setup());
  }

  @Test
  void aLaterBaselineSaysOnlyWhatNothingElseSaid() {
    Setup other =
        Bench.setup().with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(Bench.clicks(5))));
    Entry.Baseline second =
        new Entry.Baseline(
            Head.of(new EntryId("base-2"), Bench.BIKE, Bench.SPRING.plusDays(1), 0),
            other,
            Optional.empty(),
            Optional.empty(),
            "wished for",
            Optional.empty());
    assertThat(Timeline.of(Bench.notebook().with(second), Bench.BIKE).now())
        .isEqualTo(Bench.setup());
  }

  @Test
  void aMeterThatIsChangedBeforeItWasEverReadHasRunWhatItShowed() {
    Entry.MeterChange change =
        new Entry.MeterChange(
            Head.of(new EntryId("meter"), Bench.BIKE, Bench.SPRING, 1),
            Bench.hours("29"),
            Bench.hours("0"));
    Timeline timeline = Timeline.of(Bench.notebook().with(change), Bench.BIKE);
    assertThat(timeline.hours().total()).isEqualTo(29);
  }
}
