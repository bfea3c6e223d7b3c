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
import rutbook.bench.SideBySide;

class ForkCurveTest {

  private static final double TRAVEL = 0.3;

  private static ForkLeg leg(double rate, double gap) {
    OpenBath bath =
        new OpenBath(0.048, 0.048, gap, 0, TRAVEL, TrappedAir.bledAt(Atmosphere.SEA_LEVEL));
    return new ForkLeg(rate, 0.005, Optional.of(bath.spring()));
  }

  private static ForkCurve fork(double gap) {
    return new ForkCurve(
        List.of(leg(4400, gap), leg(4400, gap)), Optional.of(new BumpStop(0.28, 2e5)), TRAVEL);
  }

  @Test
  void theTotalIsTheSumOfLegsThatMayDiffer() {
    ForkCurve split =
        new ForkCurve(
            List.of(leg(9000, 0.12), new ForkLeg(0, 0, Optional.empty())),
            Optional.empty(),
            TRAVEL);
    double air = leg(9000, 0.12).air().orElseThrow().force(0.2, 1.3);
    assertThat(split.force(0.2, 1.3)).isCloseTo(9000 * 0.205 + air, within(1e-9));
    assertThat(split.coilForce(0.2)).isCloseTo(9000 * 0.205, within(1e-9));
    assertThat(split.airForce(0.2, 1.3)).isCloseTo(air, within(1e-9));
  }

