package rutbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.figures.Inputs.Believable;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.physics.Atmosphere;
import rutbook.physics.ForkCurve;
import rutbook.physics.ForkLeg;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** Reads a fork from a sheet and a setup: both legs, each with its coil and its air. */
final class ForkBuild {
  static final Believable TRAVEL = new Believable(Dimension.LENGTH, 0.02, 0.5);
  private static final Believable RATE = new Believable(Dimension.SPRING_RATE, 100, 50_000);
  private static final Believable PRELOAD = new Believable(Dimension.LENGTH, 0, 0.1);
  private static final Believable ALTITUDE = new Believable(Dimension.LENGTH, -500, 9000);

  private ForkBuild() {}

  /** The curve of the fork, or what it needs. */
  static Figure<ForkCurve> curve(Sheet sheet, Setup setup, Optional<Amount> altitude) {
    ForkParts parts = sheet.parts().fork();
    Inputs inputs = new Inputs();
    double travel = inputs.ofSheet(Quantity.FORK_TRAVEL, parts.travel(), TRAVEL);
    double outside = outside(inputs, altitude);
    List<ForkLeg> legs = new ArrayList<>();
    for (Side side : Side.values()) {
      double rate = rate(inputs, sheet, setup, side);
      double preload = rate == 0 ? 0 : preload(inputs, sheet, setup, side);
      Optional<LegFill> air = LegFill.read(inputs, sheet, setup, side, outside);
      air.ifPresent(leg -> leg.requireRoom(inputs));
      if (inputs.complete()) {
        legs.add(new ForkLeg(rate, preload, air.map(leg -> leg.air().spring())));
      }
    }
    return inputs.figure(() -> new ForkCurve(legs, Optional.empty(), travel));
  }

  /** Pressure outside, absolute Pa; trapped air is taken to have been bled there. */
  static double outside(Inputs inputs, Optional<Amount> altitude) {
    if (altitude.isEmpty()) {
      inputs.assume(Assumed.SEA_LEVEL);
      return Atmosphere.SEA_LEVEL;
    }
    double height = inputs.ofSheet(Quantity.ALTITUDE, altitude, ALTITUDE);
    return Double.isNaN(height) ? Double.NaN : Atmosphere.pressureAt(height);
  }

  /** A leg of an air fork may have no coil, and so may one leg of a split fork. */
  private static double rate(Inputs inputs, Sheet sheet, Setup setup, Side side) {
    Optional<Setting> spring = Inputs.serving(sheet, Role.FORK_SPRING, side);
    boolean elsewhere = !sheet.settings(Role.FORK_SPRING).isEmpty();
    boolean air = sheet.parts().fork().kind() == ForkKind.AIR;
    if (spring.isEmpty() && (elsewhere || air)) {
      return 0;
    }
    return inputs.ofSetup(Quantity.FORK_SPRING, side, spring, setup, RATE);
  }

  private static double preload(Inputs inputs, Sheet sheet, Setup setup, Side side) {
    Optional<Amount> known =
        Inputs.serving(sheet, Role.FORK_PRELOAD, side)
            .filter(setting -> setting.dimension() == Dimension.LENGTH)
            .flatMap(setting -> Inputs.reading(setup, setting, side));
    if (known.isEmpty()) {
      inputs.assume(Assumed.FORK_PRELOAD_NONE);
      return 0;
    }
    return inputs.required(
        Quantity.FORK_PRELOAD, Optional.of(side), known, Need.Why.NOT_NOTED, PRELOAD);
  }
}
