package rutbook.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;
import rutbook.units.Dimension;
import rutbook.units.Duration;
import rutbook.units.Length;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.Torque;
import rutbook.units.TurnUnit;
import rutbook.units.Volume;

/** Invented bikes and entries that tests share: one with a pressurised cartridge, one split. */
public final class Bench {
  public static final LocalDate SPRING = LocalDate.of(2026, 3, 1);
  public static final BikeId BIKE = new BikeId("bike-1");
  public static final TrackId HOLLOW = new TrackId("hollow");
  public static final TrackId DUNE = new TrackId("dune");
  public static final RiderId RIDER = new RiderId("rider-1");
  public static final EntryId FIRST_BASELINE = new EntryId("base-1");

  public static final SettingId FORK_SPRING = new SettingId("fork-spring");
  public static final SettingId FORK_OIL = new SettingId("fork-oil");
  public static final SettingId CARTRIDGE_OIL = new SettingId("cartridge-oil");
  public static final SettingId FORK_COMPRESSION = new SettingId("fork-compression");
  public static final SettingId FORK_REBOUND = new SettingId("fork-rebound");
  public static final SettingId TUBE = new SettingId("tube-above-clamp");
  public static final SettingId SHOCK_SPRING = new SettingId("shock-spring");
  public static final SettingId PRELOAD = new SettingId("shock-preload");
  public static final SettingId LOW_SPEED = new SettingId("shock-low-speed");
  public static final SettingId HIGH_SPEED = new SettingId("shock-high-speed");
  public static final SettingId SHOCK_REBOUND = new SettingId("shock-rebound");
  public static final SettingId TYRE_FRONT = new SettingId("tyre-front");
  public static final SettingId TYRE_REAR = new SettingId("tyre-rear");

  public static final ChamberId INNER = new ChamberId("inner");
  public static final ChamberId OUTER = new ChamberId("outer");

  private Bench() {}

  public static Amount clicks(long number) {
    return Amount.of(number, ClickUnit.CLICK);
  }

  public static Amount turns(String number) {
    return Amount.of(number, TurnUnit.TURN);
  }

  public static Amount ml(String number) {
    return Amount.of(number, Volume.MILLILITRE);
  }

  public static Amount floz(String number) {
    return Amount.of(number, Volume.US_FLUID_OUNCE);
  }

  public static Amount mm(String number) {
    return Amount.of(number, Length.MILLIMETRE);
  }

  public static Amount newtonMetres(String number) {
    return Amount.of(number, Torque.NEWTON_METRE);
  }

  public static Amount hours(String number) {
    return Amount.of(number, Duration.HOUR);
  }

  /** A clicker counted out from closed. */
  public static Setting clicker(SettingId id, String name, Role role, int most, Sense greater) {
    Carrier carrier = role.end() == End.FRONT ? Carrier.PAIR : Carrier.SINGLE;
    return new Setting(
        id,
        name,
        role,
        carrier,
        new Scale(
            Limits.stops(clicks(0), clicks(most)),
            Optional.empty(),
            clicks(1),
            Datum.OUT_FROM_CLOSED,
            greater,
            OptionalInt.of(most)),
        Work.TRACKSIDE);
  }

  /** A setting between two stops without clicks. */
  public static Setting measured(
      SettingId id, String name, Role role, Carrier carrier, Range range, String step) {
    Amount stepAmount = Amount.of(step, range.least().unit());
    Sense greater = role == Role.TUBE_ABOVE_CLAMP ? Sense.LOWER : Sense.FIRMER;
    return new Setting(
        id,
        name,
        role,
        carrier,
        new Scale(
            new Limits.Stops(range),
            Optional.empty(),
            stepAmount,
            Datum.ABSOLUTE,
            greater,
            OptionalInt.empty()),
        role == Role.TUBE_ABOVE_CLAMP || role == Role.SHOCK_PRELOAD
            ? Work.PADDOCK
            : role == Role.TYRE_FRONT || role == Role.TYRE_REAR ? Work.TRACKSIDE : Work.BENCH);
  }

  /** The fill of a chamber. */
  public static Setting fill(SettingId id, String name, Role role, ChamberId chamber, Amount step) {
    return new Setting(
        id,
        name,
        role,
        Carrier.PAIR,
        new Scale(
            new Limits.Fill(chamber),
            Optional.empty(),
            step,
            Datum.ABSOLUTE,
            Sense.FIRMER,
            OptionalInt.empty()),
        Work.BENCH);
  }

