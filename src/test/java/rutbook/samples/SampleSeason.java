package rutbook.samples;

import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.hours;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;
import static rutbook.notebook.Bench.turns;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rutbook.notebook.Bench;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.EventKind;
import rutbook.notebook.FaultSeen;
import rutbook.notebook.Ground;
import rutbook.notebook.Head;
import rutbook.notebook.Moisture;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Ready;
import rutbook.notebook.Renewed;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.SagLengths;
import rutbook.notebook.Scope;
import rutbook.notebook.ServiceId;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.KinematicViscosity;
import rutbook.units.Length;
import rutbook.units.Mass;
import rutbook.units.Temperature;

/** A season of an invented rider, bike and three tracks, told day by day. */
final class SampleSeason {
  static final TrackId QUARRY_HOLLOW = new TrackId("quarry-hollow");
  static final TrackId SALTMARSH = new TrackId("saltmarsh-dunes");
  static final TrackId KESTREL = new TrackId("kestrel-bank");
  private static final BikeId BIKE = new BikeId("corvane-250");
  private static final RiderId RIDER = new RiderId("imke");
  private static final OilId THIN = new OilId("thin-cartridge-oil");
  private static final OilId THICK = new OilId("summer-cartridge-oil");
  private static final LocalDate START = LocalDate.of(2026, 3, 1);
  private static final LocalDate REVALVED = LocalDate.of(2026, 7, 11);

  private final RiddenSeason ridden = new RiddenSeason(20260301);
  private final Setup first = SampleBike.firstSetup();
  private Notebook notebook;
  private double meter = 38.2;
  private double forkOilAt = 38.2;
  private int number;

  private SampleSeason(Shelf shelf) {
    notebook =
        Notebook.of(new NotebookId("sample-season"), shelf, List.of(), List.of(), Display.METRIC);
  }

  static Notebook make() {
    SampleSeason season = new SampleSeason(shelf());
    season.spring();
    season.summer();
    season.autumn();
    return season.notebook;
  }

  private static Shelf shelf() {
    Sheet sheet = SampleBike.sheet(START);
    Sheet revalved =
        sheet.with(REVALVED, "shock revalved and gas renewed by a licensed suspension shop");
    Rider rider =
        new Rider(
            RIDER, "Imke Varrel", List.of(new Rider.Weight(START, Amount.of("81", Mass.KILOGRAM))));
    return new Shelf(
        List.of(rider),
        List.of(new Bike(BIKE, "Corvane 250", List.of(sheet, revalved))),
        List.of(
            track(QUARRY_HOLLOW, "Quarry Hollow", Ground.LOAM_OVER_HARD, "240"),
            track(SALTMARSH, "Saltmarsh Dunes", Ground.SAND, "8"),
            track(KESTREL, "Kestrel Bank", Ground.HARD_PACK, "610")),
        List.of(
            oil(THIN, "Cartridge oil, thin", "13.1", "3.2"),
            oil(THICK, "Cartridge oil, summer", "18.6", "4.4")));
  }

  private static Track track(TrackId id, String name, Ground ground, String altitude) {
    return new Track(
        id, name, Optional.of(ground), Optional.of(Amount.of(altitude, Length.METRE)), "");
  }

  private static Oil oil(OilId id, String name, String kv40, String kv100) {
    return new Oil(
        id,
        name,
        Optional.of(Amount.of(kv40, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)),
        Optional.of(Amount.of(kv100, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)));
  }

