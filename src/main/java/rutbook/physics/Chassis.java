package rutbook.physics;

/**
 * The five lengths and the angle that steer a bike, as measured at one height.
 *
 * @param rearRadius loaded, m
 * @param frontRadius loaded, m
 * @param rake of the steering axis from the vertical, rad, 0.1 to 1
 * @param offset of the front axle from the steering axis, clamps and axle together, m
 * @param wheelbase m
 */
public record Chassis(
    double rearRadius, double frontRadius, double rake, double offset, double wheelbase) {

  public Chassis {
    Given.within("rear radius", rearRadius, 0.1, 0.6);
    Given.within("front radius", frontRadius, 0.1, 0.6);
    Given.within("rake", rake, 0.1, 1);
    Given.within("offset", offset, -0.1, 0.2);
    Given.within("wheelbase", wheelbase, 0.8, 2.5);
  }
}
