package rutbook.notebook;

import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.hours;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;
import static rutbook.notebook.Bench.turns;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.units.Amount;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.Volume;

/**
 * Bikes of every make-up: cartridges, split functions and air legs, adjusters that count the other
 * way or from a mark, fills as volume or level, and sheets that change over time.
 */
final class RandomBike {
  private final Dice dice;
  private final List<Setting> settings = new ArrayList<>();
  private final List<Chamber> chambers = new ArrayList<>();
  private int number;

  private RandomBike(Dice dice) {
    this.dice = dice;
  }

  static Bike of(Dice dice, BikeId id) {
    return new RandomBike(dice).bike(id);
  }

  private Bike bike(BikeId id) {
    ForkKind kind = fork();
    rear();
    Collections.shuffle(settings, dice.random());
    Sheet first = sheet(kind);
    List<Sheet> sheets = new ArrayList<>(List.of(first));
    LocalDate from = first.from();
    for (int i = dice.below(3); i > 0; i--) {
      from = from.plusDays(dice.between(1, 120));
      sheets.add(later(sheets.get(sheets.size() - 1), from));
    }
    return new Bike(id, dice.name(), sheets);
  }

  private ForkKind fork() {
    int make = dice.below(3);
    if (make == 0) {
      add(Role.FORK_SPRING, Carrier.PAIR, rate("4", "5.4"), rate("0.2"), Sense.FIRMER);
      fill(Role.FORK_CARTRIDGE_OIL, Carrier.PAIR, volume(215, 225));
      fill(Role.FORK_OIL, Carrier.PAIR, volume(300, dice.between(300, 400)));
      damping(Carrier.PAIR, Carrier.PAIR);
      return ForkKind.PRESSURISED_CARTRIDGE;
    }
    if (make == 1) {
      add(Role.FORK_SPRING, dice.any(Carrier.class), rate("4", "5.4"), rate("0.2"), Sense.FIRMER);
      fill(Role.FORK_OIL, Carrier.PAIR, new Range(mm("90"), mm("140")));
      damping(Carrier.LEFT, Carrier.RIGHT);
      return ForkKind.OPEN_BATH;
    }
    Range bar = new Range(bar("8"), bar("12.5"));
    add(Role.FORK_AIR, Carrier.LEFT, bar, bar("0.1"), Sense.FIRMER);
    fill(Role.FORK_OIL, Carrier.RIGHT, volume(200, 260));
    damping(Carrier.RIGHT, Carrier.RIGHT);
    return ForkKind.AIR;
  }

  private void damping(Carrier compression, Carrier rebound) {
    clicker(Role.FORK_COMPRESSION, compression, Sense.SOFTER);
    clicker(Role.FORK_REBOUND, rebound, Sense.FASTER);
    if (dice.once(2)) {
      add(
          Role.TUBE_ABOVE_CLAMP,
          dice.any(List.of(Carrier.SINGLE, Carrier.PAIR)),
          new Range(mm("0"), mm("12")),
          mm("0.5"),
          Sense.LOWER);
    }
    if (dice.once(3)) {
      add(Role.FORK_PRELOAD, Carrier.PAIR, new Range(mm("0"), mm("15")), mm("1"), Sense.FIRMER);
    }
  }

  private void rear() {
    add(Role.SHOCK_SPRING, Carrier.SINGLE, rate("42", "63"), rate("3"), Sense.FIRMER);
    boolean byTurns = dice.once(2);
    Range room = byTurns ? new Range(turns("0"), turns("9")) : new Range(mm("2"), mm("16"));
    Amount step = byTurns ? turns("0.25") : mm("0.5");
    add(Role.SHOCK_PRELOAD, Carrier.SINGLE, room, step, Sense.FIRMER);
    clicker(Role.SHOCK_LOW_SPEED, Carrier.SINGLE, Sense.SOFTER);
    clicker(Role.SHOCK_REBOUND, Carrier.SINGLE, Sense.FASTER);
    Range highSpeed = new Range(turns("0"), turns(dice.any(List.of("4", "3.9", "0.25"))));
    add(Role.SHOCK_HIGH_SPEED, Carrier.SINGLE, highSpeed, turns("0.25"), Sense.SOFTER);
    Range marks = new Range(mm("-10"), mm("10"));
    add(Role.AXLE_POSITION, Carrier.SINGLE, marks, mm("1"), Sense.LOWER);
    for (Role tyre : List.of(Role.TYRE_FRONT, Role.TYRE_REAR)) {
      Range psi = new Range(psi("8"), psi("16"));
      add(tyre, Carrier.SINGLE, psi, psi("0.5"), Sense.FIRMER);
    }
    if (dice.once(2)) {
      add(Role.OTHER, dice.any(Carrier.class), between(-5, 5), clicks(1), Sense.HIGHER);
    }
  }