  private void spring() {
    baseline("2026-03-01", first, "how the bike was set up when it came home");
    sag("2026-03-01", "105", "34");
    frontSag("2026-03-01", "71", "24");
    fresh("2026-03-01", "fork-oil", "fork-seals", "shock-oil", "linkage", "head-bearings");
    session(
        "2026-03-07",
        QUARRY_HOLLOW,
        Moisture.DAMP,
        2,
        "11",
        List.of(List.of(), List.of(legs(Bench.FORK_COMPRESSION, 14)), List.of()));
    session(
        "2026-03-14",
        SALTMARSH,
        Moisture.WET,
        3,
        "9",
        List.of(
            List.of(),
            List.of(one(Bench.TUBE, mm("3"))),
            List.of(legs(Bench.FORK_COMPRESSION, 10)),
            List.of()));
    session(
        "2026-03-28",
        KESTREL,
        Moisture.DRY,
        3,
        "14",
        List.of(
            List.of(one(Bench.TUBE, mm("6")), legs(Bench.FORK_COMPRESSION, 13)),
            List.of(one(Bench.SHOCK_REBOUND, clicks(10))),
            List.of(legs(Bench.FORK_COMPRESSION, 15))));
    session(
        "2026-04-11",
        QUARRY_HOLLOW,
        Moisture.DAMP,
        2,
        "13",
        List.of(
            List.of(one(Bench.TUBE, mm("5"))),
            List.of(one(Bench.SHOCK_REBOUND, clicks(9))),
            List.of(one(Bench.SHOCK_REBOUND, clicks(10))),
            List.of(one(Bench.HIGH_SPEED, turns("2")))));
    baseline(
        "2026-04-12", now(), "calmer on braking bumps at Quarry Hollow, and nothing got worse");
    session(
        "2026-04-25",
        SALTMARSH,
        Moisture.DAMP,
        3,
        "15",
        List.of(
            List.of(one(Bench.TUBE, mm("3")), legs(Bench.FORK_COMPRESSION, 11)),
            List.of(one(Bench.SHOCK_REBOUND, clicks(12))),
            List.of(legs(Bench.FORK_REBOUND, 10))));
    checkFindsALegOff("2026-04-25");
    session(
        "2026-05-09",
        QUARRY_HOLLOW,
        Moisture.DRY,
        3,
        "19",
        List.of(
            List.of(
                one(Bench.TUBE, mm("5")),
                legs(Bench.FORK_COMPRESSION, 15),
                legs(Bench.FORK_REBOUND, 11),
                one(Bench.SHOCK_REBOUND, clicks(10))),
            List.of(),
            List.of(legs(Bench.FORK_REBOUND, 13))));
  }

  private void summer() {
    session(
        "2026-05-16",
        QUARRY_HOLLOW,
        Moisture.DAMP,
        3,
        "19",
        List.of(
            List.of(legs(Bench.FORK_REBOUND, 11)),
            List.of(legs(Bench.FORK_COMPRESSION, 16)),
            List.of()));
    session(
        "2026-05-30",
        KESTREL,
        Moisture.DUSTY,
        4,
        "24",
        List.of(
            List.of(one(Bench.TUBE, mm("7")), legs(Bench.FORK_COMPRESSION, 14)),
            List.of(one(Bench.LOW_SPEED, clicks(8))),
            List.of()));
    session(
        "2026-06-06",
        SALTMARSH,
        Moisture.DRY,
        4,
        "23",
        List.of(
            List.of(
                one(Bench.TUBE, mm("3")),
                legs(Bench.FORK_COMPRESSION, 11),
                one(Bench.LOW_SPEED, clicks(10))),
            List.of(one(Bench.SHOCK_REBOUND, clicks(12)))));
    forkRebuild("2026-06-13", Set.of(Renewed.OIL), THIN, "345");
    session(
        "2026-06-14",
        QUARRY_HOLLOW,
        Moisture.DAMP,
        2,
        "18",
        List.of(List.of(), List.of(), List.of(legs(Bench.FORK_COMPRESSION, 16))));
    sag("2026-06-20", "112", "39");
    adjusted("2026-06-20", Change.of(Bench.PRELOAD, Reading.of(mm("9"))));
    sag("2026-06-20", "105", "32");
    session(
        "2026-06-27",
        SALTMARSH,
        Moisture.DRY,
        4,
        "26",
        List.of(
            List.of(one(Bench.TUBE, mm("3")), legs(Bench.FORK_COMPRESSION, 12)),
            List.of(one(Bench.SHOCK_REBOUND, clicks(12))),
            List.of(legs(Bench.FORK_COMPRESSION, 10))));
    shockThroughTheShop("2026-07-11");
    session(
        "2026-07-18",
        KESTREL,
        Moisture.DUSTY,
        4,
        "27",
        List.of(
            List.of(
                one(Bench.TUBE, mm("7")),
                legs(Bench.FORK_COMPRESSION, 15),
                one(Bench.SHOCK_REBOUND, clicks(10)),
                one(Bench.LOW_SPEED, clicks(9))),
            List.of(),
            List.of(one(Bench.LOW_SPEED, clicks(8)))));
  }

