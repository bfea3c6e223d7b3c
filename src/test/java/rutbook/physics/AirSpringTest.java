package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class AirSpringTest {

  private static final double TRAVEL = 0.3;
  private static final double SEA = Atmosphere.SEA_LEVEL;

  private static OpenBath leg(double gap) {
    return new OpenBath(0.048, 0.048, gap, 0, TRAVEL, TrappedAir.bledAt(SEA));
  }

  @Test
  void aBledLegPushesWithNothingAtFullExtension() {
    assertThat(leg(0.12).spring().force(0, Polytropic.LINE)).isZero();
  }

  /** The figures of the design: 4–5 % at mid-stroke and 9–14 % at the end, on the line n = 1.3. */
  @Test
  void tenMillimetresMoreOilRaisesTheAirForceByTheKnownShares() {
    for (double gap : new double[] {0.12, 0.11, 0.10}) {
      AirSpring less = leg(gap).spring();
      AirSpring more = leg(gap - 0.01).spring();
      double middle = more.force(0.15, 1.3) / less.force(0.15, 1.3) - 1;
      double end = more.force(0.3, 1.3) / less.force(0.3, 1.3) - 1;
      assertThat(middle).as("mid-stroke from %s m", gap).isBetween(0.04, 0.05);
      assertThat(end).as("end from %s m", gap).isBetween(0.09, 0.14);
    }
  }

  @Property(tries = 200, seed = "11")
  void moreOilIsMoreForceEverywhere(
      @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.2) double gap,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = TRAVEL) double stroke,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1.6) double exponent) {
    assertThat(leg(gap - 0.001).spring().force(stroke, exponent))
        .isGreaterThan(leg(gap).spring().force(stroke, exponent));
  }

  @Property(tries = 200, seed = "12")
  void forceGrowsWithStrokeAndExponent(
      @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.2) double gap,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.29) double stroke,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1.6) double exponent) {
    AirSpring spring = leg(gap).spring();
    assertThat(spring.force(stroke + 0.005, exponent))
        .isGreaterThan(spring.force(stroke, exponent));
    assertThat(spring.force(stroke, exponent + 0.01)).isGreaterThan(spring.force(stroke, exponent));
  }

  @Property(tries = 100, seed = "13")
  void theEnergyIsTheIntegralOfTheForce(
      @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.2) double gap,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.14) double from,
      @ForAll @Scale(6) @DoubleRange(min = 0.15, max = TRAVEL) double to,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1.6) double exponent) {
    for (AirSpring spring : List.of(leg(gap).spring(), airLeg().spring(), twin(gap).spring())) {
      double integral =
          new IterativeLegendreGaussIntegrator(16, 1e-11, 1e-12)
              .integrate(10_000, x -> spring.force(x, exponent), from, to);
      assertThat(spring.energy(from, to, exponent)).isCloseTo(integral, within(1e-8));
    }
  }

  @Property(tries = 100, seed = "14")
  void theRateIsTheSlopeOfTheForce(
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.29) double stroke,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1.6) double exponent) {
    AirSpring spring = airLeg().spring();
    double slope =
        (spring.force(stroke + 1e-6, exponent) - spring.force(stroke - 1e-6, exponent)) / 2e-6;
    assertThat(spring.rate(stroke, exponent)).isCloseTo(slope, within(1e-4 * slope));
  }

  @Test
  void theExponentOneIsTheLimitOfItsNeighbours() {
    AirSpring spring = leg(0.1).spring();
    double slow = spring.energy(0, TRAVEL, 1);
    assertThat(spring.energy(0, TRAVEL, 1 + 1e-12)).isCloseTo(slow, within(1e-9));
    assertThat(spring.energy(0, TRAVEL, 1 + 1e-6)).isCloseTo(slow, within(1e-4));
    assertThat(spring.energy(0, TRAVEL, 1.001)).isGreaterThan(slow);
  }

  @Test
  void airClosedInLowAndRiddenHighPushesAtFullExtension() {
    double high = Atmosphere.pressureAt(2000);
    OpenBath valley = new OpenBath(0.048, 0.048, 0.1, 0, TRAVEL, new TrappedAir(SEA, high));
    assertThat(valley.spring().force(0, 1.3))
        .isCloseTo((SEA - high) * Math.PI / 4 * 0.048 * 0.048, within(1e-9));
  }

  @Test
  void theSteelOfTheSpringLeavesLessAirAndMoreForce() {
    OpenBath withSteel = new OpenBath(0.048, 0.048, 0.1, 7e-5, TRAVEL, TrappedAir.bledAt(SEA));
    double ratio = withSteel.spring().force(TRAVEL, 1.3) / leg(0.1).spring().force(TRAVEL, 1.3);
    assertThat(ratio).as("70 mL of steel about doubles the end force").isBetween(1.7, 2.3);
  }

  @Test
  void aLegFullOfOilIsLockedAndHasNoCurve() {
    OpenBath full = new OpenBath(0.048, 0.048, 0.03, 7e-5, TRAVEL, TrappedAir.bledAt(SEA));
    assertThat(full.room().locked()).isTrue();
    assertThat(full.room().tight()).isTrue();
    assertThat(full.room().roomForOil()).isNegative();
    assertThatThrownBy(full::spring)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.3");
  }

  @Test
  void roomForOilEndsWhereTheRoomGetsTight() {
    TwinChamber leg = twin(0.1);
    double most = leg.fill() + leg.room().roomForOil();
    assertThat(leg.room().tight()).isFalse();
    assertThat(leg.filledWith(most - 1e-7).room().tight()).isFalse();
    assertThat(leg.filledWith(most + 1e-7).room().tight()).isTrue();
  }

  private static TwinChamber twin(double gap) {
    return new TwinChamber(
        1e-3 + gap * 1e-3,
        3.5e-4,
        0.048,
        0.012,
        TRAVEL,
        TrappedAir.bledAt(SEA),
        Optional.of(new GasColumn(2e5, 2e-4, Math.PI / 4 * 0.012 * 0.012)));
  }

  @Test
  void theCartridgesPressureAddsItsOwnForce() {
    TwinChamber with = twin(0.1);
    TwinChamber without =
        new TwinChamber(
            with.chamber(), with.fill(), 0.048, 0.012, TRAVEL, with.air(), Optional.empty());
    GasColumn gas = with.cartridge().orElseThrow();
    assertThat(with.spring().force(0.2, 1.3) - without.spring().force(0.2, 1.3))
        .isCloseTo(gas.force(0.2, 1.3, SEA), within(1e-9));
  }

  @Test
  void anEstimatedChamberCompressesTheGreatestFillAsAsked() {
    double area = Math.PI / 4 * (0.048 * 0.048 - 0.012 * 0.012);
    double chamber = TwinChamber.estimatedChamber(3.85e-4, area, TRAVEL, 4.5);
    TwinChamber leg =
        new TwinChamber(
            chamber, 3.85e-4, 0.048, 0.012, TRAVEL, TrappedAir.bledAt(SEA), Optional.empty());
    assertThat(leg.room().startVolume() / leg.room().endVolume()).isCloseTo(4.5, within(1e-9));
  }

  private static AirLeg airLeg() {
    double area = Math.PI / 4 * 0.034 * 0.034;
    GasColumn positive = AirLeg.pumped(9e5, SEA, 4.2e-4, area);
    return new AirLeg(
        positive, AirLeg.selfFilling(positive, 2.5e-5, 0.95 * area, 0.005), SEA, TRAVEL);
  }

  @Test
  void theNegativeChamberTakesAwayTheKilonewtonAtFullExtension() {
    AirLeg leg = airLeg();
    double alone = leg.positive().force(0, 1, SEA);
    assertThat(alone).as("main chamber alone").isBetween(700.0, 1000.0);
    assertThat(leg.spring().force(0, 1)).isLessThan(0.1 * alone);
    assertThat(leg.spring().force(0.1, 1)).isGreaterThan(0.5 * alone);
  }

  @Test
  void aNegativeChamberThatDoesNotGrowIsRefused() {
    GasColumn positive = AirLeg.pumped(9e5, SEA, 4.2e-4, 9e-4);
    assertThatThrownBy(() -> new AirLeg(positive, positive, SEA, TRAVEL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("9.0E-4");
  }

  @Test
  void noGasIsNoForce() {
    AirSpring open = new AirSpring(List.of(), SEA, TRAVEL);
    assertThat(open.force(TRAVEL, 1.3)).isZero();
    assertThat(open.energy(0, TRAVEL, 1.3)).isZero();
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    AirSpring spring = leg(0.1).spring();
    assertThatThrownBy(() -> spring.force(0.31, 1.3)).hasMessageContaining("0.31");
    assertThatThrownBy(() -> spring.force(Double.NaN, 1.3)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> spring.force(0.1, 0.9)).hasMessageContaining("0.9");
    assertThatThrownBy(() -> leg(-0.01)).hasMessageContaining("-0.01");
    assertThatThrownBy(() -> Polytropic.pressure(1e5, 0, 1.3)).hasMessageContaining("0.0");
  }

  @Property(tries = 300, seed = "15")
  void whateverIsAcceptedGivesFiniteNumbers(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.3) double bore,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.3) double seal,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double gap,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.001) double steel,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double travel,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1.666666) double exponent) {
    AirSpring spring;
    try {
      spring = new OpenBath(bore, seal, gap, steel, travel, TrappedAir.bledAt(SEA)).spring();
    } catch (IllegalArgumentException refused) {
      return;
    }
    assertThat(spring.force(travel, exponent)).isFinite();
    assertThat(spring.energy(0, travel, exponent)).isFinite();
    assertThat(spring.rate(travel, exponent)).isFinite();
  }
}
