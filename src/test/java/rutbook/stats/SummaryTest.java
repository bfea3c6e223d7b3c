package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rutbook.stats.TwoMeans.Sample;

class SummaryTest {

  @Test
  void oneNumberHasNoScatter() {
    assertThat(Summary.of(7)).isEqualTo(new Summary(1, 7, OptionalDouble.empty(), 7, 0, 7, 7));
    assertThat(Summary.quantile(0.3, 7)).isEqualTo(7);
    assertThat(Summary.lagOne(7)).isEmpty();
  }

  @Test
  void noNumbersHaveNoSummary() {
    assertThatThrownBy(Summary::of).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Summary.quantile(0.5)).hasMessageContaining("0.0");
    assertThatThrownBy(Summary::lagOne).hasMessageContaining("0.0");
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    assertThatThrownBy(() -> Summary.of(1, Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> Summary.of(1, Double.POSITIVE_INFINITY))
        .hasMessageContaining("Infinity");
    assertThatThrownBy(() -> Summary.quantile(1.5, 1, 2)).hasMessageContaining("1.5");
  }

  @Test
  void equalNumbersHaveNoScatterAndNoLag() {
    Summary summary = Summary.of(3, 3, 3);
    assertThat(summary.sd()).hasValue(0);
    assertThat(summary.mad()).isZero();
    assertThat(Summary.lagOne(3, 3, 3)).isEmpty();
    assertThat(TwoMeans.welch(Sample.of(3, 3), Sample.of(4, 4))).isEmpty();
    assertThat(TwoMeans.pooled(Sample.of(3, 3), Sample.of(4, 4))).isEmpty();
  }

  @Test
  void theOrderOfNumbersMeansNothing() {
    assertThat(Summary.of(9, 1, 5, 2).median()).isEqualTo(3.5);
    assertThat(Summary.quantile(0, 9, 1, 5)).isEqualTo(1);
    assertThat(Summary.quantile(1, 5, 9, 1)).isEqualTo(9);
  }

  @Test
  void aNumberFarOffMovesTheMeanAndNotTheMedian() {
    Summary summary = Summary.of(1, 2, 3, 4, 1000);
    assertThat(summary.median()).isEqualTo(3);
    assertThat(summary.mad()).isEqualTo(1);
    assertThat(summary.mean()).isEqualTo(202);
  }

  @Test
  void rankingsWithTiesHaveNoCountedOutChance() {
    MannWhitney ties = MannWhitney.of(new double[] {1, 2, 3}, new double[] {2, 4});
    assertThat(ties.firstWins()).isEqualTo(1.5);
    assertThat(ties.secondWins()).isEqualTo(4.5);
    assertThat(ties.exactChance()).isEmpty();
    assertThat(ties.chance()).isBetween(0.0, 1.0);
    assertThat(MannWhitney.of(new double[] {2, 2}, new double[] {2}).chance()).isEqualTo(1);
    assertThatThrownBy(() -> MannWhitney.of(new double[0], new double[] {1}))
        .hasMessageContaining("0.0");
  }

