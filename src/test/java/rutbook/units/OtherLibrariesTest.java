package rutbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import systems.uom.ucum.UCUM;
import tech.units.indriya.unit.Units;

/**
 * Units against three independent lists: Indriya 2.2.4, systems-common 2.2 and the Unified Code for
 * Units of Measure as systems-ucum 2.2 has it. Those reckon with doubles, so they agree to 1e-12.
 */
class OtherLibrariesTest {
  private static final double NEAR = 1e-12;
  private static final List<String> NUMBERS = List.of("0", "1", "-40", "9.5", "345", "0.8");

  record Pair(Unit ours, String list, javax.measure.Unit<?> theirs, javax.measure.Unit<?> si) {
    @Override
    public String toString() {
      return ours.symbol() + " as in " + list;
    }
  }

  private static Pair pair(
      Unit ours, String list, javax.measure.Unit<?> theirs, javax.measure.Unit<?> si) {
    return new Pair(ours, list, theirs, si);
  }

  static List<Pair> pairs() {
    javax.measure.Unit<?> cubic = Units.CUBIC_METRE;
    javax.measure.Unit<?> rate = Units.NEWTON.divide(Units.METRE);
    javax.measure.Unit<?> torque = Units.NEWTON.multiply(Units.METRE);
    javax.measure.Unit<?> viscosity = Units.SQUARE_METRE.divide(Units.SECOND);
    javax.measure.Unit<?> kilogramForce = UCUM.GRAM_FORCE.multiply(1000);
    return List.of(
        pair(Volume.MILLILITRE, "Indriya", Units.LITRE.divide(1000), cubic),
        pair(Volume.LITRE, "Indriya", Units.LITRE, cubic),
        pair(Volume.LITRE, "UCUM", UCUM.LITER, cubic),
        pair(Volume.US_FLUID_OUNCE, "US customary", USCustomary.FLUID_OUNCE, cubic),
        pair(Volume.US_FLUID_OUNCE, "UCUM", UCUM.FLUID_OUNCE_US, cubic),
        pair(Volume.IMPERIAL_FLUID_OUNCE, "Imperial", Imperial.FLUID_OUNCE, cubic),
        pair(Volume.IMPERIAL_FLUID_OUNCE, "UCUM", UCUM.FLUID_OUNCE_BRITISH, cubic),
        pair(Length.MILLIMETRE, "Indriya", Units.METRE.divide(1000), Units.METRE),
        pair(Length.METRE, "UCUM", UCUM.METER, Units.METRE),
        pair(Length.INCH, "US customary", USCustomary.INCH, Units.METRE),
        pair(Length.INCH, "Imperial", Imperial.INCH, Units.METRE),
        pair(Length.INCH, "UCUM", UCUM.INCH_INTERNATIONAL, Units.METRE),
        pair(Length.FOOT, "US customary", USCustomary.FOOT, Units.METRE),
        pair(Length.FOOT, "UCUM", UCUM.FOOT_INTERNATIONAL, Units.METRE),
        pair(
            SpringRate.NEWTON_PER_MILLIMETRE,
            "Indriya",
            Units.NEWTON.divide(Units.METRE.divide(1000)),
            rate),
        pair(
            SpringRate.POUND_FORCE_PER_INCH,
            "UCUM",
            UCUM.POUND_FORCE.divide(UCUM.INCH_INTERNATIONAL),
            rate),
        pair(
            SpringRate.POUND_FORCE_PER_INCH,
            "Imperial",
            Imperial.POUND_FORCE.divide(Imperial.INCH),
            rate),
        pair(
            SpringRate.KILOGRAM_FORCE_PER_MILLIMETRE,
            "UCUM",
            kilogramForce.divide(UCUM.METER.divide(1000)),
            rate),
        pair(
            SpringRate.KILOGRAM_FORCE_PER_MILLIMETRE,
            "Imperial",
            Imperial.KILOGRAM_FORCE.divide(Units.METRE.divide(1000)),
            rate),
        pair(Pressure.KILOPASCAL, "Indriya", Units.PASCAL.multiply(1000), Units.PASCAL),
        pair(Pressure.MEGAPASCAL, "UCUM", UCUM.PASCAL.multiply(1_000_000), Units.PASCAL),
        pair(Pressure.BAR, "UCUM", UCUM.BAR, Units.PASCAL),
        pair(Pressure.PSI, "UCUM", UCUM.POUND_PER_SQUARE_INCH, Units.PASCAL),
        pair(
            Pressure.KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE,
            "UCUM",
            UCUM.ATMOSPHERE_TECHNICAL,
            Units.PASCAL),
        pair(Torque.NEWTON_METRE, "Indriya", Units.NEWTON.multiply(Units.METRE), torque),
        pair(
            Torque.POUND_FORCE_FOOT,
            "UCUM",
            UCUM.POUND_FORCE.multiply(UCUM.FOOT_INTERNATIONAL),
            torque),
        pair(
            Torque.POUND_FORCE_FOOT,
            "Imperial and US customary",
            Imperial.POUND_FORCE.multiply(USCustomary.FOOT),
            torque),
        pair(
            Torque.POUND_FORCE_INCH,
            "UCUM",
            UCUM.POUND_FORCE.multiply(UCUM.INCH_INTERNATIONAL),
            torque),
        pair(Torque.KILOGRAM_FORCE_METRE, "UCUM", kilogramForce.multiply(UCUM.METER), torque),
        pair(Angle.DEGREE, "US customary", USCustomary.DEGREE_ANGLE, Units.RADIAN),
        pair(Angle.DEGREE, "UCUM", UCUM.DEGREE, Units.RADIAN),
        pair(Temperature.KELVIN, "UCUM", UCUM.KELVIN, Units.KELVIN),
        pair(Temperature.CELSIUS, "Indriya", Units.CELSIUS, Units.KELVIN),
        pair(Temperature.CELSIUS, "UCUM", UCUM.CELSIUS, Units.KELVIN),
        pair(Temperature.FAHRENHEIT, "US customary", USCustomary.FAHRENHEIT, Units.KELVIN),
        pair(Temperature.FAHRENHEIT, "UCUM", UCUM.FAHRENHEIT, Units.KELVIN),
        pair(Mass.KILOGRAM, "Indriya", Units.KILOGRAM, Units.KILOGRAM),
        pair(Mass.POUND, "US customary", USCustomary.POUND, Units.KILOGRAM),
        pair(Mass.POUND, "Imperial", Imperial.POUND, Units.KILOGRAM),
        pair(Mass.POUND, "UCUM", UCUM.POUND, Units.KILOGRAM),
        pair(Duration.HOUR, "Indriya", Units.HOUR, Units.SECOND),
        pair(Duration.MINUTE, "UCUM", UCUM.MINUTE, Units.SECOND),
        pair(
            KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND,
            "UCUM",
            UCUM.STOKES.divide(100),
            viscosity));
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void everyUnitIsWorthWhatOthersSay(Pair pair) throws Exception {
    UnitConverter there = pair.theirs().getConverterToAny(pair.si());
    for (String number : NUMBERS) {
      double theirs = there.convert(Double.parseDouble(number));
      double size = Math.max(Math.abs(theirs), 1e-30);
      assertThat(Amount.of(number, pair.ours()).si())
          .as(number)
          .isEqualTo(theirs, within(NEAR * size));
    }
  }

  /** A mile is 5280 feet, and the hours cancel: no speeds in the notebook. */
  @Test
  void aMileAnHourIsMadeOfTheSameFeet() throws Exception {
    double theirs =
        UCUM.MILE_INTERNATIONAL
            .divide(UCUM.HOUR)
            .getConverterToAny(Units.METRE_PER_SECOND)
            .convert(1.0);
    double ours = Amount.of(5280, Length.FOOT).si() / Amount.of(1, Duration.HOUR).si();
    assertThat(ours).isEqualTo(theirs, within(NEAR));
    assertThat(ours).isEqualTo(0.44704, within(NEAR)); // NIST SP 811, Appendix B.8
  }

  @Test
  void everyUnitButClicksAndTurnsIsLookedUpElsewhere() {
    Set<Unit> seen = new HashSet<>();
    pairs().forEach(pair -> seen.add(pair.ours()));
    seen.add(ClickUnit.CLICK);
    seen.add(TurnUnit.TURN);
    assertThat(seen).containsExactlyInAnyOrderElementsOf(Unit.all());
  }
}
