package rutbook.figures;

import rutbook.figures.Inputs.Believable;
import rutbook.notebook.Geometry;
import rutbook.notebook.Sheet;
import rutbook.physics.Chassis;
import rutbook.physics.Steering;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.Dimension;
import rutbook.units.Length;

/**
 * How a bike steers after its fork was moved in the clamps or its rear sag changed: a rigid plane,
 * solved exactly. More tube above the clamp lowers the front.
 *
 * @param noseDown pitch from the sheet's geometry; negative is nose up
 * @param trail along the ground
 * @param normalTrail square to the steering axis
 * @param exact the same unrounded, in SI, for curves
 */
public record SteeringFigures(
    Amount noseDown,
    Amount rake,
    Amount trail,
    Amount normalTrail,
    Amount wheelbase,
    Steering exact) {
  private static final Believable RAKE = new Believable(Dimension.ANGLE, 0.2, 0.8);
  private static final Believable OFFSET = new Believable(Dimension.LENGTH, -0.05, 0.15);
  private static final Believable RADIUS = new Believable(Dimension.LENGTH, 0.1, 0.5);
  private static final Believable WHEELBASE = new Believable(Dimension.LENGTH, 0.8, 2.2);
  private static final Believable CHANGE = new Believable(Dimension.LENGTH, -0.06, 0.06);

  /** As the sheet's geometry stands. */
  public static Figure<SteeringFigures> of(Sheet sheet) {
    Amount none = Amount.of(0, Length.MILLIMETRE);
    return after(sheet, none, none);
  }

  /**
   * After changes of height.
   *
   * @param tubeMore more tube above the upper clamp; within ±60 mm
   * @param rearSagMore more sag at the rear; within ±60 mm
   */
  public static Figure<SteeringFigures> after(Sheet sheet, Amount tubeMore, Amount rearSagMore) {
    Geometry geometry = sheet.parts().geometry();
    Inputs inputs = new Inputs();
    double rear = inputs.ofSheet(Quantity.REAR_RADIUS, geometry.rearRadius(), RADIUS);
    double front = inputs.ofSheet(Quantity.FRONT_RADIUS, geometry.frontRadius(), RADIUS);
    double rake = inputs.ofSheet(Quantity.RAKE, geometry.rake(), RAKE);
    double offset = inputs.ofSheet(Quantity.OFFSET, geometry.forkOffset(), OFFSET);
    double wheelbase = inputs.ofSheet(Quantity.WHEELBASE, geometry.wheelbase(), WHEELBASE);
    double tube =
        inputs.ofSheet(Quantity.TUBE_ABOVE_CLAMP, java.util.Optional.of(tubeMore), CHANGE);
    double sag = inputs.ofSheet(Quantity.REAR_RACE_SAG, java.util.Optional.of(rearSagMore), CHANGE);
    inputs.assume(Assumed.GEOMETRY_OF_TODAY);
    return inputs.figure(
        () -> figures(Steering.of(new Chassis(rear, front, rake, offset, wheelbase), tube, sag)));
  }

  private static SteeringFigures figures(Steering steering) {
    return new SteeringFigures(
        degrees(steering.noseDown()),
        degrees(steering.rake()),
        Si.amount(steering.trail(), Length.MILLIMETRE, 1),
        Si.amount(steering.normalTrail(), Length.MILLIMETRE, 1),
        Si.amount(steering.wheelbase(), Length.MILLIMETRE, 1),
        steering);
  }

  private static Amount degrees(double radians) {
    return new Amount(
        java.math.BigDecimal.valueOf(Math.toDegrees(radians))
            .setScale(2, java.math.RoundingMode.HALF_EVEN),
        Angle.DEGREE);
  }
}
