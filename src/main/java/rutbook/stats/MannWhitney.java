package rutbook.stats;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.stat.inference.MannWhitneyUTest;

/**
 * Whether one set of numbers tends to be greater than another, by their ranks alone (Mann and
 * Whitney 1947): for ratings, whose steps are not equal.
 *
 * @param firstWins pairs in which the first set's number is the greater, ties counting half: U of
 *     the first
 * @param secondWins the other pairs: U of the second
 * @param chance of a split at least this uneven if there were no difference, by the normal
 *     distribution without continuity correction
 * @param exactChance the same counted out; empty with ties or with more than fifty in a set
 */
public record MannWhitney(
    double firstWins, double secondWins, double chance, OptionalDouble exactChance) {

  private static final int COUNTED_OUT = 50;

  /** The comparison of two sets of at least one number each; all equal is a chance of one. */
  public static MannWhitney of(double[] first, double[] second) {
    Given.within("numbers of the first set", first.length, 1, 10_000);
    Given.within("numbers of the second set", second.length, 1, 10_000);
    Given.numbers("value", first);
    Given.numbers("value", second);
    double wins = wins(first, second);
    double pairs = (double) first.length * second.length;
    double[] all = new double[first.length + second.length];
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    Arrays.sort(all);
    if (all[0] == all[all.length - 1]) {
      return new MannWhitney(wins, pairs - wins, 1, OptionalDouble.empty());
    }
    boolean countable = !tied(all) && first.length <= COUNTED_OUT && second.length <= COUNTED_OUT;
    return new MannWhitney(
        wins,
        pairs - wins,
        byNormal(wins - pairs / 2, pairs, all),
        countable
            ? OptionalDouble.of(new MannWhitneyUTest().mannWhitneyUTest(first, second, true))
            : OptionalDouble.empty());
  }

  /** {@code σ² = n m/12 ((N + 1) − Σ (t³ − t)/(N (N − 1)))}, t the size of each tie. */
  private static double byNormal(double off, double pairs, double[] sorted) {
    double n = sorted.length;
    double ties = 0;
    int from = 0;
    for (int i = 1; i <= sorted.length; i++) {
      if (i == sorted.length || sorted[i] != sorted[from]) {
        double size = i - from;
        ties += size * size * size - size;
        from = i;
      }
    }
    double variance = pairs / 12 * ((n + 1) - ties / (n * (n - 1)));
    return Math.min(1, 2 * Normal.cumulative(-Math.abs(off) / Math.sqrt(variance)));
  }

  /**
   * Pairs in which the first set's number is the greater, ties half, by one pass over both sorted.
   */
  private static double wins(double[] first, double[] second) {
    double[] a = first.clone();
    double[] b = second.clone();
    Arrays.sort(a);
    Arrays.sort(b);
    double wins = 0;
    int below = 0;
    int notAbove = 0;
    for (double each : a) {
      while (below < b.length && b[below] < each) {
        below++;
      }
      notAbove = Math.max(notAbove, below);
      while (notAbove < b.length && b[notAbove] <= each) {
        notAbove++;
      }
      wins += below + (notAbove - below) / 2.0;
    }
    return wins;
  }

  private static boolean tied(double[] sorted) {
    for (int i = 1; i < sorted.length; i++) {
      if (sorted[i] == sorted[i - 1]) {
        return true;
      }
    }
    return false;
  }
}
