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

  /**
   * Z of a viscosity (equation 2 of the standard).
   *
   * @param viscosity mm²/s, {@value #LEAST} to 1e9
   */
  public static double z(double viscosity) {
    Given.within("viscosity", viscosity, LEAST, MOST);
    return viscosity + 0.7 + lowTerm(viscosity);
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

  /** Viscosity in mm²/s of a Z: the standard's fit, then made the exact inverse of {@link #z}. */
  public static double viscosity(double z) {
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
