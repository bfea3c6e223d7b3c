package rutbook.units;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The unit that the rider wants to see, per kind of quantity, and how an amount is rounded for it:
 * what was written in that unit stays digit by digit, what is converted is as fine as it can be
 * measured, and a limit is rounded inwards.
 */
public record Display(Map<Dimension, Unit> chosen) {
  private static final int MOST_MORE_DECIMALS = 3;

  public static final Display METRIC =
      new Display(
          Map.ofEntries(
              Map.entry(Dimension.CLICKS, ClickUnit.CLICK),
              Map.entry(Dimension.TURNS, TurnUnit.TURN),
              Map.entry(Dimension.VOLUME, Volume.MILLILITRE),
              Map.entry(Dimension.LENGTH, Length.MILLIMETRE),
              Map.entry(Dimension.SPRING_RATE, SpringRate.NEWTON_PER_MILLIMETRE),
              Map.entry(Dimension.PRESSURE, Pressure.BAR),
              Map.entry(Dimension.TORQUE, Torque.NEWTON_METRE),
              Map.entry(Dimension.ANGLE, Angle.DEGREE),
              Map.entry(Dimension.TEMPERATURE, Temperature.CELSIUS),
              Map.entry(Dimension.MASS, Mass.KILOGRAM),
              Map.entry(Dimension.DURATION, Duration.HOUR),
              Map.entry(
                  Dimension.KINEMATIC_VISCOSITY, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)));

  public static final Display US =
      METRIC
          .with(Volume.US_FLUID_OUNCE)
          .with(Length.INCH)
          .with(SpringRate.POUND_FORCE_PER_INCH)
          .with(Pressure.PSI)
          .with(Torque.POUND_FORCE_FOOT)
          .with(Temperature.FAHRENHEIT)
          .with(Mass.POUND);

  public Display {
    Map<Dimension, Unit> complete = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      Unit unit = chosen.get(dimension);
      if (unit == null || unit.dimension() != dimension) {
        throw new IllegalArgumentException("no unit for " + dimension + ": " + unit);
      }
      complete.put(dimension, unit);
    }
    chosen = Map.copyOf(complete);
  }

  public Unit unit(Dimension dimension) {
    return chosen.get(dimension);
  }

  /** With this unit shown for its kind of quantity. */
  public Display with(Unit unit) {
    Map<Dimension, Unit> next = new EnumMap<>(chosen);
    next.put(unit.dimension(), unit);
    return new Display(next);
  }

  /** In the rider's unit. */
  public Shown shown(Amount amount, Edge edge) {
    return shown(amount, unit(amount.dimension()), edge, 0);
  }

  /**
   * In the rider's unit, and never outside limits that the amount itself keeps: what is to be set
   * at 340 mL, the most allowed, is 11.49 fl oz and not 11.5.
   */
  public Shown shownInside(Amount amount, Amount least, Amount most) {
    return inside(amount, unit(amount.dimension()), least, most);
  }

  /** What stands beside {@link #shownInside}, in the other system and inside the limits too. */
  public Optional<Shown> besideInside(Amount amount, Amount least, Amount most) {
    Unit other = otherSystem(amount.unit());
    return other == unit(amount.dimension())
        ? Optional.empty()
        : Optional.of(inside(amount, other, least, most));
  }

  private static Shown inside(Amount amount, Unit unit, Amount least, Amount most) {
    boolean kept = amount.compareQuantity(least) >= 0 && amount.compareQuantity(most) <= 0;
    for (int more = 0; more <= MOST_MORE_DECIMALS && kept; more++) {
      for (Edge edge : Edge.values()) {
        Shown shown = shown(amount, unit, edge, more);
        if (shown.compareQuantity(least) >= 0 && shown.compareQuantity(most) <= 0) {
          return shown;
        }
      }
    }
    return kept ? Shown.asWritten(amount) : shown(amount, unit, Edge.NONE, 0);
  }

  /** A difference in the rider's unit: five degrees more are five degrees more. */
  public Shown step(Amount difference) {
    Unit unit = unit(difference.dimension());
    return unit == difference.unit()
        ? Shown.asWritten(difference)
        : new Shown(
            Decimals.rounded(
                Ratio.ofSteps(difference.unit(), unit),
                difference.value(),
                unit,
                Edge.NONE.rounding()),
            unit);
  }

  /**
   * Where safety is at stake, what stands beside {@link #shown}: the amount in the other system of
   * units, as it was written if it was written there. Empty for what has one unit everywhere, such
   * as clicks.
   */
  public Optional<Shown> beside(Amount amount, Edge edge) {
    Unit other = otherSystem(amount.unit());
    return other == unit(amount.dimension())
        ? Optional.empty()
        : Optional.of(shown(amount, other, edge, 0));
  }

  private Unit otherSystem(Unit written) {
    boolean metric = isMetric(unit(written.dimension()));
    return isMetric(written) != metric ? written : (metric ? US : METRIC).unit(written.dimension());
  }

  /**
   * Two limits in the rider's unit, both rounded inwards, with as many decimals more as it takes to
   * keep them apart; where that does not help, as they were written.
   */
  public Shown.Pair limits(Amount least, Amount most) {
    return limits(least, most, unit(least.dimension()));
  }

  /** What stands beside {@link #limits}: the same in the other system of units. */
  public Optional<Shown.Pair> limitsBeside(Amount least, Amount most) {
    Unit other = otherSystem(least.unit());
    return other == unit(least.dimension())
        ? Optional.empty()
        : Optional.of(limits(least, most, other));
  }

  private static Shown.Pair limits(Amount least, Amount most, Unit unit) {
    boolean crossed = least.compareQuantity(most) > 0;
    for (int more = 0; more <= MOST_MORE_DECIMALS && !crossed; more++) {
      Shown low = shown(least, unit, Edge.LEAST, more);
      Shown high = shown(most, unit, Edge.MOST, more);
      int order = low.number().compareTo(high.number());
      if (order < 0 || order == 0 && least.sameQuantity(most)) {
        return new Shown.Pair(low, high);
      }
    }
    return new Shown.Pair(Shown.asWritten(least), Shown.asWritten(most));
  }

  private static Shown shown(Amount amount, Unit unit, Edge edge, int more) {
    if (amount.unit() == unit) {
      return Shown.asWritten(amount);
    }
    BigDecimal number =
        Decimals.rounded(
            Ratio.of(amount.unit(), unit), amount.value(), unit, edge.rounding(), more);
    return new Shown(number, unit);
  }

  private static boolean isMetric(Unit unit) {
    return !(unit == Volume.US_FLUID_OUNCE
        || unit == Volume.IMPERIAL_FLUID_OUNCE
        || unit == Length.INCH
        || unit == Length.FOOT
        || unit == SpringRate.POUND_FORCE_PER_INCH
        || unit == Pressure.PSI
        || unit == Torque.POUND_FORCE_FOOT
        || unit == Torque.POUND_FORCE_INCH
        || unit == Temperature.FAHRENHEIT
        || unit == Mass.POUND);
  }
}
