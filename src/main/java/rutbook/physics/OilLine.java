package rutbook.physics;

/**
 * An oil's viscosity against temperature, {@code log10 log10 Z = A − B log10 T} (ASTM D341), T in
 * K: two points, usually 40 and 100 °C, give the line. Used from −20 to 120 °C only; oils with
 * viscosity improvers leave it when sheared.
 */
public record OilLine(double a, double b) {

  /** Coldest and hottest temperature in K at which the line is read. */
  public static final double COLDEST = 253.15;

  public static final double HOTTEST = 393.15;

  private static final double CELSIUS = 273.15;

  /** Refuses a line that leaves the scale of ASTM D341 between the coldest and the hottest. */
  public OilLine {
    Given.within("A of the oil's line", a, 0, 100);
    Given.within("B of the oil's line", b, 0, 40);
    Given.within("viscosity at 120 °C", rawZ(a, b, HOTTEST), D341.z(D341.LEAST), 1e6);
    Given.within("viscosity at -20 °C", rawZ(a, b, COLDEST), D341.z(D341.LEAST), 1e8);
  }

  /**
   * The line through two points.
   *
   * @param kelvin1 K, 253 to 394, at least 5 K from the other
   * @param viscosity1 mm²/s at the first, 0.5 to 1e5
   * @param kelvin2 K
   * @param viscosity2 mm²/s at the second; the hotter point must be the thinner
   */
  public static OilLine through(
      double kelvin1, double viscosity1, double kelvin2, double viscosity2) {
    Given.within("temperature", kelvin1, 253, 394);
    Given.within("temperature", kelvin2, 253, 394);
    Given.within("distance of the temperatures", Math.abs(kelvin2 - kelvin1), 5, 141);
    double y1 = doubleLog(viscosity1);
    double y2 = doubleLog(viscosity2);
    double slope = (y1 - y2) / (Math.log10(kelvin2) - Math.log10(kelvin1));
    if (!(slope > 0)) {
      throw new IllegalArgumentException(
          "oil thins when warm: was " + viscosity1 + " and " + viscosity2 + " mm²/s");
    }
    return new OilLine(y1 + slope * Math.log10(kelvin1), slope);
  }

  /** The line through viscosities in mm²/s at 40 and at 100 °C. */
  public static OilLine of(double kv40, double kv100) {
    return through(CELSIUS + 40, kv40, CELSIUS + 100, kv100);
  }

  /** Viscosity in mm²/s at a temperature in K, −20 to 120 °C. */
  public double viscosityAt(double kelvin) {
    Given.within("temperature", kelvin, COLDEST, HOTTEST);
    return D341.viscosity(rawZ(a, b, kelvin));
  }

  /**
   * How much thicker another oil is at a temperature in K: its viscosity over this one's. Above one
   * is slower and firmer at low speed; it is a sense and never a number of clicks.
   */
  public double ratioOf(OilLine other, double kelvin) {
    return other.viscosityAt(kelvin) / viscosityAt(kelvin);
  }

  private static double doubleLog(double viscosity) {
    Given.within("viscosity", viscosity, 0.5, 1e5);
    return Math.log10(Math.log10(D341.z(viscosity)));
  }

  private static double rawZ(double a, double b, double kelvin) {
    return Math.pow(10, Math.pow(10, a - b * Math.log10(kelvin)));
  }
}