  /** Counted out from closed or in from open, where a greater number does the opposite. */
  private void clicker(Role role, Carrier carrier, Sense out) {
    boolean otherWay = dice.once(3);
    Sense greater = otherWay ? out.opposite() : out;
    int most = dice.any(List.of(1, 12, 22, 40));
    Scale scale =
        new Scale(
            new Limits.Stops(between(0, most)),
            Optional.empty(),
            clicks(1),
            otherWay ? Datum.IN_FROM_OPEN : Datum.OUT_FROM_CLOSED,
            greater,
            dice.once(3) ? OptionalInt.empty() : OptionalInt.of(most));
    settings.add(new Setting(id(role), dice.name(), role, carrier, scale, Work.TRACKSIDE));
  }

  private void add(Role role, Carrier carrier, Range range, Amount step, Sense greater) {
    if (dice.once(6)) {
      return;
    }
    Datum datum = range.least().value().signum() < 0 ? Datum.FROM_MARK : Datum.ABSOLUTE;
    Scale scale =
        new Scale(
            new Limits.Stops(range),
            dice.maybe(() -> range),
            step,
            datum,
            greater,
            OptionalInt.empty());
    settings.add(new Setting(id(role), dice.name(), role, carrier, scale, dice.any(Work.class)));
  }

  private void fill(Role role, Carrier carrier, Range limits) {
    ChamberId chamber = new ChamberId("chamber-" + role.ordinal());
    boolean level = limits.least().dimension() == rutbook.units.Dimension.LENGTH;
    chambers.add(
        new Chamber(
            chamber,
            dice.name(),
            carrier,
            level ? Measure.LEVEL : Measure.VOLUME,
            limits,
            dice.maybe(limits::least),
            dice.maybe(() -> new ChamberVolume(ml("900"), true))));
    Scale scale =
        new Scale(
            new Limits.Fill(chamber),
            Optional.empty(),
            limits.least().withValue(java.math.BigDecimal.ONE),
            Datum.ABSOLUTE,
            level ? Sense.SOFTER : Sense.FIRMER,
            OptionalInt.empty());
    settings.add(new Setting(id(role), dice.name(), role, carrier, scale, Work.BENCH));
  }

  private SettingId id(Role role) {
    number++;
    String end = dice.once(4) ? ":left" : "";
    return new SettingId(role.name().toLowerCase(java.util.Locale.ROOT) + number + end);
  }

  private Sheet sheet(ForkKind kind) {
    Sheet bench = Bench.sheet();
    SagWindows sag = dice.once(2) ? SagWindows.none() : bench.parts().sag();
    Parts parts =
        new Parts(
            dice.once(2) ? ForkParts.of(kind) : Bench.forkOf(kind),
            dice.once(2) ? ShockParts.unknown() : bench.parts().shock(),
            Geometry.unknown(),
            sag);
    List<Tightening> torques =
        dice.times(
            5,
            () ->
                new Tightening(
                    dice.any(Fastener.class),
                    dice.name(),
                    dice.of(rutbook.units.Dimension.TORQUE, 5, 90),
                    dice.name()));
    List<ServiceItem> services = new ArrayList<>();
    for (ServiceKind service : dice.some(ServiceKind.class)) {
      services.add(
          new ServiceItem(
              new ServiceId("service-" + service.ordinal()),
              dice.name(),
              dice.any(End.class),
              service,
              hours("" + dice.between(1, 60)),
              dice.once(2)));
    }
    return new Sheet(
        Bench.SPRING,
        dice.note(),
        settings,
        chambers,
        parts,
        torques,
        services,
        dice.maybe(() -> dice.any(Side.class)));
  }

  /** Narrower or wider chambers, and a setting that went. */
  private Sheet later(Sheet before, LocalDate from) {
    List<Setting> kept = new ArrayList<>(before.settings());
    if (kept.size() > 3 && dice.once(2)) {
      kept.remove(dice.below(kept.size()));
    }
    List<Chamber> changed = new ArrayList<>();
    for (Chamber chamber : before.chambers()) {
      Amount least = dice.inside(chamber.limits(), chamber.limits().least().withValue(ONE));
      changed.add(
          new Chamber(
              chamber.id(),
              chamber.name(),
              chamber.carrier(),
              chamber.measure(),
              new Range(least, dice.once(2) ? chamber.limits().most() : least),
              Optional.empty(),
              chamber.volume()));
    }
    return before.withSettings(kept).withChambers(changed).with(from, dice.note());
  }

  private static final java.math.BigDecimal ONE = java.math.BigDecimal.ONE;

  private Range volume(int least, int most) {
    Range millilitres = new Range(ml("" + least), ml("" + most));
    return dice.once(3)
        ? new Range(
            Amount.of(least / 30, Volume.US_FLUID_OUNCE),
            Amount.of(most / 30, Volume.US_FLUID_OUNCE))
        : millilitres;
  }

  private static Range between(int least, int most) {
    return new Range(clicks(least), clicks(most));
  }

  private static Range rate(String least, String most) {
    return new Range(rate(least), rate(most));
  }

  private static Amount rate(String number) {
    return Amount.of(number, SpringRate.NEWTON_PER_MILLIMETRE);
  }

  private static Amount bar(String number) {
    return Amount.of(number, Pressure.BAR);
  }

  private static Amount psi(String number) {
    return Amount.of(number, Pressure.PSI);
  }
}
