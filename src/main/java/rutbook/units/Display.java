package rutbook.units;

import java.util.EnumMap;
import java.util.Map;

/** The unit that the rider wants to see, per kind of quantity. */
public record Display(Map<Dimension, Unit> chosen) {
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
}
