package rutbook.riders;

import java.util.List;
import java.util.Locale;

/** How many more of the same riders one method solves than another, points, with 95 % interval. */
record PairedShare(double difference, double low, double high) {
  static PairedShare of(List<Outcome> one, List<Outcome> other, int within) {
    int n = one.size();
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      int d = solved(one.get(i), within) - solved(other.get(i), within);
      sum += d;
      squares += d * d;
    }
    double mean = sum / n;
    double half = 1.96 * Math.sqrt((squares / n - mean * mean) / (n - 1));
    return new PairedShare(100 * mean, 100 * (mean - half), 100 * (mean + half));
  }

  private static int solved(Outcome outcome, int within) {
    return outcome.solvedAt() <= within ? 1 : 0;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%+.1f (%+.1f to %+.1f)", difference, low, high);
  }
}