  @Test
  void columnsThatDependOnEachOtherAreRefused() {
    double[][] x = {{1, 2}, {2, 4}, {3, 6}, {4, 8}, {5, 10}};
    assertThatThrownBy(() -> LeastSquares.fit(x, new double[] {1, 2, 3, 4, 5}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LeastSquares.fit(new double[][] {{1}, {2}}, new double[] {1, 2}))
        .hasMessageContaining("was 2");
    assertThatThrownBy(() -> LeastSquares.fit(new double[0][], new double[0]))
        .hasMessageContaining("was 0");
    double[][] bad = {{1}, {2}, {Double.NaN}};
    assertThatThrownBy(() -> LeastSquares.fit(bad, new double[] {1, 2, 3}))
        .hasMessageContaining("NaN");
  }

  @Test
  void aFlatLineExplainsNothing() {
    LeastSquares flat =
        LeastSquares.fit(new double[][] {{1}, {2}, {3}, {4}}, new double[] {5, 5, 5, 5});
    assertThat(flat.explained()).isEmpty();
    assertThat(flat.f()).isEmpty();
  }

  /** By scipy 1.17.1, mannwhitneyu(method="asymptotic", use_continuity=False). */
  @Test
  void tiesNarrowTheScatterOfRanks() {
    MannWhitney ties =
        MannWhitney.of(new double[] {1, 2, 2, 3, 5, 5, 5, 8}, new double[] {2, 4, 5, 6, 7, 9});
    assertThat(ties.firstWins()).isEqualTo(14.5);
    assertThat(ties.chance()).isCloseTo(0.21285251692775087, within(1e-12));
    MannWhitney none =
        MannWhitney.of(new double[] {0.3, 1.2, 2.7}, new double[] {4.1, 5.2, 6.3, 7.4});
    assertThat(none.chance()).isCloseTo(0.03389485352468927, within(1e-12));
    assertThat(none.exactChance().orElseThrow()).isCloseTo(2.0 / 35, within(1e-12));
  }

  /** Fifty against fifty is counted out, fifty-one is not. */
  @Test
  void moreThanFiftyAreNotCountedOut() {
    double[] fifty = java.util.stream.IntStream.range(0, 50).asDoubleStream().toArray();
    double[] more = java.util.stream.IntStream.range(0, 51).asDoubleStream().toArray();
    double[] between = java.util.Arrays.stream(fifty).map(each -> each + 0.5).toArray();
    assertThat(MannWhitney.of(fifty, between).exactChance()).isPresent();
    assertThat(MannWhitney.of(more, between).exactChance()).isEmpty();
    assertThat(MannWhitney.of(between, more).exactChance()).isEmpty();
  }

  /** By scipy 1.17.1, t.ppf(0.975, df). */
  @Test
  void studentsNinetyFivePerCentPoint() {
    assertThat(new StudentT(1).of95()).isCloseTo(12.706204736174694, within(1e-9));
    assertThat(new StudentT(2.5).of95()).isCloseTo(3.5746548420036817, within(1e-11));
    assertThat(new StudentT(1e6).of95()).isCloseTo(1.959966356814107, within(1e-9));
  }

  /** A plain sum of these is 0, and one by one it is 2. */
  @Test
  void aSumKeepsWhatAGreatNumberSwallows() {
    Sum sum = new Sum();
    for (double each : new double[] {1, 1e100, 1, -1e100}) {
      sum.add(each);
    }
    assertThat(sum.value()).isEqualTo(2);
    assertThat(Summary.mean(new double[] {1e9, 1e-7, -1e9, 1e-7})).isCloseTo(5e-8, within(1e-20));
  }

  /** The mirror image of scipy 1.17.1, truncnorm.stats(a, inf). */
  @Test
  void whatIsKnownToBeAtMost() {
    TruncatedNormal half = TruncatedNormal.atMost(0, 1, -0.5);
    assertThat(half.mean()).isCloseTo(-1.1410777703680648, within(1e-12));
    assertThat(half.variance()).isCloseTo(0.2684804071558784, within(1e-12));
    TruncatedNormal two = TruncatedNormal.atMost(10, 3, 4);
    assertThat(two.mean()).isCloseTo(10 - 3 * 2.37321553282284, within(1e-11));
    assertThat(two.variance()).isCloseTo(9 * 0.11427910041408329, within(1e-11));
  }

  @Test
  void sizesThatDoNotFitAreRefused() {
    double[][] two = {{1, 0}, {0, 1}};
    assertThatThrownBy(() -> new Gaussian(new double[] {0, 0, 0}, two))
        .hasMessageContaining("rows of the covariance must be 3, was 2");
    assertThatThrownBy(() -> new Gaussian(new double[] {0, 0}, new double[][] {{1, 0}, {0}}))
        .hasMessageContaining("columns of the covariance must be 2, was 1");
    assertThatThrownBy(() -> Gaussian.independent(new double[] {0, 0}, new double[] {1}))
        .hasMessageContaining("number of sds");
    Gaussian plane = new Gaussian(new double[] {1, 2}, two);
    assertThat(plane.along(new double[] {3, 4})).isEqualTo(new Gaussian.Estimate(11, 5));
    assertThatThrownBy(() -> plane.along(new double[] {1})).hasMessageContaining("parts");
    assertThatThrownBy(() -> plane.after(two, new double[] {1}, 1))
        .hasMessageContaining("number of measurements");
    assertThatThrownBy(() -> plane.after(new double[][] {{1}}, new double[] {1}, 1))
        .hasMessageContaining("number of parts");
  }
}
