package rutbook.units;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every unit worked out from its definition in whole numbers, not looked up:
 *
 * <ul>
 *   <li>yard 0.9144 m and pound 0.45359237 kg: international yard and pound agreement of 1 July
 *       1959; NIST Handbook 44, Appendix C
 *   <li>US gallon 231 cubic inches, of 128 fluid ounces: NIST Handbook 44, Appendix C
 *   <li>imperial gallon 4.54609 L, of 160 fluid ounces: United Kingdom, Units of Measurement
 *       Regulations 1995
 *   <li>standard gravity 9.80665 m/s²: third General Conference on Weights and Measures, 1901; the
 *       kilogram-force and the pound-force from it, NIST SP 811, Appendix B
 *   <li>litre, hour, minute, degree of angle: BIPM, The International System of Units, 9th edition,
 *       table 8; degree Celsius: there, section 2.3.1
 *   <li>bar 100 kPa, stokes 0.0001 m²/s, degree Fahrenheit: NIST SP 811, Appendix B
 * </ul>
 */
class UnitDefinitionsTest {
  private static final Fraction METRE = Fraction.of("1");
  private static final Fraction INCH = Fraction.of("0.9144").over(36);
  private static final Fraction FOOT = Fraction.of("0.9144").over(3);
  private static final Fraction POUND = Fraction.of("0.45359237");
  private static final Fraction GRAVITY = Fraction.of("9.80665");
  private static final Fraction POUND_FORCE = POUND.times(GRAVITY);
  private static final Fraction MILLIMETRE = METRE.over(1000);
  private static final Fraction LITRE = METRE.over(10).cubed();
  private static final Fraction US_GALLON = INCH.cubed().times(Fraction.of("231"));
  private static final Fraction IMPERIAL_GALLON = LITRE.times(Fraction.of("4.54609"));

  private static final Map<Unit, Fraction> DEFINED =
      Map.ofEntries(
          entry(ClickUnit.CLICK, Fraction.of("1")),
          entry(TurnUnit.TURN, Fraction.of("1")),
          entry(Volume.LITRE, LITRE),
          entry(Volume.MILLILITRE, LITRE.over(1000)),
          entry(Volume.US_FLUID_OUNCE, US_GALLON.over(128)),
          entry(Volume.IMPERIAL_FLUID_OUNCE, IMPERIAL_GALLON.over(160)),
          entry(Length.METRE, METRE),
          entry(Length.MILLIMETRE, MILLIMETRE),
          entry(Length.INCH, INCH),
          entry(Length.FOOT, FOOT),
          entry(SpringRate.NEWTON_PER_MILLIMETRE, Fraction.of("1").over(MILLIMETRE)),
          entry(SpringRate.KILOGRAM_FORCE_PER_MILLIMETRE, GRAVITY.over(MILLIMETRE)),
          entry(SpringRate.POUND_FORCE_PER_INCH, POUND_FORCE.over(INCH)),
          entry(Pressure.KILOPASCAL, Fraction.of("1000")),
          entry(Pressure.MEGAPASCAL, Fraction.of("1000000")),
          entry(Pressure.BAR, Fraction.of("100000")),
          entry(Pressure.PSI, POUND_FORCE.over(INCH).over(INCH)),
          entry(
              Pressure.KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE,
              GRAVITY.over(METRE.over(100)).over(METRE.over(100))),
          entry(Torque.NEWTON_METRE, Fraction.of("1")),
          entry(Torque.POUND_FORCE_FOOT, POUND_FORCE.times(FOOT)),
          entry(Torque.POUND_FORCE_INCH, POUND_FORCE.times(INCH)),
          entry(Torque.KILOGRAM_FORCE_METRE, GRAVITY),
          entry(Temperature.KELVIN, Fraction.of("1")),
          entry(Temperature.CELSIUS, Fraction.of("1")),
          entry(Temperature.FAHRENHEIT, Fraction.of("5").over(9)),
          entry(Mass.KILOGRAM, Fraction.of("1")),
          entry(Mass.POUND, POUND),
          entry(Duration.HOUR, Fraction.of("3600")),
          entry(Duration.MINUTE, Fraction.of("60")),
          entry(KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND, MILLIMETRE.times(MILLIMETRE)));

  /** As good as the 30 digits of pi that are kept. */
  private static final BigDecimal DEGREE = new BigDecimal("0.0174532925199432957692369076849");

  @Test
  void everyUnitIsItsDefinitionToTheLastDigit() {
    DEFINED.forEach(
        (unit, defined) ->
            assertThat(
                    Fraction.of(unit.numerator().toPlainString())
                        .over(Fraction.of(unit.denominator().toPlainString())))
                .as(unit.symbol())
                .isEqualTo(defined));
    // Pi/180, from memory of pi to 31 digits: no fraction has it.
    assertThat(Angle.DEGREE.numerator()).isEqualByComparingTo(DEGREE);
    assertThat(Math.toRadians(1)).isEqualTo(Angle.DEGREE.numerator().doubleValue());
  }

  @Test
  void everyUnitHasADefinitionHere() {
    Set<Unit> defined = new java.util.HashSet<>(DEFINED.keySet());
    defined.add(Angle.DEGREE);
    assertThat(defined).isEqualTo(Unit.all().stream().collect(Collectors.toSet()));
  }

  @Test
  void waterFreezesAt32AndBoilsAt212DegreesFahrenheit() {
    assertThat(
            Amount.of(32, Temperature.FAHRENHEIT).sameQuantity(Amount.of(0, Temperature.CELSIUS)))
        .isTrue();
    assertThat(
            Amount.of(212, Temperature.FAHRENHEIT)
                .sameQuantity(Amount.of(100, Temperature.CELSIUS)))
        .isTrue();
    assertThat(
            Amount.of("273.15", Temperature.KELVIN).sameQuantity(Amount.of(0, Temperature.CELSIUS)))
        .isTrue();
    for (Unit unit : Unit.all()) {
      if (unit.dimension() != Dimension.TEMPERATURE) {
        assertThat(unit.offset()).as(unit.symbol()).isEqualByComparingTo(BigDecimal.ZERO);
      }
    }
  }

  /** A number as a ratio in lowest terms, so that equal means equal. */
  private record Fraction(BigInteger top, BigInteger bottom) {
    Fraction {
      BigInteger common = top.gcd(bottom);
      top = top.divide(common);
      bottom = bottom.divide(common);
    }

    static Fraction of(String decimal) {
      BigDecimal number = new BigDecimal(decimal);
      int scale = Math.max(0, number.scale());
      return new Fraction(
          number.movePointRight(scale).toBigIntegerExact(), BigInteger.TEN.pow(scale));
    }

    Fraction times(Fraction other) {
      return new Fraction(top.multiply(other.top), bottom.multiply(other.bottom));
    }

    Fraction over(Fraction other) {
      return new Fraction(top.multiply(other.bottom), bottom.multiply(other.top));
    }

    Fraction over(int whole) {
      return over(of(Integer.toString(whole)));
    }

    Fraction cubed() {
      return times(this).times(this);
    }
  }
}