  /** Settings of a full-size bike with a pressurised cartridge. */
  public static List<Setting> settings() {
    Setting highSpeed =
        new Setting(
            HIGH_SPEED,
            "Shock high-speed compression",
            Role.SHOCK_HIGH_SPEED,
            Carrier.SINGLE,
            new Scale(
                Limits.stops(turns("0"), turns("4")),
                Optional.empty(),
                turns("0.25"),
                Datum.OUT_FROM_CLOSED,
                Sense.SOFTER,
                OptionalInt.empty()),
            Work.TRACKSIDE);
    return List.of(
        measured(
            FORK_SPRING,
            "Fork spring",
            Role.FORK_SPRING,
            Carrier.PAIR,
            new Range(
                Amount.of("4.0", SpringRate.NEWTON_PER_MILLIMETRE),
                Amount.of("5.4", SpringRate.NEWTON_PER_MILLIMETRE)),
            "0.2"),
        fill(CARTRIDGE_OIL, "Cartridge oil", Role.FORK_CARTRIDGE_OIL, INNER, ml("1")),
        fill(FORK_OIL, "Outer chamber oil", Role.FORK_OIL, OUTER, ml("5")),
        measured(
            TUBE,
            "Tube above clamp",
            Role.TUBE_ABOVE_CLAMP,
            Carrier.SINGLE,
            new Range(mm("0"), mm("10")),
            "1"),
        clicker(FORK_COMPRESSION, "Fork compression", Role.FORK_COMPRESSION, 22, Sense.SOFTER),
        clicker(FORK_REBOUND, "Fork rebound", Role.FORK_REBOUND, 20, Sense.FASTER),
        measured(
            SHOCK_SPRING,
            "Shock spring",
            Role.SHOCK_SPRING,
            Carrier.SINGLE,
            new Range(
                Amount.of("48", SpringRate.NEWTON_PER_MILLIMETRE),
                Amount.of("63", SpringRate.NEWTON_PER_MILLIMETRE)),
            "3"),
        measured(
            PRELOAD,
            "Shock preload",
            Role.SHOCK_PRELOAD,
            Carrier.SINGLE,
            new Range(mm("2"), mm("16")),
            "0.5"),
        clicker(LOW_SPEED, "Shock low-speed compression", Role.SHOCK_LOW_SPEED, 20, Sense.SOFTER),
        highSpeed,
        clicker(SHOCK_REBOUND, "Shock rebound", Role.SHOCK_REBOUND, 22, Sense.FASTER),
        measured(
            TYRE_FRONT,
            "Front tyre",
            Role.TYRE_FRONT,
            Carrier.SINGLE,
            new Range(Amount.of("0.7", Pressure.BAR), Amount.of("1.2", Pressure.BAR)),
            "0.02"),
        measured(
            TYRE_REAR,
            "Rear tyre",
            Role.TYRE_REAR,
            Carrier.SINGLE,
            new Range(Amount.of("0.7", Pressure.BAR), Amount.of("1.2", Pressure.BAR)),
            "0.02"));
  }

  public static List<Chamber> chambers() {
    return List.of(
        new Chamber(
            INNER,
            "Cartridge",
            Carrier.PAIR,
            Measure.VOLUME,
            new Range(ml("215"), ml("225")),
            Optional.of(ml("220")),
            Optional.empty()),
        new Chamber(
            OUTER,
            "Outer chamber",
            Carrier.PAIR,
            Measure.VOLUME,
            new Range(ml("300"), ml("380")),
            Optional.of(ml("335")),
            Optional.empty()));
  }

  public static List<Tightening> torques() {
    return List.of(
        torque(Fastener.REBOUND_ADJUSTER_LOCK_NUT, "Rebound adjuster on its lock nut", "22"),
        torque(Fastener.CENTRE_BOLT, "Centre bolt", "69"),
        torque(Fastener.FORK_CAP, "Fork cap", "30"),
        torque(Fastener.UPPER_CLAMP, "Upper clamp bolts", "22"),
        torque(Fastener.LOWER_CLAMP, "Lower clamp bolts", "20"),
        torque(Fastener.AXLE_NUT, "Axle nut", "88"),
        torque(Fastener.AXLE_PINCH_BOLTS, "Axle pinch bolts", "20"),
        torque(Fastener.BRAKE_CALIPER, "Caliper bolts", "30"),
        torque(Fastener.SHOCK_UPPER, "Shock, upper bolt", "56"),
        torque(Fastener.SHOCK_LOWER, "Shock, lower bolt", "53"));
  }

  private static Tightening torque(Fastener fastener, String name, String newtonMetres) {
    return new Tightening(fastener, name, newtonMetres(newtonMetres), "service manual, invented");
  }

  public static List<ServiceItem> services() {
    return List.of(
        new ServiceItem(
            new ServiceId("fork-oil"),
            "Fork oil",
            End.FRONT,
            ServiceKind.FORK_OIL,
            hours("30"),
            true),
        new ServiceItem(
            new ServiceId("shock-oil"),
            "Shock oil",
            End.REAR,
            ServiceKind.SHOCK_OIL,
            hours("40"),
            true));
  }

