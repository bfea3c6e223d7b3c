package rutbook.physics;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How a bike steers at a height.
 *
 * @param noseDown pitch from the chassis as measured, rad; negative is nose up
 * @param rake rad from the vertical
 * @param trail along the ground, m
 * @param normalTrail square to the steering axis, m
 * @param wheelbase m
 */
public record Steering(
    double noseDown, double rake, double trail, double normalTrail, double wheelbase) {

  /** Steeper pitches than this are no change of setup, rad. */
  private static final double MOST_PITCH = 0.5;

  /**
   * Trail in m along the ground, {@code (R sin ε − d) / cos ε}.
   *
   * @param radius loaded front radius, m
   * @param rake rad from the vertical, 0 to 1.2
   * @param offset m
   */
  public static double trail(double radius, double rake, double offset) {
    return normalTrail(radius, rake, offset) / Math.cos(rake);
  }

  /** Trail in m square to the steering axis, {@code R sin ε − d}. */
  public static double normalTrail(double radius, double rake, double offset) {
    Given.within("front radius", radius, 0.1, 0.6);
    Given.within("rake", rake, 0, 1.2);
    Given.within("offset", offset, -0.1, 0.2);
    return radius * Math.sin(rake) - offset;
  }

  /**
   * The bike after the fork was moved in its clamps and the rear sag changed: a rigid plane with
   * both tyres on the ground, solved exactly by root finder. The swingarm is taken to move the axle
   * straight up: an estimate for the wheelbase, within a millimetre or two.
   *
   * @param tubeMore more tube above the upper clamp, m along the axis: lowers the front; negative
   *     is less; within ±0.15
   * @param rearSagMore more sag at the rear, m: lowers the rear; within ±0.15
   */
  public static Steering of(Chassis chassis, double tubeMore, double rearSagMore) {
    Given.within("change of tube above clamp", tubeMore, -0.15, 0.15);
    Given.within("change of rear sag", rearSagMore, -0.15, 0.15);
    double forward = chassis.wheelbase() - tubeMore * Math.sin(chassis.rake());
    double rise = chassis.frontRadius() - chassis.rearRadius();
    double up = rise + tubeMore * Math.cos(chassis.rake()) - rearSagMore;
    double pitch =
        new BracketingNthOrderBrentSolver(1e-15, 1e-14, 1e-15, 5)
            .solve(
                100,
                angle -> up * Math.cos(angle) - forward * Math.sin(angle) - rise,
                -MOST_PITCH,
                MOST_PITCH);
    double rake = Given.within("rake", chassis.rake() - pitch, 0, 1.2);
    return new Steering(
        pitch,
        rake,
        trail(chassis.frontRadius(), rake, chassis.offset()),
        normalTrail(chassis.frontRadius(), rake, chassis.offset()),
        forward * Math.cos(pitch) + up * Math.sin(pitch));
  }
}
