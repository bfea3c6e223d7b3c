package rutbook.figures;

import java.util.Optional;
import rutbook.figures.Inputs.Believable;
import rutbook.notebook.AirLeg;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberVolume;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.physics.GasColumn;
import rutbook.physics.LegAir;
import rutbook.physics.OpenBath;
import rutbook.physics.TrappedAir;
import rutbook.physics.TwinChamber;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * What fills one leg, ready for physics.
 *
 * @param measured whether the volume it fills was measured: then too little air is refused, and an
 *     estimate only warns
 * @param chamberVolume of the outer chamber in m³, where there is one
 */
record LegFill(Side side, LegAir air, boolean measured, Optional<Double> chamberVolume) {
  /**
   * Start over end volume at the manual's greatest fill, from which an unknown chamber is reckoned;
   * our own choice, near what measured outer chambers come to.
   */
  static final double RATIO_AT_GREATEST_FILL = 6;

  private static final Believable SEAL = new Believable(Dimension.LENGTH, 0.02, 0.08);
  private static final Believable BORE = new Believable(Dimension.LENGTH, 0.015, 0.08);
  private static final Believable ROD = new Believable(Dimension.LENGTH, 0.002, 0.018);
  private static final Believable STEEL = new Believable(Dimension.VOLUME, 1e-6, 5e-4);
  private static final Believable GAP = new Believable(Dimension.LENGTH, 0, 0.5);
  private static final Believable OIL = new Believable(Dimension.VOLUME, 1e-6, 3e-3);
  private static final Believable CHAMBER = new Believable(Dimension.VOLUME, 2e-5, 4e-3);
  private static final Believable PISTON = new Believable(Dimension.LENGTH, 0.01, 0.08);
  private static final Believable GAS = new Believable(Dimension.VOLUME, 1e-6, 4e-3);
  private static final Believable GAUGE = new Believable(Dimension.PRESSURE, 0, 4e6);

  /** Reads the fill of a leg; none when something is missing, or when the leg traps no air. */
  static Optional<LegFill> read(
      Inputs inputs, Sheet sheet, Setup setup, Side side, double outside) {
    ForkParts parts = sheet.parts().fork();
    double travel = inputs.ofSheet(Quantity.FORK_TRAVEL, parts.travel(), ForkBuild.TRAVEL);
    if (parts.kind() == ForkKind.AIR) {
      return pumped(inputs, sheet, setup, side, outside, travel);
    }
    double seal = inputs.ofSheet(Quantity.SEAL_DIAMETER, parts.sealDiameter(), SEAL);
    Optional<Setting> setting = Inputs.serving(sheet, Role.FORK_OIL, side);
    boolean byLevel = setting.isPresent() && setting.get().dimension() == Dimension.LENGTH;
    if (parts.kind() == ForkKind.OPEN_BATH && byLevel) {
      double gap = inputs.ofSetup(Quantity.FORK_FILL, side, setting, setup, GAP);
      return openBath(inputs, parts, new Numbers(side, travel, seal, outside), gap);
    }
    double oil = inputs.ofSetup(Quantity.FORK_FILL, side, setting, setup, OIL);
    return setting.isEmpty()
        ? Optional.empty()
        : twin(inputs, sheet, setting.get(), new Numbers(side, travel, seal, outside), oil);
  }

  private record Numbers(Side side, double travel, double seal, double outside) {
    TrappedAir trapped() {
      return TrappedAir.bledAt(outside);
    }
  }

  private static Optional<LegFill> openBath(
      Inputs inputs, ForkParts parts, Numbers numbers, double gap) {
    double bore = inputs.ofSheet(Quantity.TUBE_BORE, parts.tubeBore(), BORE);
    double steel =
        inputs.orAssume(
            Quantity.SPRING_STEEL, parts.springSteel(), STEEL, Assumed.SPRING_STEEL_LEFT_OUT, 0);
    return inputs.complete()
        ? Optional.of(
            new LegFill(
                numbers.side(),
                new OpenBath(bore, numbers.seal(), gap, steel, numbers.travel(), numbers.trapped()),
                parts.springSteel().isPresent(),
                Optional.empty()))
        : Optional.empty();
  }

