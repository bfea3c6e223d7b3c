package rutbook.physics;

/**
 * The scale of ASTM D341 on which an oil is a straight line: {@code Z = ν + 0.7 + exp(−1.47 − 1.84
 * ν − 0.51 ν²)}, ν in mm²/s. The exponential is under 0.001 from 2 mm²/s on and under 1e-10 from 5.
 */
public final class D341 {

  /** The least viscosity that the scale takes, mm²/s. */
  public static final double LEAST = 0.21;

  private static final double MOST = 1e9;

  private D341() {}

  /** From this viscosity in mm²/s on the short form is used, as the standard allows. */
  private static final double SHORT_FORM = 2;

  /**
   * Z of a viscosity by the low-viscosity form (equation 2 of the standard), good for any.
   *
   * @param viscosity mm²/s, {@value #LEAST} to 1e9
   */
  public static double lowZ(double viscosity) {
    Given.within("viscosity", viscosity, LEAST, MOST);
    return viscosity + 0.7 + lowTerm(viscosity);
  }

  /**
   * Z of a viscosity. The two forms differ by 0.0007 where they meet; just below 2 mm²/s the low
   * form is held at 2.7, so that a thicker oil never has a lesser Z.
   *
   * @param viscosity mm²/s, {@value #LEAST} to 1e9
   */
  public static double z(double viscosity) {
    Given.within("viscosity", viscosity, LEAST, MOST);
    return viscosity >= SHORT_FORM ? viscosity + 0.7 : Math.min(lowZ(viscosity), SHORT_FORM + 0.7);
  }

  /**
   * Viscosity in mm²/s of a Z as the standard's equation 3 fits it, {@code ν = (Z − 0.7) −
   * exp(−0.7487 − 3.295 (Z−0.7) + 0.6119 (Z−0.7)² − 0.3193 (Z−0.7)³)}: within 3e-4 relative above
   * 0.5 mm²/s, not an exact inverse.
   */
  public static double fittedViscosity(double z) {
    double d = Given.within("Z", z, z(LEAST), MOST + 0.7) - 0.7;
    double cubic = -0.7487 + d * (-3.295 + d * (0.6119 - 0.3193 * d));
    return d - Math.exp(cubic);
  }

  /**
   * Viscosity in mm²/s of a Z, the inverse of {@link #z}: below 2 mm²/s the standard's fit, then
   * made exact (in the last 0.001 below 2 mm²/s within 0.001).
   */
  public static double viscosity(double z) {
    if (z >= SHORT_FORM + 0.7) {
      return Given.within("Z", z, 0, MOST + 0.7) - 0.7;
    }
    double viscosity = fittedViscosity(z);
    for (int i = 0; i < 4; i++) {
      double low = lowTerm(viscosity);
      double slope = 1 - (1.84 + 1.02 * viscosity) * low;
      viscosity -= (viscosity + 0.7 + low - z) / slope;
    }
    return Math.max(LEAST, viscosity);
  }

  private static double lowTerm(double viscosity) {
    return Math.exp(-1.47 - viscosity * (1.84 + 0.51 * viscosity));
  }
}