  private void autumn() {
    session(
        "2026-08-08",
        QUARRY_HOLLOW,
        Moisture.DRY,
        3,
        "25",
        List.of(
            List.of(one(Bench.TUBE, mm("5"))),
            List.of(one(Bench.SHOCK_REBOUND, clicks(9))),
            List.of(one(Bench.SHOCK_REBOUND, clicks(10)))));
    event("2026-08-08", EventKind.CRASH, End.FRONT, Optional.empty(), "slid out in the last moto");
    event(
        "2026-08-09",
        EventKind.CHECKED_SOUND,
        End.FRONT,
        Optional.empty(),
        "fork straight, clamps loosened and re-aligned, nothing loose");
    session(
        "2026-08-22",
        SALTMARSH,
        Moisture.DAMP,
        3,
        "21",
        List.of(
            List.of(one(Bench.TUBE, mm("3")), legs(Bench.FORK_COMPRESSION, 11)),
            List.of(one(Bench.SHOCK_REBOUND, clicks(12))),
            List.of()));
    event(
        "2026-09-05",
        EventKind.FAULT_SEEN,
        End.FRONT,
        Optional.of(FaultSeen.LEAK),
        "left seal wet");
    forkRebuild("2026-09-06", Set.of(Renewed.OIL, Renewed.SEALS), THICK, "345");
    event(
        "2026-09-06",
        EventKind.CHECKED_SOUND,
        End.FRONT,
        Optional.empty(),
        "new seals dry after the shake-down ride");
    session(
        "2026-09-12",
        QUARRY_HOLLOW,
        Moisture.DAMP,
        2,
        "17",
        List.of(
            List.of(legs(Bench.FORK_COMPRESSION, 15), one(Bench.SHOCK_REBOUND, clicks(10))),
            List.of(),
            List.of(legs(Bench.FORK_COMPRESSION, 16))));
    baseline("2026-09-13", now(), "back after the second fork rebuild, one click softer");
    session(
        "2026-09-26",
        KESTREL,
        Moisture.DRY,
        3,
        "16",
        List.of(
            List.of(one(Bench.TUBE, mm("7"))),
            List.of(one(Bench.HIGH_SPEED, turns("2.25"))),
            List.of()));
    session(
        "2026-10-10",
        SALTMARSH,
        Moisture.WET,
        3,
        "12",
        List.of(
            List.of(one(Bench.TUBE, mm("3")), legs(Bench.FORK_COMPRESSION, 12)),
            List.of(legs(Bench.FORK_COMPRESSION, 10)),
            List.of(one(Bench.SHOCK_REBOUND, clicks(12)))));
    session(
        "2026-10-17",
        QUARRY_HOLLOW,
        Moisture.DAMP,
        3,
        "13",
        List.of(
            List.of(
                one(Bench.TUBE, mm("5")),
                legs(Bench.FORK_COMPRESSION, 14),
                one(Bench.SHOCK_REBOUND, clicks(12))),
            List.of(legs(Bench.FORK_COMPRESSION, 16)),
            List.of()));
  }

  private static Change legs(SettingId setting, long clicks) {
    return Change.of(setting, Reading.bothLegs(clicks(clicks)));
  }

  private static Change one(SettingId setting, Amount to) {
    return Change.of(setting, Reading.of(to));
  }

  private Setup now() {
    return Timeline.of(notebook, BIKE).now();
  }

  private Head head(String day) {
    LocalDate date = LocalDate.parse(day);
    int order = (int) notebook.entries().stream().filter(entry -> entry.day().equals(date)).count();
    number++;
    return Head.of(new EntryId("e-%03d".formatted(number)), BIKE, date, order);
  }

  private Head headWithMeter(String day) {
    return head(day).withMeter(Optional.of(hours("%.1f".formatted(meter))));
  }

  private void add(Entry entry) {
    notebook = notebook.with(entry);
  }

  private void baseline(String day, Setup setup, String reason) {
    add(
        new Entry.Baseline(
            headWithMeter(day),
            setup,
            Optional.of(mm("105")),
            Optional.of(mm("33")),
            reason,
            Optional.empty()));
  }

  private void sag(String day, String race, String free) {
    int extended = 610;
    BigDecimal settled = BigDecimal.valueOf(extended).subtract(new BigDecimal(race));
    SagLengths lengths =
        new SagLengths(
            mm(String.valueOf(extended)),
            mm(settled.subtract(BigDecimal.valueOf(3)).toPlainString()),
            mm(settled.add(BigDecimal.valueOf(3)).toPlainString()));
    add(
        new Entry.SagMeasured(
            head(day),
            End.REAR,
            Optional.of(mm(race)),
            Optional.of(mm(free)),
            Optional.of(lengths),
            Optional.of(Amount.of("81", Mass.KILOGRAM)),
            Optional.empty()));
  }

  /** Of the fork along its tubes; free sag goes along as the trade measures it. */
  private void frontSag(String day, String race, String free) {
    add(
        new Entry.SagMeasured(
            head(day),
            End.FRONT,
            Optional.of(mm(race)),
            Optional.of(mm(free)),
            Optional.empty(),
            Optional.of(Amount.of("81", Mass.KILOGRAM)),
            Optional.empty()));
  }

