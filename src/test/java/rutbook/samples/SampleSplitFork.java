package rutbook.samples;

import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.floz;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rutbook.notebook.Bench;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberId;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.Datum;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Fastener;
import rutbook.notebook.Feel;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Geometry;
import rutbook.notebook.Ground;
import rutbook.notebook.Head;
import rutbook.notebook.Limits;
import rutbook.notebook.Measure;
import rutbook.notebook.Moisture;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Parts;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.RatioConvention;
import rutbook.notebook.Reading;
import rutbook.notebook.Ready;
import rutbook.notebook.Report;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Role;
import rutbook.notebook.SagWindows;
import rutbook.notebook.Scale;
import rutbook.notebook.Section;
import rutbook.notebook.Sense;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.ShockParts;
import rutbook.notebook.Side;
import rutbook.notebook.Symptom;
import rutbook.notebook.Tightening;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.notebook.TravelUsed;
import rutbook.notebook.Work;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.units.Mass;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.Torque;

/**
 * A split-function fork in US units: compression in the left leg, rebound and spring in the right.
 */
final class SampleSplitFork {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 18);
  private static final BikeId BIKE = new BikeId("tessaro-300");
  private static final ChamberId LEFT = new ChamberId("left-leg");
  private static final ChamberId RIGHT = new ChamberId("right-leg");
  private static final SettingId LEFT_OIL = new SettingId("left-oil");
  private static final SettingId RIGHT_OIL = new SettingId("right-oil");

  private SampleSplitFork() {}

  static Notebook make() {
    Rider rider =
        new Rider(
            new RiderId("dorrit"),
            "Dorrit Keane",
            List.of(new Rider.Weight(DAY, Amount.of("172", Mass.POUND))));
    Track track =
        new Track(
            new TrackId("copper-draw"),
            "Copper Draw",
            Optional.of(Ground.ROCKS_AND_ROOTS),
            Optional.of(Amount.of("4200", Length.FOOT)),
            "");
    Bike bike = new Bike(BIKE, "Tessaro 300 Enduro", List.of(sheet()));
    Entry.Baseline baseline =
        new Entry.Baseline(
            head("e-001", DAY, 0, "61.0"),
            setup(),
            Optional.of(inches("4.1")),
            Optional.of(inches("1.3")),
            "what the last owner rode, counted at home",
            Optional.empty());
    return Notebook.of(
        new NotebookId("sample-split-fork"),
        new Shelf(List.of(rider), List.of(bike), List.of(track), List.of()),
        List.of(baseline, sag(), firstRide(rider, track), secondRide(rider, track)),
        List.of(),
        Display.US);
  }

  private static Amount inches(String number) {
    return Amount.of(number, Length.INCH);
  }

  private static Amount psi(String number) {
    return Amount.of(number, Pressure.PSI);
  }

  private static Amount poundsPerInch(String number) {
    return Amount.of(number, SpringRate.POUND_FORCE_PER_INCH);
  }

  private static Sheet sheet() {
    Optional<Amount> none = Optional.empty();
    ForkParts fork =
        new ForkParts(
            ForkKind.OPEN_BATH,
            Optional.of(inches("11.8")),
            Optional.of(Bench.mm("48")),
            none,
            none,
            none,
            Optional.empty(),
            "split function");
    ShockParts shock =
        new ShockParts(
            Optional.of(inches("12.2")),
            Optional.of(
                new MotionRatio(
                    new java.math.BigDecimal("2.9"), RatioConvention.WHEEL_OVER_SPRING)),
            Optional.of(inches("10")),
            none,
            List.of(poundsPerInch("280"), poundsPerInch("300"), poundsPerInch("320")),
            true,
            "");
    SagWindows sag =
        new SagWindows(
            Optional.of(new Range(inches("3.9"), inches("4.3"))),
            Optional.of(new Range(inches("1.0"), inches("1.6"))),
            Optional.empty());
    return new Sheet(
        DAY,
        "as bought, counted at home",
        settings(),
        List.of(
            chamber(LEFT, "Left leg", Carrier.LEFT), chamber(RIGHT, "Right leg", Carrier.RIGHT)),
        new Parts(fork, shock, Geometry.unknown(), sag),
        torques(),
        services(),
        Optional.of(Side.LEFT));
  }

  private static Chamber chamber(ChamberId id, String name, Carrier carrier) {
    return new Chamber(
        id,
        name,
        carrier,
        Measure.VOLUME,
        new Range(floz("16.5"), floz("19.5")),
        Optional.of(floz("18")),
        Optional.empty());
  }

  private static List<Setting> settings() {
    return List.of(
        Bench.measured(
            Bench.FORK_SPRING,
            "Fork spring",
            Role.FORK_SPRING,
            Carrier.RIGHT,
            new Range(poundsPerInch("46"), poundsPerInch("58")),
            "1"),
        oil(LEFT_OIL, "Left leg oil", Carrier.LEFT, LEFT),
        oil(RIGHT_OIL, "Right leg oil", Carrier.RIGHT, RIGHT),
        Bench.measured(
            Bench.TUBE,
            "Tube above clamp",
            Role.TUBE_ABOVE_CLAMP,
            Carrier.SINGLE,
            new Range(Bench.mm("0"), Bench.mm("12")),
            "1"),
        clicker(
            Bench.FORK_COMPRESSION, "Fork compression", Role.FORK_COMPRESSION, Carrier.LEFT, 28),
        clicker(Bench.FORK_REBOUND, "Fork rebound", Role.FORK_REBOUND, Carrier.RIGHT, 28),
        Bench.measured(
            Bench.SHOCK_SPRING,
            "Shock spring",
            Role.SHOCK_SPRING,
            Carrier.SINGLE,
            new Range(poundsPerInch("270"), poundsPerInch("340")),
            "10"),
        Bench.measured(
            Bench.PRELOAD,
            "Shock preload",
            Role.SHOCK_PRELOAD,
            Carrier.SINGLE,
            new Range(inches("0.1"), inches("0.6")),
            "0.05"),
        clicker(
            Bench.LOW_SPEED,
            "Shock low-speed compression",
            Role.SHOCK_LOW_SPEED,
            Carrier.SINGLE,
            24),
        clicker(Bench.SHOCK_REBOUND, "Shock rebound", Role.SHOCK_REBOUND, Carrier.SINGLE, 30),
        tyre(Bench.TYRE_FRONT, "Front tyre", Role.TYRE_FRONT),
        tyre(Bench.TYRE_REAR, "Rear tyre", Role.TYRE_REAR));
  }

  private static Setting oil(SettingId id, String name, Carrier carrier, ChamberId chamber) {
    Setting pair = Bench.fill(id, name, Role.FORK_OIL, chamber, floz("0.1"));
    return new Setting(id, name, pair.role(), carrier, pair.scale(), pair.work());
  }

  /** One adjuster that counts in from open: more clicks is more damping. */
  private static Setting clicker(SettingId id, String name, Role role, Carrier carrier, int most) {
    boolean rebound = role == Role.FORK_REBOUND || role == Role.SHOCK_REBOUND;
    boolean reversed = role == Role.FORK_COMPRESSION;
    Sense greater = reversed ? Sense.FIRMER : rebound ? Sense.FASTER : Sense.SOFTER;
    return new Setting(
        id,
        name,
        role,
        carrier,
        new Scale(
            Limits.stops(clicks(0), clicks(most)),
            Optional.empty(),
            clicks(1),
            reversed ? Datum.IN_FROM_OPEN : Datum.OUT_FROM_CLOSED,
            greater,
            OptionalInt.of(most)),
        Work.TRACKSIDE);
  }

  private static Setting tyre(SettingId id, String name, Role role) {
    return Bench.measured(id, name, role, Carrier.SINGLE, new Range(psi("8"), psi("16")), "0.5");
  }

  private static List<Tightening> torques() {
    return List.of(
        torque(Fastener.FORK_CAP, "Fork cap", "22"),
        torque(Fastener.CENTRE_BOLT, "Centre bolt", "37"),
        torque(Fastener.UPPER_CLAMP, "Upper clamp bolts", "13"),
        torque(Fastener.LOWER_CLAMP, "Lower clamp bolts", "11"),
        torque(Fastener.AXLE_NUT, "Front axle nut", "33"),
        torque(Fastener.AXLE_PINCH_BOLTS, "Axle pinch bolts", "11"),
        torque(Fastener.BRAKE_CALIPER, "Caliper bolts", "18"),
        torque(Fastener.SHOCK_UPPER, "Shock, upper bolt", "44"),
        torque(Fastener.SHOCK_LOWER, "Shock, lower bolt", "44"));
  }

  private static Tightening torque(Fastener fastener, String name, String poundFeet) {
    return new Tightening(
        fastener,
        name,
        Amount.of(poundFeet, Torque.POUND_FORCE_FOOT),
        "service manual, fork chapter (invented)");
  }

  private static List<ServiceItem> services() {
    return List.of(
        new ServiceItem(
            new ServiceId("fork-oil"),
            "Fork oil",
            End.FRONT,
            ServiceKind.FORK_OIL,
            Bench.hours("30"),
            true),
        new ServiceItem(
            new ServiceId("shock-oil"),
            "Shock oil",
            End.REAR,
            ServiceKind.SHOCK_OIL,
            Bench.hours("50"),
            true));
  }

  private static Setup setup() {
    return new Setup(
        List.of(
            Placed.set(Bench.FORK_SPRING, Reading.of(poundsPerInch("51"))),
            Placed.set(LEFT_OIL, Reading.of(floz("18"))),
            Placed.set(RIGHT_OIL, Reading.of(floz("18"))),
            Placed.set(Bench.TUBE, Reading.of(Bench.mm("6"))),
            Placed.set(Bench.FORK_COMPRESSION, Reading.of(clicks(14))),
            Placed.set(Bench.FORK_REBOUND, Reading.of(clicks(13))),
            Placed.set(Bench.SHOCK_SPRING, Reading.of(poundsPerInch("300"))),
            Placed.set(Bench.PRELOAD, Reading.of(inches("0.35"))),
            Placed.set(Bench.LOW_SPEED, Reading.of(clicks(15))),
            Placed.set(Bench.SHOCK_REBOUND, Reading.of(clicks(14))),
            Placed.set(Bench.TYRE_FRONT, Reading.of(psi("12"))),
            Placed.set(Bench.TYRE_REAR, Reading.of(psi("11")))));
  }

  private static Head head(String id, LocalDate day, int order, String meter) {
    return Head.of(new EntryId(id), BIKE, day, order).withMeter(Optional.of(Bench.hours(meter)));
  }

  private static Entry.SagMeasured sag() {
    return new Entry.SagMeasured(
        head("e-002", DAY, 1, "61.0"),
        End.REAR,
        Optional.of(inches("4.1")),
        Optional.of(inches("1.3")),
        Optional.empty(),
        Optional.of(Amount.of("172", Mass.POUND)),
        Optional.empty());
  }

  private static Entry.Session firstRide(Rider rider, Track track) {
    Moto loop =
        loop(
            "loop-1",
            List.of(),
            5,
            Feel.of(End.FRONT, Section.ROCKS_AND_ROOTS, Symptom.DEFLECTS, 3),
            Feel.of(End.REAR, Section.SQUARE_EDGES, Symptom.KICKS, 2));
    Moto softer =
        loop(
            "loop-2",
            List.of(Change.of(Bench.FORK_COMPRESSION, Reading.of(clicks(12)))),
            7,
            Feel.of(End.FRONT, Section.ROCKS_AND_ROOTS, Symptom.DEFLECTS, 1),
            Feel.of(End.REAR, Section.SQUARE_EDGES, Symptom.KICKS, 2));
    return session("e-003", DAY.plusDays(1), "63.2", rider, track, setup(), List.of(loop, softer));
  }

  private static Entry.Session secondRide(Rider rider, Track track) {
    Setup start = setup().with(Placed.set(Bench.FORK_COMPRESSION, Reading.of(clicks(12))));
    Moto slower =
        loop(
            "loop-3",
            List.of(Change.of(Bench.SHOCK_REBOUND, Reading.of(clicks(12)))),
            7,
            Feel.of(End.FRONT, Section.ROCKS_AND_ROOTS, Symptom.DEFLECTS, 1),
            Feel.of(End.REAR, Section.SQUARE_EDGES, Symptom.KICKS, 1));
    return session("e-004", DAY.plusDays(8), "65.9", rider, track, start, List.of(slower));
  }

  private static Moto loop(String id, List<Change> changes, int trust, Feel... feels) {
    Report report =
        new Report(List.of(), OptionalInt.of(trust), List.of(feels), TravelUsed.NOT_NOTED, false);
    return new Moto(new MotoId(id), MotoKind.LOOP, changes, report, Optional.empty(), "");
  }

  private static Entry.Session session(
      String id,
      LocalDate day,
      String meter,
      Rider rider,
      Track track,
      Setup start,
      List<Moto> motos) {
    return new Entry.Session(
        head(id, day, 0, meter),
        track.id(),
        rider.id(),
        new Conditions(
            Optional.of(Ground.ROCKS_AND_ROOTS),
            Optional.of(Moisture.DRY),
            OptionalInt.of(4),
            Optional.empty(),
            Set.of(Ready.TYRES_COLD)),
        start,
        motos,
        Optional.empty());
  }
}
