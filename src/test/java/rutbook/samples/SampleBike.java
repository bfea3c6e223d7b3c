package rutbook.samples;

import static rutbook.notebook.Bench.clicker;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.fill;
import static rutbook.notebook.Bench.hours;
import static rutbook.notebook.Bench.measured;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;
import static rutbook.notebook.Bench.newtonMetres;
import static rutbook.notebook.Bench.turns;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberVolume;
import rutbook.notebook.Datum;
import rutbook.notebook.End;
import rutbook.notebook.Fastener;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Geometry;
import rutbook.notebook.Limits;
import rutbook.notebook.Measure;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Parts;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.RatioConvention;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.SagWindows;
import rutbook.notebook.Scale;
import rutbook.notebook.Sense;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.ShockParts;
import rutbook.notebook.Side;
import rutbook.notebook.Tightening;
import rutbook.notebook.Work;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;

/** The sheet and first setup of the invented bike of the season sample. */
final class SampleBike {
  private static final String MANUAL = "service manual, page of the torque table (invented)";

  private SampleBike() {}

  static Sheet sheet(LocalDate from) {
    return new Sheet(
        from,
        "as bought, stock springs and valving",
        settings(),
        chambers(),
        parts(),
        torques(),
        services(),
        Optional.of(Side.RIGHT));
  }

  static Amount rate(String newtonsPerMillimetre) {
    return Amount.of(newtonsPerMillimetre, SpringRate.NEWTON_PER_MILLIMETRE);
  }

  static Amount bar(String bar) {
    return Amount.of(bar, Pressure.BAR);
  }

  private static List<Setting> settings() {
    return List.of(
        measured(
            Bench.FORK_SPRING,
            "Fork spring",
            Role.FORK_SPRING,
            Carrier.PAIR,
            new Range(rate("4.2"), rate("5.2")),
            "0.2"),
        fill(Bench.CARTRIDGE_OIL, "Cartridge oil", Role.FORK_CARTRIDGE_OIL, Bench.INNER, ml("1")),
        fill(Bench.FORK_OIL, "Outer chamber oil", Role.FORK_OIL, Bench.OUTER, ml("5")),
        measured(
            Bench.TUBE,
            "Tube above clamp",
            Role.TUBE_ABOVE_CLAMP,
            Carrier.SINGLE,
            new Range(mm("0"), mm("10")),
            "1"),
        clicker(
            Bench.FORK_COMPRESSION, "Fork compression", Role.FORK_COMPRESSION, 22, Sense.SOFTER),
        clicker(Bench.FORK_REBOUND, "Fork rebound", Role.FORK_REBOUND, 20, Sense.FASTER),
        measured(
            Bench.SHOCK_SPRING,
            "Shock spring",
            Role.SHOCK_SPRING,
            Carrier.SINGLE,
            new Range(rate("48"), rate("60")),
            "3"),
        measured(
            Bench.PRELOAD,
            "Shock preload",
            Role.SHOCK_PRELOAD,
            Carrier.SINGLE,
            new Range(mm("3"), mm("14")),
            "0.5"),
        clicker(
            Bench.LOW_SPEED, "Shock low-speed compression", Role.SHOCK_LOW_SPEED, 20, Sense.SOFTER),
        highSpeed(),
        clicker(Bench.SHOCK_REBOUND, "Shock rebound", Role.SHOCK_REBOUND, 22, Sense.FASTER),
        measured(
            Bench.TYRE_FRONT,
            "Front tyre",
            Role.TYRE_FRONT,
            Carrier.SINGLE,
            new Range(bar("0.7"), bar("1.1")),
            "0.02"),
        measured(
            Bench.TYRE_REAR,
            "Rear tyre",
            Role.TYRE_REAR,
            Carrier.SINGLE,
            new Range(bar("0.7"), bar("1.1")),
            "0.02"));
  }

