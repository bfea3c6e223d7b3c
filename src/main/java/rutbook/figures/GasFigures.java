package rutbook.figures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.figures.Inputs.Believable;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.physics.Atmosphere;
import rutbook.physics.SealedGas;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Pressure;

/**
 * Gas that was closed in at one place and is read at another: warmer or colder, higher or lower. A
 * gauge reads against the air outside; the gas itself has its absolute pressure. Rigid chambers: a
 * tyre that gives a little reads a little less.
 */
public final class GasFigures {
  private static final Believable GAUGE = new Believable(Dimension.PRESSURE, 0, 4e6);
  private static final Believable ALTITUDE = new Believable(Dimension.LENGTH, -500, 9000);
  private static final Believable TEMPERATURE =
      new Believable(Dimension.TEMPERATURE, 233.15, 393.15);

  private GasFigures() {}

  /** Where gas is closed in, or read; as far as it is noted. */
  public record At(Optional<Amount> altitude, Optional<Amount> temperature) {
    public static final At NOT_NOTED = new At(Optional.empty(), Optional.empty());
  }

  /** A pressure both ways: over the air outside, and over nothing. */
  public record Both(Amount gauge, Amount absolute) {}

  /**
   * What a move does.
   *
   * @param difference of the gauge's reading
   */
  public record Moved(Both before, Both after, Amount difference) {}

  /** Which gas. */
  public enum Body {
    /** An air fork's main chamber: pumped, never bled like trapped air. */
    FORK_AIR,
    /** Air trapped over the oil of a spring fork: bled with the wheel off the ground. */
    TRAPPED_AIR,
    TYRE,
    /** A shock's charged reservoir: never opened, its pressure is the licensed shop's. */
    RESERVOIR
  }

  /** One body of gas of the bike. */
  public record Line(
      Body body, Optional<Setting> setting, Optional<Side> leg, Figure<Moved> moved) {}

  /**
   * What a gauge reads after a move, in the unit it was written in. A temperature that is not noted
   * at either place is taken not to change; an altitude not noted before is taken as the sea's, one
   * not noted after as the same.
   *
   * @param gauge as set, 0 to 40 bar
   */
  public static Figure<Moved> moved(Amount gauge, At before, At after) {
    Inputs inputs = new Inputs();
    double set =
        inputs.required(
            Quantity.GAUGE_PRESSURE,
            Optional.empty(),
            Optional.of(gauge),
            Need.Why.NOT_NOTED,
            GAUGE);
    double low =
        inputs.orAssume(Quantity.ALTITUDE, before.altitude(), ALTITUDE, Assumed.SEA_LEVEL, 0);
    double high =
        inputs.orAssume(Quantity.ALTITUDE, after.altitude(), ALTITUDE, Assumed.SAME_ALTITUDE, low);
    boolean known = before.temperature().isPresent() && after.temperature().isPresent();
    double cold = known ? kelvin(inputs, before.temperature()) : 288.15;
    double warm = known ? kelvin(inputs, after.temperature()) : 288.15;
    if (!known) {
      inputs.assume(Assumed.SAME_TEMPERATURE);
    }
    return inputs.figure(() -> moved(gauge, set, new Outside(low, cold, high, warm).pressures()));
  }

  /**
   * By what share the air trapped in a spring fork pushes more where it was bled higher up or lower
   * down, at any place of the travel: it pushes in proportion to the air it was closed in with.
   * Below zero is less; the day's weather is left out.
   */
  public static Figure<Double> bledAt(Amount before, Amount after) {
    Inputs inputs = new Inputs();
    double low =
        inputs.orAssume(Quantity.ALTITUDE, Optional.of(before), ALTITUDE, Assumed.SEA_LEVEL, 0);
    double high =
        inputs.orAssume(Quantity.ALTITUDE, Optional.of(after), ALTITUDE, Assumed.SEA_LEVEL, 0);
    return inputs.figure(() -> Atmosphere.pressureAt(high) / Atmosphere.pressureAt(low) - 1);
  }

  private static double kelvin(Inputs inputs, Optional<Amount> temperature) {
    return inputs.required(
        Quantity.AIR_TEMPERATURE, Optional.empty(), temperature, Need.Why.NOT_NOTED, TEMPERATURE);
  }

  private record Outside(double low, double cold, double high, double warm) {
    double[] pressures() {
      return new double[] {Atmosphere.pressureAt(low), cold, Atmosphere.pressureAt(high), warm};
    }
  }

  private static Moved moved(Amount written, double gauge, double[] outside) {
    double now = SealedGas.gaugeAt(gauge, outside[0], outside[2], outside[1], outside[3]);
    return new Moved(
        new Both(written, in(written, gauge + outside[0])),
        new Both(in(written, now), in(written, now + outside[2])),
        in(written, now - gauge));
  }

  private static Amount in(Amount written, double pascal) {
    return Si.amount(pascal, written.unit(), decimals(written));
  }

  /** To about a kilopascal: finer than any gauge. */
  private static int decimals(Amount written) {
    double pascals = written.withValue(BigDecimal.ONE).si();
    return Math.max(0, (int) Math.round(Math.log10(pascals / 1000)));
  }

  /** Every body of gas that the sheet knows of, as it is set, after a move. */
  public static List<Line> of(Sheet sheet, Setup setup, At before, At after) {
    List<Line> lines = new ArrayList<>();
    if (sheet.parts().fork().kind() == ForkKind.AIR) {
      pumped(lines, sheet, setup, Role.FORK_AIR, Body.FORK_AIR, before, after);
    } else {
      Amount bled = Amount.of(0, Pressure.BAR);
      lines.add(
          new Line(
              Body.TRAPPED_AIR, Optional.empty(), Optional.empty(), moved(bled, before, after)));
    }
    pumped(lines, sheet, setup, Role.TYRE_FRONT, Body.TYRE, before, after);
    pumped(lines, sheet, setup, Role.TYRE_REAR, Body.TYRE, before, after);
    if (sheet.parts().shock().chargedReservoir()) {
      lines.add(
          new Line(
              Body.RESERVOIR,
              Optional.empty(),
              Optional.empty(),
              Figure.lacks(Need.of(Quantity.GAUGE_PRESSURE, Need.Why.NOT_ON_THE_SHEET))));
    }
    return List.copyOf(lines);
  }

  private static void pumped(
      List<Line> lines, Sheet sheet, Setup setup, Role role, Body body, At before, At after) {
    for (Setting setting : sheet.settings(role)) {
      for (Optional<Side> leg : legs(setting)) {
        Optional<Amount> gauge = Inputs.reading(setup, setting, leg.orElse(Side.LEFT));
        lines.add(
            new Line(
                body,
                Optional.of(setting),
                leg,
                gauge
                    .map(amount -> moved(amount, before, after))
                    .orElseGet(
                        () ->
                            Figure.lacks(
                                new Need(Quantity.GAUGE_PRESSURE, leg, Need.Why.NOT_NOTED)))));
      }
    }
  }

  private static List<Optional<Side>> legs(Setting setting) {
    return switch (setting.carrier()) {
      case PAIR -> List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT));
      case LEFT -> List.of(Optional.of(Side.LEFT));
      case RIGHT -> List.of(Optional.of(Side.RIGHT));
      case SINGLE -> List.of(Optional.empty());
    };
  }
}
