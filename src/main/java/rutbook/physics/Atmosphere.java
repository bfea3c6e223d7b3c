package rutbook.physics;

/**
 * Pressure of the air at a height: the standard atmosphere (ICAO; US Standard Atmosphere 1976).
 *
 * <p>The day's weather moves it by some 3 %, which the standard does not know.
 */
public final class Atmosphere {

  /** Absolute pressure at sea level, Pa, by definition. */
  public static final double SEA_LEVEL = 101325;

  private static final double SEA_LEVEL_KELVIN = 288.15;
  private static final double LAPSE = 0.0065;
  private static final double EXPONENT = 5.25588;
  private static final double EARTH_RADIUS = 6356766;

  private Atmosphere() {}

  /**
   * Absolute pressure in Pa, {@code 101325 (288.15 / (288.15 − 0.0065 H))^−5.25588}.
   *
   * @param altitude geopotential, m, −1000 to 11000; to a rider the same as metres above the sea (2
   *     km differ by 0.6 m)
   */
  public static double pressureAt(double altitude) {
    Given.within("altitude", altitude, -1000, 11000);
    return SEA_LEVEL
        * Math.pow(SEA_LEVEL_KELVIN / (SEA_LEVEL_KELVIN - LAPSE * altitude), -EXPONENT);
  }

  /** Geopotential altitude in m of a height above the sea, {@code r Z / (r + Z)}, r = 6356766 m. */
  public static double geopotential(double height) {
    Given.within("height", height, -1000, 11000);
    return EARTH_RADIUS * height / (EARTH_RADIUS + height);
  }
}
