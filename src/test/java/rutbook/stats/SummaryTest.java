package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
}
