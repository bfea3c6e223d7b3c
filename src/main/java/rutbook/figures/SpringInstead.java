package rutbook.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.units.Amount;

/** Which rear spring does what a preload beyond its limits was wanted for. */
public final class SpringInstead {
  private SpringInstead() {}

  /**
   * The rate of a rear spring that leaves the race sag where it was, when the preload is held short
   * of what was wanted: {@code k' (s MR + p_held) = k (s MR + p_wanted)}, the straight-line model.
   * On a step of the spring setting and inside its limits; empty when something is not known or the
   * spring stays the same.
   *
   * @param reached the setup with the held preload
   * @param raceSag at the wheel
   */
  public static Optional<Amount> of(
      Sheet sheet, Setup reached, Setting spring, Reading wanted, Optional<Amount> raceSag) {
    Inputs inputs = new Inputs();
    double sag =
        inputs.required(
            Quantity.REAR_RACE_SAG, Optional.empty(), raceSag, Need.Why.NOT_NOTED, SagBuild.SAG);
    double rate =
        inputs.ofSetup(
            Quantity.SHOCK_SPRING, Side.LEFT, Optional.of(spring), reached, SagBuild.RATE);
    double held =
        inputs.ofSetup(
            Quantity.SHOCK_PRELOAD,
            Side.LEFT,
            SagBuild.one(sheet, Role.SHOCK_PRELOAD),
            reached,
            SagBuild.PRELOAD);
    double want =
        inputs.required(
            Quantity.SHOCK_PRELOAD,
            Optional.empty(),
            wanted.leg(Side.LEFT).known(),
            Need.Why.NOT_NOTED,
            SagBuild.PRELOAD);
    Optional<MotionRatio> ratio = sheet.parts().shock().motionRatio();
    if (ratio.isEmpty() || !inputs.complete()) {
      return Optional.empty();
    }
    double atSpring = sag * ratio.get().springOverWheel();
    if (atSpring + held <= 0) {
      return Optional.empty();
    }
    Amount step = spring.scale().step();
    Amount exact = Si.amount(rate * (atSpring + want) / (atSpring + held), step.unit(), 6);
    BigDecimal steps = exact.value().divide(step.value(), 0, RoundingMode.HALF_EVEN);
    Amount fitted = sheet.limits(spring).hold(step.withValue(steps.multiply(step.value())));
    return Math.abs(fitted.si() - rate) < 1e-6 ? Optional.empty() : Optional.of(fitted);
  }
}
