package rutbook.physics;

/**
 * Sag of one end from three lengths in m, axle to a mark above it: fully extended, pushed down and
 * let rise slowly, lifted and let settle. The middle of the last two takes stiction out.
 *
 * @param sag {@code L1 − (L2 + L3)/2}, m; negative when the bike stands taller than extended, which
 *     is a slip of the tape
 * @param friction {@code |L2 − L3|}, m: how far stiction holds it either side together
 */
public record Sag(double sag, double friction) {

  /**
   * Sag from three lengths.
   *
   * @param extended wheel off the ground, m, 0 to 2
   * @param risen after being pushed down, m
   * @param settled after being lifted, m
   */
  public static Sag of(double extended, double risen, double settled) {
    Given.length("extended length", extended);
    Given.length("length after rising", risen);
    Given.length("length after settling", settled);
    return new Sag(extended - (risen + settled) / 2, Math.abs(risen - settled));
  }

  /** Sag from two lengths; its friction is unknown and counts as none. */
  public static Sag of(double extended, double standing) {
    return of(extended, standing, standing);
  }
}
