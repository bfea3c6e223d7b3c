package rutbook.physics;

/**
 * How much heat trapped air has time to give away: exponents of {@code p Vⁿ = constant}.
 *
 * <p>1.0 is slow (sag, constant temperature), 1.4 is fast (a landing, no heat given away; ratio of
 * specific heats of air); the line drawn between them is 1.3, our own choice and so an estimate.
 */
public final class Polytropic {

  public static final double SLOW = 1.0;
  public static final double LINE = 1.3;
  public static final double FAST = 1.4;

  /** Ratio of specific heats of a monatomic gas: nothing compresses with a greater exponent. */
  private static final double MOST = 5.0 / 3.0;

  private Polytropic() {}

  /**
   * Absolute pressure {@code p0 (V0/V)^n} in Pa.
   *
   * @param startPressure absolute, Pa, 1 kPa to 50 MPa
   * @param volumeRatio V0/V, 0.001 to 1000; 1 gives the start pressure
   * @param exponent 1 to 5/3
   * @throws IllegalArgumentException outside these ranges
   */
  public static double pressure(double startPressure, double volumeRatio, double exponent) {
    Given.pressure("start pressure", startPressure);
    Given.within("volume ratio", volumeRatio, 1e-3, 1e3);
    return startPressure * Math.pow(volumeRatio, exponent(exponent));
  }

  static double exponent(double exponent) {
    return Given.within("polytropic exponent", exponent, SLOW, MOST);
  }
}
