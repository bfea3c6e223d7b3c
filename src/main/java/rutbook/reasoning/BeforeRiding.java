package rutbook.reasoning;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What may be true of a bike and its rider before any moto: values with their chances (up to a
 * factor). Our own choice, made with the simulated riders of the tuning seeds; no source.
 */
final class BeforeRiding {
  private static final double DAY_SD = 0.6;

  /** Doses from the baseline to the most comfortable setup: often none, else a few either way. */
  static final Values BEST =
      new Values(
          new double[] {-7.5, -6, -5, -4, -3, -1.5, 0, 1.5, 3, 4, 5, 6, 7.5},
          new double[] {
            0.01, 0.05, 0.055, 0.06, 0.06, 0.025, 0.48, 0.025, 0.06, 0.06, 0.055, 0.05, 0.01
          });

  /** Severity that is left of a complaint at the most comfortable setup. */
  static final Values LEFT =
      Values.ofLogs(
          new double[] {-1.05, -0.9, -0.75, -0.6, -0.45, -0.3, -0.15, 0, 0.3, 1, 2, 3},
          -2.2,
          -1,
          -0.4,
          0,
          0,
          -0.3,
          -1,
          -2,
          -3.5,
          -5,
          -6,
          -6.5);

  /** Severity points that every complaint grows from moto to moto as the track roughens. */
  static final Values ROUGHENS =
      Values.ofLogs(
          new double[] {0, 0.04, 0.08, 0.12, 0.16, 0.24, 0.32},
          -0.3,
          -0.4,
          -0.3,
          -0.2,
          -0.5,
          -1.2,
          -2.2);

  /** How much worse a complaint is on a day than usual. */
  static final Values DAY =
      Values.normal(new double[] {-1.8, -1.2, -0.8, -0.4, 0, 0.4, 0.8, 1.2, 1.8}, DAY_SD);

  /** Sd of a rating, severity points: the first of those that {@link RatingChances} knows. */
  static final Values NOISE =
      Values.ofLogs(new double[] {0.5, 0.65, 0.8, 1.0, 1.3}, -0.7, 0, 0, -1, -2.5);

  /** Of six rules, as many as this is worth: how many hold, do nothing, are reversed. */
  static final Values RULES =
      new Values(
          new double[] {PriorCell.HOLDS, PriorCell.NOTHING, PriorCell.REVERSED},
          new double[] {4.68, 0.72, 0.6});

  private BeforeRiding() {}

  /** Values that a number may have, and the chance of each. */
  record Values(double[] value, double[] chance) {
    static Values ofLogs(double[] value, double... logs) {
      return new Values(value, Arrays.stream(logs).map(StrictMath::exp).toArray());
    }

    static Values normal(double[] value, double sd) {
      double[] logs = Arrays.stream(value).map(each -> -each * each / (2 * sd * sd)).toArray();
      return ofLogs(value, logs);
    }

    int size() {
      return value.length;
    }

    /** Those between two ends. */
    Values within(double least, double most) {
      int[] kept =
          IntStream.range(0, value.length)
              .filter(i -> value[i] >= least && value[i] <= most)
              .toArray();
      return new Values(
          Arrays.stream(kept).mapToDouble(i -> value[i]).toArray(),
          Arrays.stream(kept).mapToDouble(i -> chance[i]).toArray());
    }
  }
}
