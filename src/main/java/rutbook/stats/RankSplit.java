package rutbook.stats;

import java.util.Arrays;

/**
 * How likely a split of ranks at least this uneven would be if the two sets were one: the
 * permutation test of the rank sum, ties at their mid-rank, counted out exactly where that is at
 * most {@value #MOST_SPLITS} splits and by the normal distribution (see {@link MannWhitney})
 * beyond.
 *
 * @param chance 0 to 1, two-sided: splits whose rank sum is at least as far from its mean
 * @param exact whether it was counted out
 */
public record RankSplit(double chance, boolean exact) {
  /** More splits than this are not counted out. */
  public static final int MOST_SPLITS = 20_000;

  private static final double ALIKE = 1e-9;

  /** The split of two sets of one to 10,000 numbers each; all equal is a chance of one. */
  public static RankSplit of(double[] first, double[] second) {
    MannWhitney byNormal = MannWhitney.of(first, second);
    if (splits(first.length + second.length, Math.min(first.length, second.length)) > MOST_SPLITS) {
      return new RankSplit(byNormal.chance(), false);
    }
    boolean firstIsSmaller = first.length <= second.length;
    double[] smaller = firstIsSmaller ? first : second;
    double[] ranks = ranks(smaller, firstIsSmaller ? second : first);
    double mean = smaller.length * (ranks.length + 1) / 2.0;
    double seen = 0;
    for (int i = 0; i < smaller.length; i++) {
      seen += ranks[i];
    }
    Count count = new Count(ranks, Math.abs(seen - mean) - ALIKE, mean);
    count.from(0, smaller.length, 0);
    return new RankSplit((double) count.far / count.all, true);
  }

  /** Mid-ranks of the numbers of one set, then of the other. */
  private static double[] ranks(double[] one, double[] other) {
    double[] all = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, all, one.length, other.length);
    double[] ranks = new double[all.length];
    for (int i = 0; i < all.length; i++) {
      double below = 0;
      double alike = 0;
      for (double each : all) {
        below += each < all[i] ? 1 : 0;
        alike += each == all[i] ? 1 : 0;
      }
      ranks[i] = below + (alike + 1) / 2;
    }
    return ranks;
  }

  /** Number of ways to choose, or more than the most when it is beyond that. */
  private static double splits(int all, int chosen) {
    double ways = 1;
    for (int i = 1; i <= chosen && ways <= MOST_SPLITS; i++) {
      ways = ways * (all - chosen + i) / i;
    }
    return ways;
  }

  /** Goes through every choice of ranks and counts the uneven ones. */
  private static final class Count {
    private final double[] ranks;
    private final double least;
    private final double mean;
    private long all;
    private long far;

    Count(double[] ranks, double least, double mean) {
      this.ranks = ranks;
      this.least = least;
      this.mean = mean;
    }

    void from(int place, int missing, double sum) {
      if (missing == 0) {
        all++;
        far += Math.abs(sum - mean) >= least ? 1 : 0;
        return;
      }
      for (int i = place; i <= ranks.length - missing; i++) {
        from(i + 1, missing - 1, sum + ranks[i]);
      }
    }
  }
}
