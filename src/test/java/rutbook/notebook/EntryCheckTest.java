package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An entry names only what is there, and says of it only what fits. */
class EntryCheckTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);
  private static final SettingId NOWHERE = new SettingId("nowhere");

  private static Head head(String id) {
    return Head.of(new EntryId(id), Bench.BIKE, APRIL, 0);
  }

  private static void refused(Entry entry, String where, Fault fault, Object... facts) {
    refused(Bench.notebook(), entry, where, fault, facts);
  }

  private static void refused(
      Notebook notebook, Entry entry, String where, Fault fault, Object... facts) {
    assertThatThrownBy(() -> notebook.with(entry))
        .isInstanceOfSatisfying(
            NotebookException.class,
            refusal -> {
              assertThat(refusal.where()).isEqualTo(where);
              assertThat(refusal.fault()).isEqualTo(fault);
              assertThat(refusal.facts()).startsWith(facts);
            });
  }

  private static void taken(Notebook notebook, Entry entry) {
    assertThat(notebook.with(entry).entry(entry.id())).contains(entry);
  }

  private static Entry.Session ride(Setup start, Change... changes) {
    return Bench.session(
        "s-1", APRIL, Bench.HOLLOW, start, List.of(Bench.moto("m-1", List.of(changes), List.of())));
  }

  @Test
  void aSessionNamesATrackARiderAndABikeOfTheShelf() {
    Entry.Session ride = ride(Bench.setup());
    taken(Bench.notebook(), ride);
    TrackId track = new TrackId("elsewhere");
    refused(ride.at(track, Bench.RIDER), "entries/s-1", Fault.UNKNOWN_ID, "track", track);
    RiderId rider = new RiderId("nobody");
    refused(ride.at(Bench.HOLLOW, rider), "entries/s-1", Fault.UNKNOWN_ID, "rider", rider);
    BikeId bike = new BikeId("no-bike");
    refused(
        ride.with(Head.of(ride.id(), bike, APRIL, 0)),
        "entries/s-1",
        Fault.UNKNOWN_ID,
        "bike",
        bike);
  }

  @Test
  void aSessionStartsWithEverySettingOfItsSheet() {
    List<Placed> all = new ArrayList<>(Bench.setup().placed());
    all.removeIf(placed -> placed.setting().equals(Bench.TUBE));
    refused(ride(new Setup(all)), "entries/s-1/start", Fault.MISSING_SETTING, "Tube above clamp");
    all.add(Placed.set(NOWHERE, Reading.of(mm("5"))));
    refused(ride(new Setup(all)), "entries/s-1/start", Fault.UNKNOWN_ID, "setting", NOWHERE);
  }

  @Test
  void theOrderOfReadingsIsFree() {
    List<Placed> turned = new ArrayList<>(Bench.setup().placed());
    java.util.Collections.reverse(turned);
    taken(Bench.notebook(), ride(new Setup(turned)));
    turned.replaceAll(
        placed ->
            placed.setting().equals(Bench.TUBE)
                ? Placed.set(Bench.TUBE, Reading.of(mm("11")))
                : placed);
    refused(ride(new Setup(turned)), "entries/s-1/start", Fault.ABOVE_MOST, "Tube above clamp");
  }

  @Test
  void aChangeIsOfASettingAndInsideItsLimits() {
    Change beyond = Change.of(Bench.FORK_REBOUND, Reading.bothLegs(clicks(21)));
    refused(ride(Bench.setup(), beyond), "entries/s-1/motos/m-1", Fault.ABOVE_MOST, "Fork rebound");
    Change nowhere = Change.of(NOWHERE, Reading.of(mm("1")));
    refused(ride(Bench.setup(), nowhere), "entries/s-1/motos/m-1", Fault.UNKNOWN_ID, "setting");
    refused(
        new Entry.Adjusted(head("a-1"), List.of(beyond)),
        "entries/a-1",
        Fault.ABOVE_MOST,
        "Fork rebound");
  }

  /** What is found may lie anywhere, but it has the legs and the unit of its setting. */
  @Test
  void whatTheCheckFindsFitsItsSetting() {
    refused(checked(Reading.of(clicks(9))), "entries/s-1", Fault.WRONG_LEGS, "Fork rebound");
    refused(checked(Reading.bothLegs(mm("9"))), "entries/s-1", Fault.WRONG_UNIT, "Fork rebound");
    taken(Bench.notebook(), checked(Reading.bothLegs(clicks(40))));
  }

  private static Entry.Session checked(Reading seen) {
    return ride(Bench.setup())
        .withCheck(
            Optional.of(
                new EndOfDayCheck(List.of(new EndOfDayCheck.Found(Bench.FORK_REBOUND, seen)))));
  }

  private static Entry.RebuildJob job(EntryId baseline, Setup before, Optional<OilId> oil) {
    Job job = new Job(Scope.FORK, Set.of(Renewed.OIL), baseline, before, Bench.SPRING, oil);
    return new Entry.RebuildJob(head("job-1"), job, List.of(), Outcome.UNDER_WAY);
  }

  @Test
  void aRebuildNamesABaselineOfTheSameBikeAndAnOil() {
    taken(Bench.notebook(), job(Bench.FIRST_BASELINE, Bench.setup(), Optional.empty()));
    EntryId none = new EntryId("no-baseline");
    refused(
        job(none, Bench.setup(), Optional.empty()),
        "entries/job-1",
        Fault.UNKNOWN_ID,
        "entry",
        none);
    Notebook ridden = Bench.notebook().with(ride(Bench.setup()));
    EntryId session = new EntryId("s-1");
    refused(
        ridden,
        job(session, Bench.setup(), Optional.empty()),
        "entries/job-1",
        Fault.UNKNOWN_ID,
        "entry",
        session);
    OilId oil = new OilId("no-oil");
    refused(
        job(Bench.FIRST_BASELINE, Bench.setup(), Optional.of(oil)),
        "entries/job-1",
        Fault.UNKNOWN_ID,
        "oil",
        oil);
    Notebook other =
        Bench.notebook().with(new Bike(new BikeId("bike-2"), "Other", List.of(Bench.sheet())));
    Entry.RebuildJob onOther =
        job(Bench.FIRST_BASELINE, Bench.setup(), Optional.empty())
            .with(Head.of(new EntryId("job-2"), new BikeId("bike-2"), APRIL, 0));
    refused(other, onOther, "entries/job-2", Fault.UNKNOWN_ID, "entry", Bench.FIRST_BASELINE);
  }

  @Test
  void whatARebuildFoundAndPutsFitsItsSetting() {
    Setup legs = Bench.setup().with(Placed.found(Bench.FORK_OIL, Reading.of(ml("300"))));
    refused(
        job(Bench.FIRST_BASELINE, legs, Optional.empty()),
        "entries/job-1",
        Fault.WRONG_LEGS,
        "Outer chamber oil");
    Entry.RebuildJob job = job(Bench.FIRST_BASELINE, Bench.setup(), Optional.empty());
    StepId step = StepId.placing(Bench.FORK_OIL);
    refused(
        job.withDone(measured(step, Reading.bothLegs(mm("100")))),
        "entries/job-1/done/place:fork-oil",
        Fault.WRONG_UNIT,
        "Outer chamber oil");
    refused(
        job.withDone(measured(StepId.placing(NOWHERE), Reading.of(mm("1")))),
        "entries/job-1/done/place:nowhere",
        Fault.UNKNOWN_ID,
        "setting",
        NOWHERE);
    taken(Bench.notebook(), job.withDone(measured(step, Reading.bothLegs(ml("345")))));
    taken(Bench.notebook(), job.withDone(measured(new StepId("sag"), Reading.of(mm("104")))));
  }

  private static StepDone measured(StepId step, Reading reading) {
    return new StepDone(step, Instant.EPOCH, new Entered.Measured(reading, Optional.empty()));
  }

  @Test
  void aServiceIsOfTheSheetOfItsDay() {
    ServiceId unknown = new ServiceId("linkage");
    refused(
        new Entry.Serviced(head("sv-1"), List.of(new ServiceId("fork-oil"), unknown), ""),
        "entries/sv-1",
        Fault.UNKNOWN_ID,
        "service",
        unknown);
  }

  @Test
  void aBaselineFromARebuildNamesIt() {
    Entry.Baseline after =
        new Entry.Baseline(
            head("base-2"),
            Bench.setup(),
            Optional.empty(),
            Optional.empty(),
            "after the rebuild",
            Optional.of(new EntryId("job-1")));
    refused(after, "entries/base-2", Fault.UNKNOWN_ID, "entry");
    Notebook rebuilt =
        Bench.notebook().with(job(Bench.FIRST_BASELINE, Bench.setup(), Optional.empty()));
    taken(rebuilt, after);
  }

  private static Entry.Advice advice(SettingId setting, Reading from, Reading to, Answer answer) {
    return new Entry.Advice(
        head("ad-1"),
        new Source.Own("trade"),
        List.of(
            new Proposal(
                new ProposalId("p-1"), setting, from, to, "", OptionalDouble.empty(), answer)),
        "");
  }

  @Test
  void aProposalThatCanBeFollowedIsInsideTheLimits() {
    Reading from = Reading.bothLegs(clicks(11));
    Reading beyond = Reading.bothLegs(clicks(21));
    Answer held = new Answer.Held(clicks(20));
    refused(
        advice(Bench.FORK_REBOUND, from, beyond, new Answer.Open()),
        "entries/ad-1",
        Fault.ABOVE_MOST,
        "Fork rebound");
    taken(Bench.notebook(), advice(Bench.FORK_REBOUND, from, beyond, held));
    taken(Bench.notebook(), advice(Bench.FORK_REBOUND, from, beyond, new Answer.Declined("no")));
    refused(
        advice(Bench.FORK_REBOUND, Reading.of(clicks(11)), beyond, held),
        "entries/ad-1",
        Fault.WRONG_LEGS,
        "Fork rebound");
    refused(
        advice(Bench.FORK_REBOUND, from, Reading.of(clicks(9)), held),
        "entries/ad-1",
        Fault.WRONG_LEGS,
        "Fork rebound");
  }

  /** What was declined may be of a setting that only an earlier sheet had. */
  @Test
  void onlyWhatWasDeclinedMayBeOfAnEarlierSheet() {
    List<Setting> fewer = new ArrayList<>(Bench.settings());
    fewer.removeIf(setting -> setting.id().equals(Bench.TYRE_REAR));
    Sheet later = Bench.sheet().with(APRIL, "no rear tyre").withSettings(fewer);
    Notebook notebook = Bench.notebook().with(Bench.bike().with(later));
    Reading bar = Bench.setup().reading(Bench.TYRE_REAR).orElseThrow();
    taken(notebook, advice(Bench.TYRE_REAR, bar, bar, new Answer.Declined("no")));
    refused(
        notebook,
        advice(Bench.TYRE_REAR, bar, bar, new Answer.Open()),
        "entries/ad-1",
        Fault.UNKNOWN_ID,
        "setting",
        Bench.TYRE_REAR);
    refused(
        notebook,
        advice(NOWHERE, bar, bar, new Answer.Declined("no")),
        "entries/ad-1",
        Fault.UNKNOWN_ID,
        "setting",
        NOWHERE);
  }

  @Test
  void aSetupThatWasHandedOverIsCheckedAgainstItsOwnSheet() {
    Setup beyond = Bench.setup().with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(clicks(21))));
    refused(
        new Entry.HandedOver(
            head("ho-1"),
            new HandOverId("ho"),
            new Snapshot(beyond, Bench.SPRING, Set.of()),
            "0123"),
        "entries/ho-1/snapshot",
        Fault.ABOVE_MOST,
        "Fork rebound");
  }

  @Test
  void anEntryThatIsNamedStaysWhatItIs() {
    Notebook notebook =
        Bench.notebook().with(job(Bench.FIRST_BASELINE, Bench.setup(), Optional.empty()));
    Entry service =
        new Entry.Serviced(
            Head.of(Bench.FIRST_BASELINE, Bench.BIKE, APRIL, 0),
            List.of(new ServiceId("fork-oil")),
            "");
    refused(notebook, service, "entries/job-1", Fault.UNKNOWN_ID, "entry", Bench.FIRST_BASELINE);
    assertThatThrownBy(() -> notebook.without(Bench.FIRST_BASELINE))
        .isInstanceOf(NotebookException.class)
        .hasMessageContaining("base-1");
    assertThatCode(() -> notebook.without(new EntryId("job-1"))).doesNotThrowAnyException();
  }

  @Test
  void twoEntriesHaveTwoIds() {
    Entry baseline = Bench.baseline(Bench.setup());
    Notebook notebook = Bench.notebook();
    assertThatThrownBy(
            () ->
                Notebook.of(
                    notebook.id(),
                    notebook.shelf(),
                    List.of(baseline, baseline),
                    List.of(),
                    notebook.display()))
        .isInstanceOf(NotebookException.class)
        .hasMessageContaining("TWICE [entry, base-1]");
  }

  /**
   * What is found may lie beyond a limit, but not in another unit or in the wrong number of legs.
   */
  @Test
  void whatASessionFoundFitsItsSetting() {
    Setup beyond =
        Bench.setup().with(Placed.found(Bench.FORK_REBOUND, Reading.bothLegs(clicks(40))));
    taken(Bench.notebook(), ride(beyond));
    Setup legs = Bench.setup().with(Placed.found(Bench.FORK_REBOUND, Reading.of(clicks(9))));
    refused(ride(legs), "entries/s-1/start", Fault.WRONG_LEGS, "Fork rebound");
    Setup unit = Bench.setup().with(Placed.found(Bench.FORK_REBOUND, Reading.bothLegs(mm("9"))));
    refused(ride(unit), "entries/s-1/start", Fault.WRONG_UNIT, "Fork rebound");
  }

  @Test
  void aSessionHasNoMoreSettingsThanItsSheet() {
    Setup more = Bench.setup().with(Placed.set(NOWHERE, Reading.of(mm("5"))));
    refused(ride(more), "entries/s-1/start", Fault.UNKNOWN_ID, "setting", NOWHERE);
  }
}
