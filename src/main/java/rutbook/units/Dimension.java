package rutbook.units;

/** A kind of quantity; amounts of one dimension can be compared, others cannot. */
public enum Dimension {
  CLICKS,
  TURNS,
  VOLUME,
  LENGTH,
  SPRING_RATE,
  PRESSURE,
  TORQUE,
  ANGLE,
  TEMPERATURE,
  MASS,
  DURATION,
  KINEMATIC_VISCOSITY
}
