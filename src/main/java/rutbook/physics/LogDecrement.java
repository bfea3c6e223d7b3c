package rutbook.physics;

/**
 * How fast a free swing dies away; only a curiosity for a bike, whose damper is no straight line.
 *
 * @param decrement {@code δ = ln(x0/xn)/n} per swing
 * @param dampingRatio {@code ζ = δ/√(4π² + δ²)}, 0 to under 1
 */
public record LogDecrement(double decrement, double dampingRatio) {

  /** Above this damping ratio too little is left of the swing to be measured. */
  public static final double UNRELIABLE = 0.5;

  /**
   * From two heights of swing, n swings apart.
   *
   * @param first height, m, above zero
   * @param later height, m, above zero and not above the first
   * @param swings 1 to 1000
   */
  public static LogDecrement ofSwings(double first, double later, int swings) {
    Given.within("first swing", first, 1e-6, 1e6);
    Given.within("later swing", later, 1e-9, first);
    Given.within("swings", swings, 1, 1000);
    double decrement = Math.log(first / later) / swings;
    return new LogDecrement(decrement, decrement / Math.hypot(2 * Math.PI, decrement));
  }

  /**
   * From mass in kg, spring rate in N/m and damping in N s/m: {@code ζ = c/(2 √(k m))}, {@code δ =
   * 2π ζ/√(1 − ζ²)}. Refused from ζ = 0.999 on, where nothing swings.
   */
  public static LogDecrement ofSystem(double mass, double rate, double damping) {
    double zeta = Given.within("damping ratio", damping / criticalDamping(mass, rate), 0, 0.999);
    return new LogDecrement(2 * Math.PI * zeta / Math.sqrt(1 - zeta * zeta), zeta);
  }

  /** The damping in N s/m at which a mass just stops swinging, {@code 2 √(k m)}. */
  public static double criticalDamping(double mass, double rate) {
    Given.within("mass", mass, 1e-3, 1e4);
    Given.within("spring rate", rate, 1, 1e8);
    return 2 * Math.sqrt(rate * mass);
  }

  /** A swing over the next, {@code e^δ}. */
  public double ratio() {
    return Math.exp(decrement);
  }

  /** Whether the damping ratio is above {@value #UNRELIABLE}. */
  public boolean unreliable() {
    return dampingRatio > UNRELIABLE;
  }
}
