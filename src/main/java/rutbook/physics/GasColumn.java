package rutbook.physics;

/**
 * One body of trapped gas behind one piston: {@code V(x) = V0 − A x}, {@code p = p0 (V0/V)^n}.
 *
 * <p>A negative area is a chamber that grows as the fork dives (a negative chamber); the formulas
 * are the same. Published gas law; its use for a fork is our model, an estimate.
 *
 * @param pressure absolute, at full extension, Pa
 * @param volume at full extension, m³, above zero
 * @param area of the piston, m², negative when the chamber grows with stroke
 */
public record GasColumn(double pressure, double volume, double area) {

  /** Below this share of its start volume a column counts as solid. */
  private static final double SOLID = 1e-3;

  public GasColumn {
    Given.pressure("gas pressure", pressure);
    Given.within("gas volume", volume, 1e-9, 1e-2);
    Given.within("piston area", area, -0.1, 0.1);
  }

  /** Volume at a stroke in m³; zero or less means that the oil fills the chamber. */
  public double volumeAt(double stroke) {
    return volume - area * stroke;
  }

  /** Absolute pressure in Pa at a stroke in m; refused where the column is solid. */
  public double pressureAt(double stroke, double exponent) {
    return pressure * Math.pow(ratio(stroke), Polytropic.exponent(exponent));
  }

  /** Force in N on the piston, {@code (p − p_outside) A}. */
  public double force(double stroke, double exponent, double outside) {
    return (pressureAt(stroke, exponent) - outside) * area;
  }

  /**
   * Work in J from full extension to a stroke: {@code p0 V0/(n−1) [(V0/V)^(n−1) − 1] − p_outside A
   * x}, and {@code p0 V0 ln(V0/V) − p_outside A x} for n = 1, which it reaches smoothly.
   */
  public double energy(double stroke, double exponent, double outside) {
    double logRatio = Math.log(ratio(stroke));
    double above = Polytropic.exponent(exponent) - 1;
    double perVolume = above == 0 ? logRatio : Math.expm1(above * logRatio) / above;
    return pressure * volume * perVolume - outside * area * stroke;
  }

  /** Stiffness in N/m, {@code n p A² / V}: the slope of the force. */
  public double rate(double stroke, double exponent) {
    return exponent * pressureAt(stroke, exponent) * area * area / volumeAt(stroke);
  }

  private double ratio(double stroke) {
    double left = volumeAt(Given.length("stroke", stroke));
    if (!(left > SOLID * volume)) {
      throw new IllegalArgumentException(
          "no gas left at stroke " + stroke + " m: volume " + left + " m³ of " + volume + " m³");
    }
    return volume / left;
  }
}