  private void fresh(String day, String... items) {
    List<ServiceId> ids = new ArrayList<>();
    for (String item : items) {
      ids.add(new ServiceId(item));
    }
    add(new Entry.Serviced(headWithMeter(day), ids, "before the season"));
  }

  private void adjusted(String day, Change change) {
    add(new Entry.Adjusted(head(day), List.of(change)));
  }

  private void event(String day, EventKind kind, End end, Optional<FaultSeen> fault, String what) {
    add(new Entry.Event(head(day), kind, Optional.of(end), fault, what));
  }

  private void session(
      String day,
      TrackId track,
      Moisture moisture,
      int roughness,
      String celsius,
      List<List<Change>> changes) {
    Setup start = now();
    Setup setup = start;
    List<Moto> motos = new ArrayList<>();
    for (int i = 0; i < changes.size(); i++) {
      List<Change> moved = moved(setup, changes.get(i));
      setup = setup.after(moved);
      motos.add(
          new Moto(
              new MotoId("%s-m%d".formatted(day, i + 1)),
              MotoKind.MOTO,
              moved,
              ridden.report(track, first, setup, i, meter - forkOilAt),
              Optional.empty(),
              SeasonNotes.moto(day, i + 1)));
      meter += 0.95;
    }
    Conditions conditions =
        new Conditions(
            notebook.shelf().track(track).orElseThrow().ground(),
            Optional.of(moisture),
            OptionalInt.of(roughness),
            Optional.of(Amount.of(celsius, Temperature.CELSIUS)),
            Set.of(Ready.TYRES_COLD, Ready.FORK_AIR_BLED, Ready.AXLE_ALIGNED));
    meter += 0.6;
    add(
        new Entry.Session(
            headWithMeter(day).withNote(SeasonNotes.day(day)),
            track,
            RIDER,
            conditions,
            start,
            motos,
            Optional.of(asNoted(setup))));
  }

  /** Nobody notes a change that moves nothing. */
  private static List<Change> moved(Setup before, List<Change> changes) {
    return changes.stream()
        .filter(change -> !before.reading(change.setting()).orElseThrow().sameAs(change.to()))
        .toList();
  }

  /** The end-of-day check that finds what the notebook says. */
  private static EndOfDayCheck asNoted(Setup setup) {
    return new EndOfDayCheck(
        setup.placed().stream()
            .filter(
                placed -> Bench.sheet().setting(placed.setting()).orElseThrow().role().isClicker())
            .map(placed -> new EndOfDayCheck.Found(placed.setting(), placed.reading()))
            .toList());
  }

  /** The right leg was two clicks further out than the left. */
  private void checkFindsALegOff(String day) {
    Entry.Session session =
        notebook.entries().stream()
            .filter(entry -> entry.day().equals(LocalDate.parse(day)))
            .filter(Entry.Session.class::isInstance)
            .map(Entry.Session.class::cast)
            .findFirst()
            .orElseThrow();
    List<EndOfDayCheck.Found> found = new ArrayList<>(session.check().orElseThrow().found());
    found.replaceAll(
        each ->
            each.setting().equals(Bench.FORK_REBOUND)
                ? new EndOfDayCheck.Found(Bench.FORK_REBOUND, Reading.of(clicks(10), clicks(12)))
                : each);
    add(session.withCheck(Optional.of(new EndOfDayCheck(found))));
  }

  private void forkRebuild(String day, Set<Renewed> renewed, OilId oil, String fill) {
    meter += 0.2;
    Setup baseline = Timeline.of(notebook, BIKE).baseline().orElseThrow().setup();
    Setup target =
        now()
            .with(Placed.set(Bench.FORK_OIL, Reading.bothLegs(ml(fill))))
            .with(baseline.placed(Bench.FORK_COMPRESSION).orElseThrow())
            .with(baseline.placed(Bench.FORK_REBOUND).orElseThrow())
            .with(baseline.placed(Bench.TUBE).orElseThrow());
    add(
        SampleRebuilds.walked(
            notebook, BIKE, headWithMeter(day), Scope.FORK, renewed, Optional.of(oil), target));
    forkOilAt = meter;
  }

  private void shockThroughTheShop(String day) {
    meter += 0.1;
    add(
        SampleRebuilds.walked(
            notebook,
            BIKE,
            headWithMeter(day).withNote("revalved for chop by a licensed suspension shop"),
            Scope.SHOCK,
            Set.of(Renewed.OIL, Renewed.VALVING),
            Optional.empty(),
            now()));
    event(
        day,
        EventKind.PART_CHANGED,
        End.REAR,
        Optional.empty(),
        "shock revalved and gas renewed by the shop; spring kept");
    sag(day, "104", "33");
  }
}