  /** A fork whose measures are known. */
  public static ForkParts forkOf(ForkKind kind) {
    return new ForkParts(
        kind,
        Optional.of(mm("300")),
        Optional.of(mm("48")),
        Optional.empty(),
        Optional.of(mm("12.5")),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  public static Sheet sheet() {
    ForkParts fork = forkOf(ForkKind.PRESSURISED_CARTRIDGE);
    ShockParts shock =
        new ShockParts(
            Optional.of(mm("310")),
            Optional.of(
                new MotionRatio(
                    new java.math.BigDecimal("0.36"), RatioConvention.SPRING_OVER_WHEEL)),
            Optional.of(mm("260")),
            Optional.of(mm("1.5")),
            List.of(
                Amount.of("51", SpringRate.NEWTON_PER_MILLIMETRE),
                Amount.of("54", SpringRate.NEWTON_PER_MILLIMETRE),
                Amount.of("57", SpringRate.NEWTON_PER_MILLIMETRE)),
            true,
            "");
    SagWindows sag =
        new SagWindows(
            Optional.of(new Range(mm("100"), mm("108"))),
            Optional.of(new Range(mm("28"), mm("40"))),
            Optional.of(new Range(mm("65"), mm("80"))));
    return new Sheet(
        SPRING,
        "",
        settings(),
        chambers(),
        new Parts(fork, shock, Geometry.unknown(), sag),
        torques(),
        services(),
        Optional.of(Side.RIGHT));
  }

  public static Setup setup() {
    return new Setup(
        List.of(
            Placed.set(
                FORK_SPRING, Reading.bothLegs(Amount.of("4.6", SpringRate.NEWTON_PER_MILLIMETRE))),
            Placed.set(CARTRIDGE_OIL, Reading.bothLegs(ml("220"))),
            Placed.set(FORK_OIL, Reading.bothLegs(ml("335"))),
            Placed.set(TUBE, Reading.of(mm("5"))),
            Placed.set(FORK_COMPRESSION, Reading.bothLegs(clicks(12))),
            Placed.set(FORK_REBOUND, Reading.bothLegs(clicks(11))),
            Placed.set(SHOCK_SPRING, Reading.of(Amount.of("54", SpringRate.NEWTON_PER_MILLIMETRE))),
            Placed.set(PRELOAD, Reading.of(mm("7"))),
            Placed.set(LOW_SPEED, Reading.of(clicks(10))),
            Placed.set(HIGH_SPEED, Reading.of(turns("1.75"))),
            Placed.set(SHOCK_REBOUND, Reading.of(clicks(12))),
            Placed.set(TYRE_FRONT, Reading.of(Amount.of("0.9", Pressure.BAR))),
            Placed.set(TYRE_REAR, Reading.of(Amount.of("0.88", Pressure.BAR)))));
  }

  public static Bike bike() {
    return new Bike(BIKE, "Test 250", List.of(sheet()));
  }

  public static Shelf shelf() {
    return new Shelf(
        List.of(
            new Rider(
                RIDER,
                "Test Rider",
                List.of(new Rider.Weight(SPRING, Amount.of("82", rutbook.units.Mass.KILOGRAM))))),
        List.of(bike()),
        List.of(
            new Track(HOLLOW, "Test Hollow", Optional.of(Ground.LOAM), Optional.empty(), ""),
            new Track(DUNE, "Test Dune", Optional.of(Ground.SAND), Optional.empty(), "")),
        List.of());
  }

  public static Entry.Baseline baseline(Setup setup) {
    return new Entry.Baseline(
        Head.of(FIRST_BASELINE, BIKE, SPRING, 0),
        setup,
        Optional.of(mm("104")),
        Optional.of(mm("33")),
        "first",
        Optional.empty());
  }

  /** A notebook with the bike and a baseline, and nothing ridden. */
  public static Notebook notebook() {
    return Notebook.of(
        new NotebookId("nb-1"),
        shelf(),
        List.of(baseline(setup())),
        List.of(),
        rutbook.units.Display.METRIC);
  }

  public static Moto moto(String id, List<Change> changes, List<Feel> feel) {
    Report report = new Report(List.of(), OptionalInt.empty(), feel, TravelUsed.NOT_NOTED, false);
    return new Moto(new MotoId(id), MotoKind.MOTO, changes, report, Optional.empty(), "");
  }

  public static Entry.Session session(
      String id, LocalDate day, TrackId track, Setup start, List<Moto> motos) {
    return new Entry.Session(
        Head.of(new EntryId(id), BIKE, day, 0),
        track,
        RIDER,
        new Conditions(
            Optional.of(Ground.LOAM),
            Optional.of(Moisture.DAMP),
            OptionalInt.of(2),
            Optional.empty(),
            Set.of(Ready.TYRES_COLD)),
        start,
        motos,
        Optional.empty());
  }

  /** The dimension of a setting of {@link #settings()}, for random readings. */
  public static Dimension dimension(SettingId id) {
    return sheet().setting(id).orElseThrow().dimension();
  }
}
