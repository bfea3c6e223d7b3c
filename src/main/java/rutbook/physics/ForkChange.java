package rutbook.physics;

import java.util.OptionalDouble;

/**
 * What another fill, spring or preload does to a fork, each as new over old less one (0.04 is four
 * per cent more), on the line n = 1.3. Every share names its quantity; an estimate.
 *
 * @param middleAirForce air force at mid-stroke; empty when there was none
 * @param endAirForce air force at full stroke; empty when there was none
 * @param endForce total force at full stroke; empty when there was none
 * @param reserve work from a stroke to the bump stop; empty when there was none
 */
public record ForkChange(
    OptionalDouble middleAirForce,
    OptionalDouble endAirForce,
    OptionalDouble endForce,
    OptionalDouble reserve) {

  /**
   * The change from one curve to another.
   *
   * @param from stroke from which the reserve counts, m, within both travels
   */
  public static ForkChange between(ForkCurve old, ForkCurve now, double from) {
    double n = Polytropic.LINE;
    return new ForkChange(
        share(old.airForce(old.travel() / 2, n), now.airForce(now.travel() / 2, n)),
        share(old.airForce(old.travel(), n), now.airForce(now.travel(), n)),
        share(old.force(old.travel(), n), now.force(now.travel(), n)),
        share(old.reserve(from, n), now.reserve(from, n)));
  }

  /** Forces under a millinewton and work under a millijoule are nothing to take a share of. */
  private static OptionalDouble share(double old, double now) {
    return Math.abs(old) < 1e-3 ? OptionalDouble.empty() : OptionalDouble.of(now / old - 1);
  }
}
