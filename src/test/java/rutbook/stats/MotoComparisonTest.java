package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import rutbook.stats.MotoScatter.UnchangedPair;
import rutbook.stats.TwoMeans.Sample;

class MotoComparisonTest {

  private static List<double[]> motos(Random random, int count, int laps, double mean, double tau) {
    List<double[]> motos = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double of = mean + tau * random.nextGaussian();
      motos.add(random.doubles(laps).map(u -> of + random.nextGaussian()).toArray());
    }
    return motos;
  }

  private static double[] all(List<double[]> motos) {
    return motos.stream().flatMapToDouble(java.util.Arrays::stream).toArray();
  }

  @Property(tries = 100, seed = "81")
  void withoutMotoScatterItIsWelchsComparisonOfLaps(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int count) {
    Random random = new Random(seed);
    List<double[]> first = motos(random, count, 5, 100, 0.4);
    List<double[]> second = motos(random, 2, 7, 101, 0.4);
    second.add(new double[] {100.5, 102.25});
    Difference motos =
        MotoComparison.of(first, second, MotoScatter.NONE).orElseThrow().difference();
    Difference welch = TwoMeans.welch(Sample.of(all(first)), Sample.of(all(second))).orElseThrow();
    assertThat(motos.difference()).isCloseTo(welch.difference(), within(1e-9));
    assertThat(motos.standardError()).isCloseTo(welch.standardError(), within(1e-9));
    assertThat(motos.degreesOfFreedom())
        .isCloseTo(welch.degreesOfFreedom(), within(1e-6 * welch.degreesOfFreedom()));
    assertThat(motos.chance()).isCloseTo(welch.chance(), within(1e-7));
  }

  @Test
  void theVarianceIsThatOfMotosAndOfLapsWithinThem() {
    Random random = new Random(5);
    List<double[]> first = motos(random, 2, 8, 100, 0.6);
    List<double[]> second = motos(random, 3, 8, 100, 0.6);
    MotoComparison comparison =
        MotoComparison.of(first, second, new MotoScatter(0.6, 20)).orElseThrow();
    MotoSide a = new MotoSide(first, 0.6);
    MotoSide b = new MotoSide(second, 0.6);
    double wanted = 0.36 * (1.0 / 2 + 1.0 / 3) + a.lapVariance() / 16 + b.lapVariance() / 24;
    assertThat(comparison.difference().standardError()).isCloseTo(Math.sqrt(wanted), within(1e-12));
  }

  /**
   * Worked with whole matrices: V = s² I + τ² within a moto, s² so that rᵀV⁻¹r is one less than the
   * number of laps, the mean and its variance from 1ᵀV⁻¹, slopes by differences (Python 3.11).
   */
  @Test
  void motosOfUnequalLengthAreWeighedAsGeneralisedLeastSquaresDoes() {
    List<double[]> first =
        List.of(
            new double[] {100, 101, 99, 100.5},
            new double[] {100.9, 101.4, 100.5},
            new double[] {99.2, 100.2});
    List<double[]> second =
        List.of(new double[] {102.6, 101.6, 103.0}, new double[] {101.5, 102, 101, 102.4, 101.9});
    MotoSide side = new MotoSide(first, 0.7);
    assertThat(side.lapVariance()).isCloseTo(0.453326355880889, within(1e-9));
    assertThat(side.mean()).isCloseTo(100.2697790631648, within(1e-9));
    assertThat(side.variance()).isCloseTo(0.21679668421725795, within(1e-9));
    assertThat(side.shareOfLaps()).isCloseTo(0.0526551358, within(1e-8));
    assertThat(side.shareOfMotos()).isCloseTo(0.1641415484, within(1e-8));
    MotoComparison comparison =
        MotoComparison.of(first, second, new MotoScatter(0.7, 9)).orElseThrow();
    assertThat(comparison.difference().difference()).isCloseTo(-1.7981395720988, within(1e-9));
    assertThat(comparison.difference().standardError()).isCloseTo(0.7106095540588, within(1e-9));
    assertThat(comparison.difference().degreesOfFreedom()).isCloseTo(13.2532069666, within(1e-6));
    assertThat(comparison.lapSd()).isCloseTo(0.62793799845, within(1e-9));
  }

  /** Means further apart than the motos' scatter explains leave the laps what is over. */
  @Test
  void whereMotosDifferByNoMoreThanTheirScatterLapsHaveNone() {
    List<double[]> one = List.of(new double[] {100}, new double[] {101});
    assertThat(new MotoSide(one, 0).lapVariance()).isCloseTo(0.5, within(1e-12));
    assertThat(new MotoSide(one, 10).lapVariance()).isZero();
    assertThat(new MotoSide(one, 10).variance()).isCloseTo(50, within(1e-9));
  }

  /** Two motos against two, with nothing changed: seeded, in the true world of τ = 0.65 s. */
  @org.junit.jupiter.api.Tag("heavy")
  @Test
  void aDifferenceWhereThereIsNoneIsCalledSeldomWhileWelchCallsItOften() {
    Random random = new Random(2024);
    int tries = 4000;
    int called = 0;
    int calledByWelch = 0;
    for (int i = 0; i < tries; i++) {
      List<double[]> first = motos(random, 2, 8, 100, 0.65);
      List<double[]> second = motos(random, 2, 8, 100, 0.65);
      called += beyond(first, second, MotoScatter.usual(1)) ? 1 : 0;
      calledByWelch += beyond(first, second, MotoScatter.NONE) ? 1 : 0;
    }
    assertThat(called / (double) tries).isLessThan(0.06);
    assertThat(calledByWelch / (double) tries).isGreaterThan(0.25);
  }

  private static boolean beyond(List<double[]> first, List<double[]> second, MotoScatter scatter) {
    return MotoComparison.of(first, second, scatter).orElseThrow().difference().beyondNoise();
  }

  @Test
  void aGreatDifferenceIsSettledAndASmallOneSaysHowManyMotosItNeeds() {
    List<double[]> first =
        List.of(new double[] {100, 101, 99, 100.5}, new double[] {100, 100.4, 99.5});
    List<double[]> far = List.of(new double[] {110, 111, 109}, new double[] {110, 110.5, 109.6});
    MotoComparison great = MotoComparison.of(first, far, MotoScatter.usual(0.7)).orElseThrow();
    assertThat(great.difference().beyondNoise()).isTrue();
    assertThat(great.motosToSettle()).hasValue(2);
    List<double[]> near =
        List.of(new double[] {100.6, 101.6, 99.6, 101.1}, new double[] {100.5, 101, 100});
    MotoComparison small = MotoComparison.of(first, near, MotoScatter.usual(0.7)).orElseThrow();
    assertThat(small.difference().beyondNoise()).isFalse();
    assertThat(small.motosToSettle().orElseThrow()).isBetween(3, 12);
    MotoComparison none = MotoComparison.of(first, first, MotoScatter.usual(0.7)).orElseThrow();
    assertThat(none.difference().difference()).isZero();
    assertThat(none.motosToSettle()).isEmpty();
  }

  @Test
  void tooFewLapsOrNoScatterAtAllSayNothing() {
    List<double[]> one = List.of(new double[] {100});
    List<double[]> two = List.of(new double[] {100, 101});
    assertThat(MotoComparison.of(one, two, MotoScatter.usual(1))).isEmpty();
    assertThat(MotoComparison.of(List.of(), two, MotoScatter.usual(1))).isEmpty();
    List<double[]> equal = List.of(new double[] {100, 100});
    assertThat(MotoComparison.of(equal, equal, MotoScatter.NONE)).isEmpty();
    assertThat(MotoComparison.of(equal, equal, new MotoScatter(0.5, 9))).isPresent();
    assertThatThrownBy(
            () -> MotoComparison.of(List.of(new double[] {Double.NaN, 1}), two, MotoScatter.NONE))
        .hasMessageContaining("NaN");
  }

  @Test
  void unchangedPairsTeachTheScatter() {
    Random random = new Random(7);
    List<UnchangedPair> pairs = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      double[] a = motos(random, 1, 8, 100, 1.5).get(0);
      double[] b = motos(random, 1, 6, 100, 1.5).get(0);
      pairs.add(new UnchangedPair(Summary.mean(a), 8, Summary.mean(b), 6));
    }
    assertThat(MotoScatter.from(pairs, 1).sd()).isCloseTo(1.5, within(0.1));
    assertThat(MotoScatter.usual(2).sd()).isCloseTo(1.3, within(1e-12));
    assertThat(MotoScatter.usual(0).sd()).isZero();
    List<UnchangedPair> same =
        java.util.Collections.nCopies(1000, new UnchangedPair(100, 8, 100, 8));
    assertThat(MotoScatter.from(same, 1).sd()).as("motos do differ").isEqualTo(0.2);
  }

  @Property(tries = 300, seed = "82")
  void whateverIsAcceptedGivesFiniteNumbers(@ForAll long seed) {
    Random random = new Random(seed);
    double scale = Math.pow(10, random.nextInt(8) - 3);
    List<double[]> first = scaled(random, scale);
    List<double[]> second = scaled(random, scale);
    MotoComparison.of(first, second, new MotoScatter(scale * random.nextInt(3), 3))
        .ifPresent(
            c -> {
              assertThat(c.difference().standardError()).isFinite().isPositive();
              assertThat(c.difference().chance()).isBetween(0.0, 1.0);
              assertThat(c.difference().low()).isFinite();
              assertThat(c.difference().high()).isFinite();
              assertThat(c.difference().degreesOfFreedom()).isFinite().isPositive();
              assertThat(c.lapSd()).isFinite();
            });
  }

  private static List<double[]> scaled(Random random, double scale) {
    List<double[]> motos = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      motos.add(random.ints(1 + random.nextInt(4), 0, 4).mapToDouble(v -> v * scale).toArray());
    }
    return motos;
  }
}
