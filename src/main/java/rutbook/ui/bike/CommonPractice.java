package rutbook.ui.bike;

import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Range;
import rutbook.notebook.Role;
import rutbook.notebook.Sense;
import rutbook.notebook.Work;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.TurnUnit;
import rutbook.units.Unit;
import rutbook.units.Volume;

/**
 * How a setting of a role is usually counted and how far it usually goes: common practice without a
 * source, offered as such and never taken for the manual's. Fills and air pressures have no usual
 * limits.
 */
record CommonPractice(
    Carrier carrier, Datum datum, Sense greater, Work work, Amount step, Optional<Range> range) {

  static CommonPractice of(Role role, Display display) {
    return switch (role) {
      case FORK_COMPRESSION -> clicker(Carrier.PAIR, Sense.SOFTER);
      case FORK_REBOUND -> clicker(Carrier.PAIR, Sense.FASTER);
      case FORK_HIGH_SPEED_COMPRESSION -> turns(Carrier.PAIR);
      case SHOCK_LOW_SPEED -> clicker(Carrier.SINGLE, Sense.SOFTER);
      case SHOCK_HIGH_SPEED -> turns(Carrier.SINGLE);
      case SHOCK_REBOUND -> clicker(Carrier.SINGLE, Sense.FASTER);
      case TUBE_ABOVE_CLAMP -> length(display, Sense.LOWER, "0", "10", "1", "0.4");
      case AXLE_POSITION -> length(display, Sense.LOWER, "0", "30", "1", "1.2");
      case SHOCK_PRELOAD -> length(display, Sense.FIRMER, "0", "15", "0.5", "0.6");
      case FORK_PRELOAD ->
          length(display, Sense.FIRMER, "0", "15", "1", "0.6").in(Carrier.PAIR, Work.BENCH);
      case FORK_SPRING -> spring(display, "3.6", "6", "0.2", "20", "34", "1").in(Carrier.PAIR);
      case SHOCK_SPRING -> spring(display, "35", "70", "2", "200", "400", "10");
      case TYRE_FRONT, TYRE_REAR -> tyre(display);
      case FORK_AIR -> air(display);
      case FORK_OIL, FORK_CARTRIDGE_OIL -> fill(display);
      case OTHER -> clicker(Carrier.SINGLE, Sense.FIRMER);
    };
  }

  private static CommonPractice clicker(Carrier carrier, Sense greater) {
    return new CommonPractice(
        carrier,
        Datum.OUT_FROM_CLOSED,
        greater,
        Work.TRACKSIDE,
        Amount.of(1, ClickUnit.CLICK),
        range("0", "20", ClickUnit.CLICK));
  }

  private static CommonPractice turns(Carrier carrier) {
    return new CommonPractice(
        carrier,
        Datum.OUT_FROM_CLOSED,
        Sense.SOFTER,
        Work.TRACKSIDE,
        Amount.of("0.25", TurnUnit.TURN),
        range("0", "4", TurnUnit.TURN));
  }

  private static CommonPractice length(
      Display display, Sense greater, String least, String most, String step, String mostInches) {
    boolean inches = display.unit(Dimension.LENGTH) == Length.INCH;
    Unit unit = inches ? Length.INCH : Length.MILLIMETRE;
    return measured(greater, Work.PADDOCK, inches ? "0.05" : step, unit)
        .from(least, inches ? mostInches : most);
  }

  private static CommonPractice spring(
      Display display,
      String least,
      String most,
      String step,
      String leastPounds,
      String mostPounds,
      String stepPounds) {
    return display.unit(Dimension.SPRING_RATE) == SpringRate.POUND_FORCE_PER_INCH
        ? measured(Sense.FIRMER, Work.BENCH, stepPounds, SpringRate.POUND_FORCE_PER_INCH)
            .from(leastPounds, mostPounds)
        : measured(Sense.FIRMER, Work.BENCH, step, SpringRate.NEWTON_PER_MILLIMETRE)
            .from(least, most);
  }

  private static CommonPractice tyre(Display display) {
    Unit unit = display.unit(Dimension.PRESSURE);
    if (unit == Pressure.PSI) {
      return measured(Sense.FIRMER, Work.TRACKSIDE, "0.5", unit).from("9", "18");
    }
    return unit == Pressure.BAR
        ? measured(Sense.FIRMER, Work.TRACKSIDE, "0.02", unit).from("0.6", "1.2")
        : measured(Sense.FIRMER, Work.TRACKSIDE, "5", Pressure.KILOPASCAL).from("60", "120");
  }

  private static CommonPractice air(Display display) {
    Unit unit = display.unit(Dimension.PRESSURE);
    String step = unit == Pressure.PSI ? "1" : unit == Pressure.BAR ? "0.1" : "10";
    return measured(Sense.FIRMER, Work.TRACKSIDE, step, unit).in(Carrier.LEFT);
  }

  private static CommonPractice fill(Display display) {
    Unit unit = display.unit(Dimension.VOLUME);
    String step = unit == Volume.MILLILITRE ? "5" : "0.1";
    return measured(Sense.FIRMER, Work.BENCH, step, unit).in(Carrier.PAIR);
  }

  private static CommonPractice measured(Sense greater, Work work, String step, Unit unit) {
    return new CommonPractice(
        Carrier.SINGLE, Datum.ABSOLUTE, greater, work, Amount.of(step, unit), Optional.empty());
  }

  private CommonPractice from(String least, String most) {
    return new CommonPractice(carrier, datum, greater, work, step, range(least, most, step.unit()));
  }

  CommonPractice in(Carrier newCarrier) {
    return in(newCarrier, work);
  }

  private CommonPractice in(Carrier newCarrier, Work newWork) {
    return new CommonPractice(newCarrier, datum, greater, newWork, step, range);
  }

  private static Optional<Range> range(String least, String most, Unit unit) {
    return Optional.of(new Range(Amount.of(least, unit), Amount.of(most, unit)));
  }

  /** Whether a role is a fill of oil, which is bounded by its chamber. */
  static boolean isFill(Role role) {
    return role == Role.FORK_OIL || role == Role.FORK_CARTRIDGE_OIL;
  }
}
