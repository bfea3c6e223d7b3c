package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class NormalTest {

  @Property(tries = 1000, seed = "71")
  void theChanceIsThatOfAnotherLibrary(
      @ForAll @Scale(6) @DoubleRange(min = -35, max = 8) double z) {
    double other = Erf.erfc(-z / Math.sqrt(2)) / 2;
    assertThat(Normal.cumulative(z)).isCloseTo(other, within(1e-12 * other));
    assertThat(Normal.logCumulative(z)).isCloseTo(Math.log(other), within(1e-11));
  }

  @Test
  void theFormsMeetWithoutAStep() {
    for (double z : new double[] {-2.5, 2.5, -200}) {
      assertThat(Normal.cumulative(z - 1e-9)).isLessThanOrEqualTo(Normal.cumulative(z + 1e-9));
      assertThat(Normal.hazard(z - 1e-9)).isCloseTo(Normal.hazard(z + 1e-9), within(1e-8));
      double below = TruncatedNormal.share(z - 1e-9);
      assertThat(TruncatedNormal.share(z + 1e-9)).isCloseTo(below, within(1e-6 * below));
    }
  }

  @Test
  void farTailsStayFinite() {
    for (double z : new double[] {-1e12, -1e6, -300, 300, 1e6, 1e12}) {
      assertThat(Normal.logCumulative(z)).isFinite();
      assertThat(Normal.hazard(z)).isFinite().isGreaterThanOrEqualTo(0);
      assertThat(TruncatedNormal.weight(z)).isBetween(0.0, 1.0);
      assertThat(TruncatedNormal.share(z)).isBetween(0.0, 1.0);
    }
  }

  @Tag("heavy")
  @Property(tries = 300, seed = "72")
  void theMomentsAreTheIntegrals(
      @ForAll @Scale(6) @DoubleRange(min = -3, max = 3) double mean,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 3) double sd,
      @ForAll @Scale(6) @DoubleRange(min = -4, max = 6) double bound) {
    TruncatedNormal cut = TruncatedNormal.atMost(mean, sd, bound);
    double r = (bound - mean) / sd;
    double mass = integral(y -> Math.exp(r * y - y * y / 2));
    double first = integral(y -> y * Math.exp(r * y - y * y / 2)) / mass;
    double second = integral(y -> y * y * Math.exp(r * y - y * y / 2)) / mass;
    assertThat(cut.mean()).isCloseTo(bound - sd * first, within(1e-8 * (1 + Math.abs(r)) * sd));
    assertThat(cut.variance())
        .isCloseTo(sd * sd * (second - first * first), within(1e-7 * sd * sd));
    assertThat(cut.mean()).isLessThan(bound);
    assertThat(cut.variance()).isBetween(0.0, sd * sd);
  }

  /** Distance below the bound in sds, so that the density is a plain product. */
  private static double integral(org.hipparchus.analysis.UnivariateFunction density) {
    IterativeLegendreGaussIntegrator integrator =
        new IterativeLegendreGaussIntegrator(32, 1e-12, 1e-14);
    double sum = 0;
    for (int i = 0; i < 12; i++) {
      sum += integrator.integrate(100_000, density, 3 * i, 3 * i + 3);
    }
    return sum;
  }

  @Test
  void aBoundFarAwaySaysNothingAndOneFarInsideSaysAll() {
    TruncatedNormal free = TruncatedNormal.atMost(1, 2, 1e6);
    assertThat(free.mean()).isCloseTo(1, within(1e-9));
    assertThat(free.variance()).isCloseTo(4, within(1e-12));
    TruncatedNormal tight = TruncatedNormal.atMost(1, 2, -1e6);
    assertThat(tight.mean()).isCloseTo(-1e6, within(1e-4));
    assertThat(tight.variance()).isPositive().isLessThan(1e-10);
    assertThatThrownBy(() -> TruncatedNormal.atMost(0, 0, 1)).hasMessageContaining("0.0");
  }

  @Property(tries = 500, seed = "73")
  void theQuantileIsTheInverseOfTheChance(
      @ForAll @Scale(9) @DoubleRange(min = 1e-9, max = 0.999999) double share) {
    assertThat(Normal.cumulative(Normal.quantile(share))).isCloseTo(share, within(1e-12 * share));
  }

  /** The 90 % point of the normal distribution is 1.2815515655446 (any table). */
  @Test
  void anEightyPerCentIntervalIsOneAndAQuarterSdsEitherWay() {
    Gaussian.Estimate estimate = new Gaussian.Estimate(3, 2);
    assertThat(estimate.quantile(0.9)).isCloseTo(3 + 2 * 1.2815515655446, within(1e-12));
    assertThat(estimate.quantile(0.1)).isCloseTo(3 - 2 * 1.2815515655446, within(1e-12));
    assertThatThrownBy(() -> estimate.quantile(0)).hasMessageContaining("0.0");
  }
}
