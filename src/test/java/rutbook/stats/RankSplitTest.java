package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RankSplitTest {

  private static double[] numbers(double... numbers) {
    return numbers;
  }

  /**
   * Permeability of membranes, Hollander and Wolfe (1973), as on the help page of R's wilcox.test:
   * one-sided 0.1272; two-sided by scipy 1.17.1, mannwhitneyu(method="exact"): 0.2544122544.
   */
  @Test
  void withoutTiesItIsTheExactRankSumTest() {
    RankSplit split =
        RankSplit.of(
            numbers(0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46),
            numbers(1.15, 0.88, 0.90, 0.74, 1.21));
    assertThat(split.exact()).isTrue();
    assertThat(split.chance()).isCloseTo(0.2544122544122544, within(1e-12));
  }

  /** Counted by itertools.combinations over scipy 1.17.1's rankdata: 9 of 3003, 7 of 126. */
  @Test
  void tiesAreCountedOutAtTheirMidRanks() {
    assertThat(RankSplit.of(numbers(5, 5, 5, 5, 5, 5, 5, 5), numbers(3, 3, 3, 4, 5, 3)).chance())
        .isCloseTo(9.0 / 3003, within(1e-12));
    assertThat(RankSplit.of(numbers(15, 14, 15, 12, 15), numbers(11, 12, 11, 14)).chance())
        .isCloseTo(7.0 / 126, within(1e-12));
    assertThat(RankSplit.of(numbers(1, 1, 1), numbers(1, 1, 2)).chance()).isEqualTo(1);
  }

  @Test
  void threeAgainstThreeNeverProveAnything() {
    assertThat(RankSplit.of(numbers(1, 2, 3), numbers(4, 5, 6)).chance()).isEqualTo(0.1);
    assertThat(RankSplit.of(numbers(1), numbers(2)).chance()).isEqualTo(1);
    assertThat(RankSplit.of(numbers(4, 4), numbers(4)).chance()).isEqualTo(1);
  }

  @Property(tries = 100, seed = "61")
  void itDoesNotMatterWhichSetComesFirst(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 7) int one,
      @ForAll @IntRange(min = 1, max = 7) int other) {
    Random random = new Random(seed);
    double[] first = random.ints(one, 0, 5).asDoubleStream().toArray();
    double[] second = random.ints(other, 0, 5).asDoubleStream().toArray();
    RankSplit split = RankSplit.of(first, second);
    assertThat(split.chance()).isBetween(0.0, 1.0).isPositive();
    assertThat(RankSplit.of(second, first).chance()).isCloseTo(split.chance(), within(1e-12));
  }

  @Test
  void whatCannotBeCountedOutIsTakenByTheNormalDistribution() {
    Random random = new Random(3);
    double[] first = random.doubles(30).toArray();
    double[] second = random.doubles(30).map(it -> it + 0.2).toArray();
    RankSplit split = RankSplit.of(first, second);
    assertThat(split.exact()).isFalse();
    assertThat(split.chance()).isEqualTo(MannWhitney.of(first, second).chance());
  }
}