  @Property(tries = 60, seed = "21")
  void theEnergyIsTheIntegralOfTheForce(
      @ForAll @Scale(6) @DoubleRange(min = 0.06, max = 0.15) double gap,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.27) double from,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1.6) double exponent) {
    ForkCurve fork = fork(gap);
    IterativeLegendreGaussIntegrator integrator =
        new IterativeLegendreGaussIntegrator(16, 1e-11, 1e-12);
    double toStop = integrator.integrate(10_000, x -> fork.force(x, exponent), from, 0.28);
    double beyond = integrator.integrate(10_000, x -> fork.force(x, exponent), 0.28, TRAVEL);
    assertThat(fork.reserve(from, exponent)).isCloseTo(toStop, within(1e-7));
    assertThat(fork.energy(from, TRAVEL, exponent)).isCloseTo(toStop + beyond, within(1e-7));
  }

  @Property(tries = 60, seed = "22")
  void theReserveFallsWithTheStrokeAlreadyUsed(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.29) double from) {
    assertThat(fork(0.1).reserve(from, 1.3))
        .isGreaterThanOrEqualTo(fork(0.1).reserve(from + 0.01, 1.3));
  }

  @Test
  void noReserveIsLeftOnTheBumpStop() {
    assertThat(fork(0.1).reserve(0.28, 1.3)).isZero();
    assertThat(fork(0.1).reserve(TRAVEL, 1.3)).isZero();
    assertThat(fork(0.1).end()).isEqualTo(0.28);
  }

  @Test
  void theDropHeightIsWhatTheReserveCatches() {
    ForkCurve fork = fork(0.1);
    double rake = Math.toRadians(27);
    double height = fork.dropHeight(0.07, 1.4, 90, rake);
    double fallen = 90 * 9.80665 * (height + (0.28 - 0.07) * Math.cos(rake));
    assertThat(fallen).isCloseTo(fork.reserve(0.07, 1.4), within(1e-9));
    assertThat(fork.dropHeight(0.07, 1.4, 1000, rake)).as("a mass too great").isNegative();
  }

  @Test
  void theStrokeUnderALoadCarriesIt() {
    ForkCurve fork = fork(0.1);
    double stroke = fork.strokeUnder(900, Polytropic.SLOW).orElseThrow();
    assertThat(fork.force(stroke, Polytropic.SLOW)).isCloseTo(900, within(1e-4));
    assertThat(fork.strokeUnder(10, Polytropic.SLOW)).as("less than the preload").isEmpty();
    assertThat(fork.strokeUnder(1e6, Polytropic.SLOW)).as("more than it can carry").isEmpty();
  }

  @Test
  void theBandRunsFromSlowToFastWithTheLineBetween() {
    List<ForkPoint> points = fork(0.1).points(61);
    assertThat(points).hasSize(61);
    assertThat(points.get(0).stroke()).isZero();
    assertThat(points.get(60).stroke()).isEqualTo(TRAVEL);
    for (ForkPoint point : points.subList(1, 61)) {
      assertThat(point.slow()).isLessThan(point.line());
      assertThat(point.line()).isLessThan(point.fast());
      assertThat(point.coil() + point.air()).isLessThanOrEqualTo(point.line());
    }
  }

  /** 5 mL in a leg: under 1 % of the total energy and 3 to 4.5 % of the end air force. */
  @Test
  void fiveMillilitresMoveTheEndAirForceFarMoreThanTheEnergy() {
    double level = OilLevel.level(5e-6, 0.048, 0);
    ForkChange change = ForkChange.between(fork(0.1), fork(0.1 - level), 0);
    assertThat(change.endAirForce().getAsDouble()).isBetween(0.03, 0.045);
    assertThat(change.reserve().getAsDouble()).isBetween(0.0, 0.01);
    assertThat(change.middleAirForce().getAsDouble()).isBetween(0.01, 0.02);
    assertThat(change.endForce().getAsDouble()).isBetween(0.0, 0.02);
  }

  @Test
  void aShareOfNothingIsEmpty() {
    ForkCurve coils =
        new ForkCurve(List.of(new ForkLeg(9000, 0, Optional.empty())), Optional.empty(), TRAVEL);
    ForkChange change = ForkChange.between(coils, coils, TRAVEL);
    assertThat(change.endAirForce()).isEmpty();
    assertThat(change.reserve()).isEmpty();
    assertThat(change.endForce()).hasValue(0);
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    assertThatThrownBy(() -> fork(0.1).force(0.301, 1.3)).hasMessageContaining("0.301");
    assertThatThrownBy(() -> new ForkCurve(List.of(), Optional.empty(), TRAVEL))
        .hasMessageContaining("0.0");
    assertThatThrownBy(() -> new ForkCurve(List.of(leg(4400, 0.1)), Optional.empty(), 0.31))
        .hasMessageContaining("0.3");
    assertThatThrownBy(() -> fork(0.1).points(1)).hasMessageContaining("1");
  }

  /**
   * Four fills of a fork, each with its band and reserves, cost what their powers cost: four a
   * point and leg. In milliseconds: {@code rutbook.bench.FiguresBench}.
   */
  @Test
  void aFullSetOfCurvesCostsAFewTimesItsPowers() {
    double ratio = SideBySide.ratio(60, ForkCurveTest::fourFills, ForkCurveTest::powers);
    assertThat(ratio).as("against 3872 powers").isLessThan(200);
  }

  private static double fourFills() {
    double sum = 0;
    for (double gap : new double[] {0.13, 0.12, 0.11, 0.10}) {
      ForkCurve fork = fork(gap);
      sum += fork.points(121).get(120).line() + fork.reserve(0.07, 1.3);
      sum += fork.dropHeight(0.07, 1.4, 90, 0.47);
    }
    return sum;
  }

  private static double powers() {
    double sum = 0;
    for (int i = 0; i < 4 * 121 * 4 * 2; i++) {
      sum += Math.pow(1 + i * 1e-3, 1.3);
    }
    return sum;
  }

  @Property(tries = 300, seed = "23")
  void whateverIsAcceptedGivesFiniteNumbers(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1e6) double rate,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double preload,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double travel,
      @ForAll @Scale(6) @DoubleRange(min = 10, max = 1000) double mass) {
    ForkCurve fork =
        new ForkCurve(
            List.of(new ForkLeg(rate, preload, Optional.empty())),
            Optional.of(new BumpStop(travel / 2, 1e7)),
            travel);
    for (ForkPoint point : fork.points(9)) {
      assertThat(point.fast()).isFinite().isGreaterThanOrEqualTo(0);
      assertThat(fork.dropHeight(point.stroke(), 1.4, mass, 1)).isFinite();
    }
    fork.strokeUnder(mass * 9.81, 1.3).ifPresent(x -> assertThat(x).isBetween(0.0, travel));
  }
}