  private static Optional<LegFill> twin(
      Inputs inputs, Sheet sheet, Setting setting, Numbers numbers, double oil) {
    double rod = rod(inputs, sheet.parts().fork());
    if (!inputs.complete()) {
      return Optional.empty();
    }
    double area = Math.PI / 4 * (numbers.seal() * numbers.seal() - rod * rod);
    Optional<ChamberVolume> known = sheet.chamber(setting).flatMap(Chamber::volume);
    double volume =
        known.isPresent()
            ? ofSheet(inputs, known.get())
            : reckoned(inputs, sheet.limits(setting).most(), area, numbers.travel());
    boolean measured = known.map(ChamberVolume::measured).orElse(false);
    return inputs.complete()
        ? Optional.of(
            new LegFill(
                numbers.side(),
                new TwinChamber(
                    volume,
                    oil,
                    numbers.seal(),
                    rod,
                    numbers.travel(),
                    numbers.trapped(),
                    Optional.empty()),
                measured,
                Optional.of(volume)))
        : Optional.empty();
  }

  private static double rod(Inputs inputs, ForkParts parts) {
    if (parts.kind() == ForkKind.OPEN_BATH) {
      inputs.assume(Assumed.OPEN_BATH_BY_VOLUME);
      return 0;
    }
    return inputs.orAssume(
        Quantity.CARTRIDGE_ROD, parts.cartridgeRod(), ROD, Assumed.CARTRIDGE_ROD_LEFT_OUT, 0);
  }

  private static double ofSheet(Inputs inputs, ChamberVolume known) {
    if (!known.measured()) {
      inputs.assume(Assumed.CHAMBER_NOT_MEASURED);
    }
    return inputs.ofSheet(Quantity.CHAMBER_VOLUME, Optional.of(known.volume()), CHAMBER);
  }

  private static double reckoned(Inputs inputs, Amount greatestFill, double area, double travel) {
    inputs.assume(Assumed.CHAMBER_FROM_GREATEST_FILL);
    double most = inputs.ofSheet(Quantity.FORK_FILL, Optional.of(greatestFill), OIL);
    return Double.isNaN(most)
        ? Double.NaN
        : TwinChamber.estimatedChamber(most, area, travel, RATIO_AT_GREATEST_FILL);
  }

  private static Optional<LegFill> pumped(
      Inputs inputs, Sheet sheet, Setup setup, Side side, double outside, double travel) {
    Optional<Setting> setting = Inputs.serving(sheet, Role.FORK_AIR, side);
    boolean otherLeg = setting.isEmpty() && !sheet.settings(Role.FORK_AIR).isEmpty();
    boolean once = setting.isPresent() && setting.get().carrier() == Carrier.SINGLE;
    if (otherLeg || once && side == Side.RIGHT) {
      return Optional.empty();
    }
    double gauge = inputs.ofSetup(Quantity.FORK_AIR_PRESSURE, side, setting, setup, GAUGE);
    Optional<AirLeg> leg = sheet.parts().fork().airLeg();
    if (leg.isEmpty()) {
      inputs.need(Quantity.NEGATIVE_CHAMBER, Optional.empty(), Need.Why.NOT_ON_THE_SHEET);
      return Optional.empty();
    }
    double piston = gas(inputs, leg.get().pistonDiameter(), PISTON);
    double positive = gas(inputs, leg.get().positiveVolume(), GAS);
    double negative = gas(inputs, leg.get().negativeVolume(), GAS);
    if (!inputs.complete()) {
      return Optional.empty();
    }
    inputs.assume(Assumed.NEGATIVE_EQUAL_AT_EXTENSION);
    double area = Math.PI / 4 * piston * piston;
    GasColumn main = rutbook.physics.AirLeg.pumped(gauge, outside, positive, area);
    GasColumn other = rutbook.physics.AirLeg.selfFilling(main, negative, area, 0);
    return Optional.of(
        new LegFill(
            side,
            new rutbook.physics.AirLeg(main, other, outside, travel),
            true,
            Optional.empty()));
  }

  private static double gas(Inputs inputs, Amount amount, Believable range) {
    return inputs.ofSheet(Quantity.NEGATIVE_CHAMBER, Optional.of(amount), range);
  }

  /** Notes a need where the leg locks before the end of its stroke: no curve exists there. */
  void requireRoom(Inputs inputs) {
    if (air.room().locked()) {
      inputs.need(Quantity.AIR_AT_FULL_STROKE, Optional.of(side), Need.Why.NONE_LEFT);
    }
  }
}
