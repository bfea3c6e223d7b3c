package rutbook.figures;

import java.util.Optional;
import rutbook.figures.Inputs.Believable;
import rutbook.notebook.Oil;
import rutbook.physics.Blend;
import rutbook.physics.OilLine;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.KinematicViscosity;
import rutbook.units.Temperature;

/** Viscosity of the oils on the shelf at riding temperature, and what another oil does. */
public final class OilFigures {
  /** How warm fork oil is taken to be when ridden; our own choice, no source. */
  public static final Amount RIDING = Amount.of(50, Temperature.CELSIUS);

  private static final Believable VISCOSITY =
      new Believable(Dimension.KINEMATIC_VISCOSITY, 1.1e-6, 1e-3);
  private static final Believable TEMPERATURE =
      new Believable(Dimension.TEMPERATURE, OilLine.COLDEST, OilLine.HOTTEST);

  private OilFigures() {}

  /** An oil at a temperature. */
  public record At(Amount temperature, Amount viscosity) {}

  /**
   * One oil against another at a temperature.
   *
   * @param ratio new over old; above one is slower, and firmer at low speed: a sense with its
   *     figure, never a number of clicks
   */
  public record Ratio(Amount temperature, Amount old, Amount now, double ratio) {}

  /** The line of an oil by ASTM D341, or what it needs: both viscosities, on the scale. */
  public static Figure<OilLine> line(Oil oil) {
    Inputs inputs = new Inputs();
    double kv40 = inputs.ofSheet(Quantity.VISCOSITY_AT_40, oil.kv40(), VISCOSITY) * 1e6;
    double kv100 = inputs.ofSheet(Quantity.VISCOSITY_AT_100, oil.kv100(), VISCOSITY) * 1e6;
    return inputs.complete()
        ? through(kv40, kv100)
        : new Figure.Lacks<>(inputs.<OilLine>figure(() -> null).needs());
  }

  /** A line that leaves the scale between the coldest and the hottest is no oil's. */
  private static Figure<OilLine> through(double kv40, double kv100) {
    try {
      return Figure.of(OilLine.of(kv40, kv100));
    } catch (IllegalArgumentException offTheScale) {
      return Figure.lacks(Need.of(Quantity.VISCOSITY_LINE, Need.Why.BEYOND_ANY_BIKE));
    }
  }

  /** An oil at a temperature; without one at {@link #RIDING}, which is an assumption. */
  public static Figure<At> at(Oil oil, Optional<Amount> temperature) {
    return line(oil)
        .then(
            line ->
                kelvin(temperature)
                    .map(kelvin -> new At(temperature.orElse(RIDING), viscosity(line, kelvin))));
  }

  /** What going from one oil to another does, at riding temperature unless another is given. */
  public static Figure<Ratio> ratio(Oil old, Oil now, Optional<Amount> temperature) {
    return line(old)
        .then(
            before ->
                line(now)
                    .then(
                        after ->
                            kelvin(temperature)
                                .map(
                                    kelvin ->
                                        new Ratio(
                                            temperature.orElse(RIDING),
                                            viscosity(before, kelvin),
                                            viscosity(after, kelvin),
                                            before.ratioOf(after, kelvin)))));
  }

  /**
   * What warmer or colder air does to the oil in a fork, and another oil with it: the first is
   * taken to be at {@link #RIDING}, the second as much warmer or colder than that as the air is.
   */
  public static Figure<Ratio> inAir(Oil old, Oil now, Amount airBefore, Amount airAfter) {
    double after = RIDING.si() + airAfter.si() - airBefore.si();
    if (!(after >= OilLine.COLDEST && after <= OilLine.HOTTEST)) {
      return Figure.lacks(Need.of(Quantity.OIL_TEMPERATURE, Need.Why.BEYOND_ANY_BIKE));
    }
    Figure<Ratio> ratio =
        line(old)
            .then(
                before ->
                    line(now)
                        .map(
                            next ->
                                new Ratio(
                                    Si.amount(after, Temperature.CELSIUS, 1),
                                    viscosity(before, RIDING.si()),
                                    viscosity(next, after),
                                    next.viscosityAt(after) / before.viscosityAt(RIDING.si()))));
    return ratio.then(it -> new Figure.Of<>(it, java.util.Set.of(Assumed.OIL_TEMPERATURE)));
  }

  /**
   * The line of two oils mixed: always an estimate.
   *
   * @param part of the first by volume, 0 to 1
   */
  public static Figure<OilLine> blend(Oil first, Oil second, double part) {
    if (!(part >= 0 && part <= 1)) {
      return Figure.lacks(Need.of(Quantity.PART_OF_OIL, Need.Why.BEYOND_ANY_BIKE));
    }
    Figure<OilLine> mixed =
        line(first)
            .then(
                one ->
                    line(second)
                        .then(
                            other ->
                                through(
                                    mixed(one, other, part, 40), mixed(one, other, part, 100))));
    return mixed.then(line -> new Figure.Of<>(line, java.util.Set.of(Assumed.BLEND_RULE)));
  }

  /**
   * Two oils mixed, at 40 and 100 °C and at a temperature: always an estimate.
   *
   * @param part of the first by volume, 0 to 1
   */
  public record Blended(double part, Amount at40, Amount at100, At at) {}

  /** The blend of two oils, at riding temperature unless another is given. */
  public static Figure<Blended> blended(
      Oil first, Oil second, double part, Optional<Amount> temperature) {
    return blend(first, second, part)
        .then(
            line ->
                kelvin(temperature)
                    .map(
                        kelvin ->
                            new Blended(
                                part,
                                viscosity(line, 313.15),
                                viscosity(line, 373.15),
                                new At(temperature.orElse(RIDING), viscosity(line, kelvin)))));
  }

  private static double mixed(OilLine one, OilLine other, double part, double celsius) {
    double kelvin = celsius + 273.15;
    return Blend.of(one.viscosityAt(kelvin), other.viscosityAt(kelvin), part).doubleLog();
  }

  private static Figure<Double> kelvin(Optional<Amount> temperature) {
    Inputs inputs = new Inputs();
    double kelvin =
        inputs.orAssume(
            Quantity.OIL_TEMPERATURE,
            temperature,
            TEMPERATURE,
            Assumed.OIL_TEMPERATURE,
            RIDING.si());
    return inputs.figure(() -> kelvin);
  }

  private static Amount viscosity(OilLine line, double kelvin) {
    return Si.amount(
        line.viscosityAt(kelvin) * 1e-6, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND, 2);
  }
}
