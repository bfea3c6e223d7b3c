package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.mm;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Answer;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Ground;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Head;
import rutbook.notebook.Job;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Outcome;
import rutbook.notebook.Placed;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Snapshot;
import rutbook.notebook.Source;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.units.Amount;

/** What each kind of side is: which setup, sheet, sag, conditions, feel and trust. */
class SubjectTest {
  private static final LocalDate MAY = LocalDate.of(2026, 5, 3);
  private static final Track HOLLOW = Bench.shelf().track(Bench.HOLLOW).orElseThrow();
  private static final Track DUNE = Bench.shelf().track(Bench.DUNE).orElseThrow();
  private static final Reading FOURTEEN = Reading.bothLegs(clicks(14));
  private static final Change SOFTER = Change.of(Bench.FORK_COMPRESSION, FOURTEEN);

  private static Head head(String id, int day) {
    return Head.of(new EntryId(id), Bench.BIKE, MAY.plusDays(day), 0);
  }

  private static Timeline timeline(Entry... entries) {
    Notebook notebook = Bench.notebook();
    for (Entry entry : entries) {
      notebook = notebook.with(entry);
    }
    return Timeline.of(notebook, Bench.BIKE);
  }

  private static Entry sag(String id, int day, End end, String race, String free) {
    return new Entry.SagMeasured(
        head(id, day),
        end,
        Optional.of(mm(race)),
        Optional.of(mm(free)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Moto moto(String id, int trust, Feel... feel) {
    Moto moto = Bench.moto(id, List.of(), List.of(feel));
    return trust == 0 ? moto : moto.withReport(moto.report().withTrust(OptionalInt.of(trust)));
  }

  private static Feel feel(Symptom symptom, int severity) {
    return Feel.of(End.FRONT, Section.RUTS, symptom, severity);
  }

  private static Entry.Session session(Track track, Moto... motos) {
    return Bench.session("s-1", MAY, track.id(), Bench.setup(), List.of(motos));
  }

  @Test
  void nowIsTheLastSetupOfTheNewestSheetWithTheSagOfTheDay() {
    Timeline timeline =
        timeline(
            session(HOLLOW, moto("m-1", 5).withChanges(List.of(SOFTER))),
            sag("sag-1", 1, End.REAR, "104", "33"),
            sag("sag-2", 2, End.FRONT, "71", "25"));
    Subject now = Subject.now(timeline);
    assertThat(now.choice()).isEqualTo(new Choice.Now());
    assertThat(now.day()).isEqualTo(MAY.plusDays(2));
    assertThat(now.setup().reading(Bench.FORK_COMPRESSION)).contains(FOURTEEN);
    assertThat(now.sag().of(End.REAR, SagKind.RACE)).contains(mm("104"));
    assertThat(now.sag().of(End.REAR, SagKind.FREE)).contains(mm("33"));
    assertThat(now.sag().of(End.FRONT, SagKind.RACE)).contains(mm("71"));
    assertThat(now.sag().of(End.FRONT, SagKind.FREE)).contains(mm("25"));
    assertThat(now.sag().of(End.WHOLE_BIKE, SagKind.RACE)).isEmpty();
    assertThat(now.conditions()).isEqualTo(Conditions.NOT_NOTED);
    assertThat(now.trust()).isEmpty();
  }

  @Test
  void aSheetThatBeginsLaterThanAllThatIsNotedIsOfItsOwnDay() {
    Sheet later = Bench.sheet().with(MAY.plusDays(30), "new spring");
    Notebook notebook = Bench.notebook().with(Bench.bike().with(later));
    Subject now = Subject.now(Timeline.of(notebook, Bench.BIKE));
    assertThat(now.day()).isEqualTo(MAY.plusDays(30));
    assertThat(now.sheet()).isEqualTo(later);
  }

  /** A baseline names the sag of the rear; that of the front is as it was measured. */
  @Test
  void aBaselineHasItsOwnSagOfTheRear() {
    Entry.Baseline baseline = Bench.baseline(Bench.setup());
    Timeline timeline = timeline();
    Subject named = Subject.of(timeline, baseline);
    assertThat(named.choice()).isEqualTo(new Choice.OfBaseline(baseline));
    assertThat(named.day()).isEqualTo(Bench.SPRING);
    assertThat(named.setup()).isEqualTo(Bench.setup());
    assertThat(named.sag().rearRace()).contains(mm("104"));
    assertThat(named.sag().rearFree()).contains(mm("33"));
    assertThat(named.sag().frontRace()).isEmpty();
    Entry.Baseline without =
        new Entry.Baseline(
            head("base-2", 5),
            Bench.setup(),
            Optional.empty(),
            Optional.empty(),
            "",
            Optional.empty());
    Subject measured =
        Subject.of(timeline(without, sag("sag-1", 1, End.REAR, "99", "30")), without);
    assertThat(measured.sag().rearRace()).contains(mm("99"));
    assertThat(measured.sag().rearFree()).contains(mm("30"));
  }

  @Test
  void aSessionIsAsItWasLeftWithTheNewestOfWhatWasSaid() {
    Conditions sandy =
        new Conditions(
            Optional.of(Ground.SAND),
            Optional.empty(),
            OptionalInt.of(4),
            Optional.empty(),
            Set.of());
    Entry.Session session =
        session(
            HOLLOW,
            moto("m-1", 4, feel(Symptom.HARSH, 4), feel(Symptom.DIVES, 2))
                .withConditions(Optional.of(sandy)),
            moto("m-2", 6, feel(Symptom.HARSH, 1)).withChanges(List.of(SOFTER)),
            moto("m-3", 0));
    Subject left = Subject.of(timeline(session), session, HOLLOW);
    assertThat(left.choice()).isEqualTo(new Choice.OfSession(session, HOLLOW));
    assertThat(left.setup().reading(Bench.FORK_COMPRESSION)).contains(FOURTEEN);
    assertThat(left.trust()).hasValue(6);
    assertThat(left.feel()).containsExactly(feel(Symptom.HARSH, 1), feel(Symptom.DIVES, 2));
    assertThat(left.conditions()).isEqualTo(sandy);
  }

  @Test
  void aMotoIsItsOwnSetupAndWhatWasSaidOfIt() {
    Entry.Session session =
        session(
            DUNE,
            moto("m-1", 4, feel(Symptom.HARSH, 4)),
            moto("m-2", 6).withChanges(List.of(SOFTER)));
    Timeline timeline = timeline(session);
    Subject first = Subject.of(timeline, session, DUNE, 0);
    assertThat(first.setup()).isEqualTo(Bench.setup());
    assertThat(first.feel()).containsExactly(feel(Symptom.HARSH, 4));
    assertThat(first.trust()).hasValue(4);
    assertThat(first.conditions().ground()).contains(Ground.LOAM);
    Choice.OfMoto choice = new Choice.OfMoto(session, DUNE, 0);
    assertThat(first.choice()).isEqualTo(choice);
    assertThat(choice.ridden()).isEqualTo(session.motos().get(0));
    Subject best = Subject.best(timeline, DUNE).orElseThrow();
    assertThat(best.choice()).isEqualTo(new Choice.BestOf(session, DUNE, 1));
    assertThat(((Choice.BestOf) best.choice()).ridden()).isEqualTo(session.motos().get(1));
    assertThat(best.setup().reading(Bench.FORK_COMPRESSION)).contains(FOURTEEN);
    assertThat(Subject.best(timeline, HOLLOW)).isEmpty();
  }

  /** Where nobody wrote the ground down it is that of the track. */
  @Test
  void groundThatIsNotNotedIsTheTracks() {
    Entry.Session session = session(DUNE, moto("m-1", 4)).withConditions(Conditions.NOT_NOTED);
    Subject left = Subject.of(timeline(session), session, DUNE);
    assertThat(left.conditions().ground()).contains(Ground.SAND);
    Entry.Session none = session(DUNE).withConditions(Conditions.NOT_NOTED);
    assertThat(Subject.of(timeline(none), none, DUNE).conditions().ground()).contains(Ground.SAND);
  }

  private static Proposal proposal(String id, SettingId setting, Reading to, Answer answer) {
    Reading from = Bench.setup().reading(setting).orElseThrow();
    return new Proposal(new ProposalId(id), setting, from, to, "", OptionalDouble.empty(), answer);
  }

  @Test
  void anAdviceIsMadeHeldInsideTheLimitsAndWithoutWhatWasDeclined() {
    Entry.Advice advice =
        new Entry.Advice(
            head("ad-1", 1),
            new Source.Own("trade"),
            List.of(
                proposal("p-1", Bench.FORK_COMPRESSION, FOURTEEN, new Answer.Open()),
                proposal(
                    "p-2",
                    Bench.FORK_REBOUND,
                    Reading.bothLegs(clicks(25)),
                    new Answer.Held(clicks(20))),
                proposal("p-3", Bench.TUBE, Reading.of(mm("3")), new Answer.Declined("no"))),
            "");
    Subject planned = Subject.of(timeline(advice), advice);
    assertThat(planned.setup())
        .isEqualTo(
            Bench.setup()
                .with(Placed.set(Bench.FORK_COMPRESSION, FOURTEEN))
                .with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(clicks(20)))));
    assertThat(planned.choice()).isEqualTo(new Choice.OfAdvice(advice));
  }

  @Test
  void whatWasHandedOverIsReadAgainstItsSheet() {
    Setup handed = Bench.setup().with(Placed.set(Bench.TUBE, Reading.of(mm("3"))));
    Entry.HandedOver entry =
        new Entry.HandedOver(
            head("ho-1", 1),
            new HandOverId("ho"),
            new Snapshot(handed, Bench.SPRING, Set.of()),
            "0123");
    Subject subject = Subject.of(timeline(entry), entry);
    assertThat(subject.setup()).isEqualTo(handed);
    assertThat(subject.sheet()).isEqualTo(Bench.sheet());
    assertThat(subject.choice()).isEqualTo(new Choice.OfHandedOver(entry));
  }

  @Test
  void sagStandsSideBySideWithItsWindow() {
    SagSeen before =
        new SagSeen(Optional.of(mm("71")), Optional.empty(), Optional.of(mm("104")), none());
    SagSeen after = new SagSeen(none(), none(), Optional.of(mm("101")), Optional.of(mm("33")));
    List<SagRow> rows = SagRow.of(before, after, Bench.sheet().parts().sag());
    assertThat(rows)
        .extracting(row -> row.end() + " " + row.kind())
        .containsExactly("FRONT RACE", "REAR RACE", "REAR FREE");
    assertThat(rows).extracting(SagRow::by).containsExactly(none(), Optional.of(mm("-3")), none());
    assertThat(rows).noneMatch(SagRow::isSame);
    assertThat(rows.get(0).window()).isEqualTo(Bench.sheet().parts().sag().frontRace());
    assertThat(rows.get(2).window()).isEqualTo(Bench.sheet().parts().sag().rearFree());
    assertThat(SagRow.of(before, before, Bench.sheet().parts().sag()))
        .hasSize(2)
        .allMatch(SagRow::isSame);
  }

  private static Optional<Amount> none() {
    return Optional.empty();
  }

  @Test
  void lapsOfAMotoLeaveOutTheFirstAndTheDropped() {
    Moto moto = moto("m-1", 5);
    List<Lap> laps =
        List.of(
            Lap.of(70_000), Lap.of(61_000), new Lap(90_000, Optional.of("fell")), Lap.of(63_000));
    Entry.Session session =
        session(HOLLOW, moto.withReport(moto.report().withLaps(laps)), moto("m-2", 5));
    List<MotoLaps> all = MotoLaps.of(session);
    assertThat(all).hasSize(1);
    assertThat(all.get(0).moto()).isZero();
    assertThat(all.get(0).seconds()).containsExactly(61.0, 63.0);
    assertThat(all.get(0).mean()).isCloseTo(62, within(1e-12));
  }

  @Test
  void aFullComparisonHasCurvesAndTracksWhereBothSidesHave() {
    Entry.Session hollow = session(HOLLOW, moto("m-1", 5));
    Entry.Session dune =
        Bench.session("s-2", MAY.plusDays(7), Bench.DUNE, Bench.setup(), List.of(moto("m-2", 5)));
    Timeline timeline = timeline(hollow, dune);
    Subject one = Subject.best(timeline, HOLLOW).orElseThrow();
    Subject other = Subject.best(timeline, DUNE).orElseThrow();
    FullComparison both = FullComparison.of(Bench.shelf(), timeline, one, other);
    assertThat(both.tracks()).isPresent();
    assertThat(both.sides()).isEqualTo(Comparison.of(one, other));
    assertThat(both.sides().swapped()).isEqualTo(Comparison.of(other, one));
    assertThat(FullComparison.of(Bench.shelf(), timeline, one, one).tracks()).isEmpty();
    assertThat(FullComparison.of(Bench.shelf(), timeline, one, Subject.now(timeline)).tracks())
        .isEmpty();
  }

  /** 20 mL more oil stiffen the end of the travel; without the bore there is no curve. */
  @Test
  void curvesAreOneWhereNothingMovesThem() {
    Subject now = Subject.now(timeline());
    Subject more =
        Subject.planned(
            timeline(),
            new Choice.Now(),
            Bench.setup().with(Placed.set(Bench.FORK_OIL, Reading.bothLegs(Bench.ml("355")))));
    CurvePair same = CurvePair.of(now, now);
    assertThat(same.both()).isEqualTo(same.from().found().isPresent());
    assertThat(same.same()).isEqualTo(same.both());
    CurvePair pair = CurvePair.of(now, more);
    assertThat(pair.same()).isFalse();
  }

  /** Each kind of entry that moves a setting, beside what happens without moving it. */
  @Test
  void aHistoryTakesUpEveryWayASettingMoves() {
    Reading found = Reading.bothLegs(clicks(13));
    Reading between = Reading.bothLegs(clicks(10));
    Reading rebuilt = Reading.bothLegs(clicks(9));
    Entry.Session ridden =
        session(HOLLOW, moto("m-1", 5).withChanges(List.of(SOFTER)))
            .withCheck(
                Optional.of(
                    new EndOfDayCheck(
                        List.of(new EndOfDayCheck.Found(Bench.FORK_COMPRESSION, found)))));
    Entry adjusted =
        new Entry.Adjusted(head("a-1", 1), List.of(Change.of(Bench.FORK_COMPRESSION, between)));
    Job job =
        new Job(
            Scope.FORK,
            Set.of(Renewed.OIL),
            Bench.FIRST_BASELINE,
            Bench.setup(),
            Bench.SPRING,
            Optional.empty());
    Entry rebuild =
        new Entry.RebuildJob(
            head("job-1", 2),
            job,
            List.of(
                new StepDone(
                    StepId.placing(Bench.FORK_COMPRESSION),
                    Instant.EPOCH,
                    new Entered.Counted(rebuilt))),
            Outcome.BACK);
    Sheet later = Bench.sheet().with(MAY.minusDays(10), "new seals");
    Notebook notebook =
        Bench.notebook().with(Bench.bike().with(later)).with(ridden).with(adjusted).with(rebuild);
    Setting setting = later.setting(Bench.FORK_COMPRESSION).orElseThrow();
    SettingHistory history = SettingHistory.of(Timeline.of(notebook, Bench.BIKE), setting);
    List<Reading> readings = new ArrayList<>();
    history.steps().forEach(step -> readings.add(step.reading()));
    assertThat(readings)
        .containsExactly(Reading.bothLegs(clicks(12)), FOURTEEN, found, between, rebuilt);
    assertThat(history.steps())
        .extracting(step -> step.entry().text())
        .containsExactly("base-1", "s-1", "s-1", "a-1", "job-1");
    assertThat(history.marks())
        .extracting(SettingHistory.Mark::kind)
        .containsExactly(
            SettingHistory.Kind.BASELINE, SettingHistory.Kind.SHEET, SettingHistory.Kind.REBUILD);
    assertThat(SettingHistory.of(Timeline.of(notebook, Bench.BIKE))).hasSize(13);
  }

  /** What was felt is listed by section, then end, then symptom. */
  @Test
  void feelIsListedInTheOrderOfTheTrack() {
    Feel rear = Feel.of(End.REAR, Section.BRAKING_BUMPS, Symptom.HARSH, 2);
    Feel front = Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 3);
    List<FeelRow> rows =
        FeelRow.of(List.of(feel(Symptom.HARSH, 1), rear), List.of(front, feel(Symptom.HARSH, 4)));
    assertThat(rows)
        .containsExactly(
            new FeelRow(front.key(), OptionalInt.empty(), OptionalInt.of(3)),
            new FeelRow(rear.key(), OptionalInt.of(2), OptionalInt.empty()),
            new FeelRow(feel(Symptom.HARSH, 1).key(), OptionalInt.of(1), OptionalInt.of(4)));
    assertThat(rows.get(1).end()).isEqualTo(End.REAR);
  }
}
