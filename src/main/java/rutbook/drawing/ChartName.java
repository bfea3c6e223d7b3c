package rutbook.drawing;

/** What is written on charts; the words come from whoever has them made. */
public enum ChartName {
  /** Title of an axis; its unit is added. */
  FORCE,
  TRAVEL,
  VISCOSITY,
  TEMPERATURE,
  TRAIL,
  RAKE,
  TUBE_ABOVE_CLAMP,
  /** The coils alone. */
  SPRINGS,
  /** Between slow, as in sag, and fast, as in a landing. */
  BAND,
  FRONT_SAG,
  RIDING,
  NOW
}
