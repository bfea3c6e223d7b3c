package rutbook.cli;

import rutbook.units.Length;
import rutbook.units.Temperature;
import rutbook.units.Unit;

/** The units that a bare number of an option counts in. */
final class Quantities {
  static final Unit ALTITUDE = Length.METRE;
  static final Unit TEMPERATURE = Temperature.CELSIUS;
  static final Unit SAG = Length.MILLIMETRE;

  private Quantities() {}
}