  private static Setting highSpeed() {
    return new Setting(
        Bench.HIGH_SPEED,
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
  }

  private static List<Chamber> chambers() {
    return List.of(
        new Chamber(
            Bench.INNER,
            "Cartridge",
            Carrier.PAIR,
            Measure.VOLUME,
            new Range(ml("208"), ml("214")),
            Optional.of(ml("211")),
            Optional.empty()),
        new Chamber(
            Bench.OUTER,
            "Outer chamber",
            Carrier.PAIR,
            Measure.VOLUME,
            new Range(ml("300"), ml("380")),
            Optional.of(ml("335")),
            Optional.of(new ChamberVolume(ml("995"), true))));
  }

  private static Parts parts() {
    ForkParts fork =
        new ForkParts(
            ForkKind.PRESSURISED_CARTRIDGE,
            Optional.of(mm("305")),
            Optional.of(mm("48")),
            Optional.of(mm("43.5")),
            Optional.of(mm("12.5")),
            Optional.of(ml("62")),
            Optional.empty(),
            "stock");
    ShockParts shock =
        new ShockParts(
            Optional.of(mm("308")),
            Optional.of(new MotionRatio(new BigDecimal("0.34"), RatioConvention.SPRING_OVER_WHEEL)),
            Optional.of(mm("252")),
            Optional.of(mm("1.5")),
            List.of(rate("51"), rate("54"), rate("57")),
            true,
            "stock");
    Geometry geometry =
        new Geometry(
            Optional.of(Amount.of("27.2", Angle.DEGREE)),
            Optional.of(mm("57")),
            Optional.of(mm("344")),
            Optional.of(mm("331")),
            Optional.of(mm("1482")));
    SagWindows sag =
        new SagWindows(
            Optional.of(new Range(mm("100"), mm("108"))),
            Optional.of(new Range(mm("28"), mm("40"))),
            Optional.of(new Range(mm("65"), mm("80"))));
    return new Parts(fork, shock, geometry, sag);
  }

  private static List<Tightening> torques() {
    return List.of(
        torque(Fastener.REBOUND_ADJUSTER_LOCK_NUT, "Rebound adjuster on its lock nut", "24"),
        torque(Fastener.CENTRE_BOLT, "Centre bolt", "66"),
        torque(Fastener.FORK_CAP, "Fork cap", "32"),
        torque(Fastener.UPPER_CLAMP, "Upper clamp bolts", "21"),
        torque(Fastener.LOWER_CLAMP, "Lower clamp bolts", "19"),
        torque(Fastener.AXLE_NUT, "Front axle nut", "84"),
        torque(Fastener.AXLE_PINCH_BOLTS, "Axle pinch bolts", "18"),
        torque(Fastener.BRAKE_CALIPER, "Caliper bolts", "28"),
        torque(Fastener.SHOCK_UPPER, "Shock, upper bolt", "54"),
        torque(Fastener.SHOCK_LOWER, "Shock, lower bolt", "46"),
        torque(Fastener.LINKAGE, "Linkage bolts", "72"),
        torque(Fastener.REAR_AXLE_NUT, "Rear axle nut", "115"));
  }

  private static Tightening torque(Fastener fastener, String name, String newtonMetres) {
    return new Tightening(fastener, name, newtonMetres(newtonMetres), MANUAL);
  }

  private static List<ServiceItem> services() {
    return List.of(
        service("fork-oil", "Fork oil", End.FRONT, ServiceKind.FORK_OIL, "30"),
        service("fork-seals", "Fork seals", End.FRONT, ServiceKind.FORK_SEALS, "60"),
        service("shock-oil", "Shock oil", End.REAR, ServiceKind.SHOCK_OIL, "40"),
        service("linkage", "Linkage bearings", End.REAR, ServiceKind.LINKAGE, "30"),
        service(
            "head-bearings", "Steering-head bearings", End.FRONT, ServiceKind.HEAD_BEARINGS, "60"));
  }

  private static ServiceItem service(
      String id, String name, End end, ServiceKind kind, String hours) {
    return new ServiceItem(new ServiceId(id), name, end, kind, hours(hours), true);
  }

  static Setup firstSetup() {
    return new Setup(
        List.of(
            Placed.set(Bench.FORK_SPRING, Reading.bothLegs(rate("4.6"))),
            Placed.set(Bench.CARTRIDGE_OIL, Reading.bothLegs(ml("211"))),
            Placed.set(Bench.FORK_OIL, Reading.bothLegs(ml("335"))),
            Placed.set(Bench.TUBE, Reading.of(mm("5"))),
            Placed.set(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(12))),
            Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(clicks(11))),
            Placed.set(Bench.SHOCK_SPRING, Reading.of(rate("54"))),
            Placed.set(Bench.PRELOAD, Reading.of(mm("7"))),
            Placed.set(Bench.LOW_SPEED, Reading.of(clicks(10))),
            Placed.set(Bench.HIGH_SPEED, Reading.of(turns("1.75"))),
            Placed.set(Bench.SHOCK_REBOUND, Reading.of(clicks(12))),
            Placed.set(Bench.TYRE_FRONT, Reading.of(bar("0.9"))),
            Placed.set(Bench.TYRE_REAR, Reading.of(bar("0.86")))));
  }
}
