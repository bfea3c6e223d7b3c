package rutbook.physics;

import java.util.Optional;

/**
 * One leg: its coil spring and its air. Legs of a pair may differ.
 *
 * @param coilRate N/m; zero for a leg without a coil
 * @param preload of the coil at full extension, m
 * @param air when the leg traps any
 */
public record ForkLeg(double coilRate, double preload, Optional<AirSpring> air) {

  public ForkLeg {
    Given.within("coil rate", coilRate, 0, 1e6);
    Given.within("preload", preload, 0, 0.2);
  }

  /** Force in N of the coil, {@code k (x + preload)}. */
  public double coilForce(double stroke) {
    return coilRate * (stroke + preload);
  }

  /** Force in N of the air; nothing without air. */
  public double airForce(double stroke, double exponent) {
    return air.isPresent() ? air.get().force(stroke, exponent) : 0;
  }

  double energy(double from, double to, double exponent) {
    double coil = coilRate * (to - from) * ((from + to) / 2 + preload);
    return coil + (air.isPresent() ? air.get().energy(from, to, exponent) : 0);
  }
}
