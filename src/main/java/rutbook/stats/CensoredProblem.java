package rutbook.stats;

import java.util.Arrays;
import java.util.List;

/** What a censored regression has to make agree: what was known, the rows, and their noise. */
final class CensoredProblem {

  private final double[] priorMean;
  private final double[] priorWeight;
  private final double groupWeight;
  private final List<Observation> rows;
  private final double noise;

  CensoredProblem(CensoredRegression.Prior prior, List<Observation> rows, double noise) {
    this.priorMean = prior.mean();
    this.priorWeight = Arrays.stream(prior.sd()).map(sd -> 1 / (sd * sd)).toArray();
    this.groupWeight = 1 / (prior.groupSd() * prior.groupSd());
    this.rows = List.copyOf(rows);
    this.noise = Given.within("noise", noise, 1e-6, 1e6);
    for (Observation row : rows) {
      Given.size("number of parts", row.parts().length, priorMean.length);
    }
  }

  List<Observation> rows() {
    return rows;
  }

  double priorMean(int i) {
    return priorMean[i];
  }

  double priorWeight(int i) {
    return priorWeight[i];
  }

  double groupWeight() {
    return groupWeight;
  }

  double variance(Observation row) {
    return row.variance(noise);
  }

  /** What was known, with no group off its place. */
  CensoredState start() {
    int groups = rows.stream().mapToInt(row -> row.group() + 1).max().orElse(0);
    return new CensoredState(priorMean.clone(), new double[groups]);
  }

  double logPosterior(CensoredState state) {
    double sum = 0;
    for (int i = 0; i < state.b.length; i++) {
      double off = state.b[i] - priorMean[i];
      sum -= off * off * priorWeight[i] / 2;
    }
    for (double offset : state.offsets) {
      sum -= offset * offset * groupWeight / 2;
    }
    for (Observation row : rows) {
      double r = (row.value() - state.mean(row)) / Math.sqrt(variance(row));
      sum +=
          switch (row.kind()) {
            case MEASURED -> -r * r / 2;
            case AT_MOST -> Normal.logCumulative(r);
            case AT_LEAST -> Normal.logCumulative(-r);
          };
    }
    return sum;
  }

  /** Slope of the log likelihood in the mean, in sds of the row. */
  static double pull(Observation.Kind kind, double r) {
    return switch (kind) {
      case MEASURED -> r;
      case AT_MOST -> -Normal.hazard(r);
      case AT_LEAST -> Normal.hazard(-r);
    };
  }

  /** Curvature of the log likelihood in the mean, against a measurement. */
  static double weight(Observation.Kind kind, double r) {
    return switch (kind) {
      case MEASURED -> 1;
      case AT_MOST -> TruncatedNormal.weight(r);
      case AT_LEAST -> TruncatedNormal.weight(-r);
    };
  }

  /** Expected square of the noise in sds: {@code 1 − r h} for a bound. */
  static double square(Observation.Kind kind, double r) {
    return switch (kind) {
      case MEASURED -> r * r;
      case AT_MOST -> 1 - r * Normal.hazard(r);
      case AT_LEAST -> 1 + r * Normal.hazard(-r);
    };
  }
}
