package rutbook.stats;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * A few numbers said in fewer, in their own unit.
 *
 * @param count how many, at least one
 * @param mean arithmetic
 * @param sd standard deviation with n − 1; empty for one number
 * @param median middle
 * @param mad median of the distances from the median, not scaled to a standard deviation
 * @param least the least of them
 * @param most the greatest of them
 */
public record Summary(
    int count,
    double mean,
    OptionalDouble sd,
    double median,
    double mad,
    double least,
    double most) {

  /** The summary of one or more numbers within ±1e9; of none there is none: refused. */
  public static Summary of(double... values) {
    double[] sorted = sorted(values);
    double mean = mean(sorted);
    double median = quantileOfSorted(sorted, 0.5);
    double[] distances = Arrays.stream(sorted).map(v -> Math.abs(v - median)).sorted().toArray();
    return new Summary(
        sorted.length,
        mean,
        sorted.length < 2
            ? OptionalDouble.empty()
            : OptionalDouble.of(Math.sqrt(squares(sorted, mean) / (sorted.length - 1))),
        median,
        quantileOfSorted(distances, 0.5),
        sorted[0],
        sorted[sorted.length - 1]);
  }

  /** The middle of numbers that rise, one or more: the same as of their summary. */
  public static double medianOfSorted(double[] sorted) {
    atLeastOne(sorted);
    return quantileOfSorted(sorted, 0.5);
  }

  /**
   * The value below which a share lies, type 7 of Hyndman and Fan (1996): straight between the two
   * nearest of the sorted numbers.
   *
   * @param share 0 (the least) to 1 (the greatest)
   */
  public static double quantile(double share, double... values) {
    return quantileOfSorted(sorted(values), Given.within("share", share, 0, 1));
  }

  /**
   * How much each number is like the one before: autocorrelation of lag 1, {@code Σ (x_i − m)(x_i+1
   * − m) / Σ (x_i − m)²}; empty when all are equal.
   */
  public static OptionalDouble lagOne(double... values) {
    atLeastOne(values);
    double mean = mean(Given.numbers("value", values));
    double squares = squares(values, mean);
    if (squares == 0) {
      return OptionalDouble.empty();
    }
    Sum sum = new Sum();
    for (int i = 1; i < values.length; i++) {
      sum.add((values[i - 1] - mean) * (values[i] - mean));
    }
    return OptionalDouble.of(sum.value() / squares);
  }

  /** Mean by a sum that keeps its digits, so that none are lost to a great offset. */
  static double mean(double[] values) {
    Sum sum = new Sum();
    for (double value : values) {
      sum.add(value);
    }
    return sum.value() / values.length;
  }

  /** Sum of squared distances from a mean. */
  static double squares(double[] values, double mean) {
    Sum sum = new Sum();
    for (double value : values) {
      sum.add((value - mean) * (value - mean));
    }
    return sum.value();
  }

  private static double[] sorted(double[] values) {
    atLeastOne(values);
    double[] sorted = Given.numbers("value", values);
    Arrays.sort(sorted);
    return sorted;
  }

  private static void atLeastOne(double[] values) {
    Given.within("number of values", values.length, 1, Integer.MAX_VALUE);
  }

  private static double quantileOfSorted(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
