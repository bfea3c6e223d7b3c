package rutbook.stats;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whether the laps of two sets of motos differ by more than noise. Laps of a moto drift together,
 * so motos are compared: variance {@code τ² (1/n_A + 1/n_B)} of the motos and {@code s²/k} of the
 * laps within each, weighted by what each moto knows, t interval with Satterthwaite's degrees of
 * freedom. With τ = 0 it is Welch's comparison of laps, which calls a difference where there is
 * none far too often.
 *
 * @param difference mean lap of the first set less that of the second, in the laps' unit
 * @param lapSd of both sets together, within a moto
 * @param motosToSettle motos on each side, from those ridden up to {@value #MOST_MOTOS}, at which a
 *     difference as great as this one would be beyond noise; empty when more would be needed
 */
public record MotoComparison(Difference difference, double lapSd, OptionalInt motosToSettle) {

  /** Nobody rides more than this to settle one question. */
  public static final int MOST_MOTOS = 30;

  /**
   * The comparison. First laps and laps that the rider dropped are left out before.
   *
   * @param first motos of the first set, each with at least one lap (within ±1e6, a few hundred
   *     seconds say), two laps in all
   * @param second motos of the second set
   * @param scatter moto-to-moto sd and how well it is known
   * @return empty when a set has fewer than two laps, or when nothing scatters
   */
  public static Optional<MotoComparison> of(
      List<double[]> first, List<double[]> second, MotoScatter scatter) {
    check(first);
    check(second);
    if (laps(first) < 2 || laps(second) < 2) {
      return Optional.empty();
    }
    MotoSide a = new MotoSide(first, scatter.sd());
    MotoSide b = new MotoSide(second, scatter.sd());
    double variance = a.variance() + b.variance();
    if (!(variance > 0)) {
      return Optional.empty();
    }
    double freedom = freedom(a, b, scatter);
    Difference difference = Difference.of(a.mean() - b.mean(), Math.sqrt(variance), freedom);
    double lapVariance =
        (a.lapVariance() * (a.count() - 1) + b.lapVariance() * (b.count() - 1))
            / (a.count() + b.count() - 2);
    int motos = Math.max(1, Math.min(first.size(), second.size()));
    double lapsEach = (double) (a.count() + b.count()) / (first.size() + second.size());
    return Optional.of(
        new MotoComparison(
            difference,
            Math.sqrt(lapVariance),
            toSettle(difference.difference(), lapVariance, lapsEach, motos, scatter)));
  }

  private static double freedom(MotoSide a, MotoSide b, MotoScatter scatter) {
    double variance = a.variance() + b.variance();
    double unsure =
        square(a.shareOfLaps() / variance) / (a.count() - 1)
            + square(b.shareOfLaps() / variance) / (b.count() - 1)
            + square((a.shareOfMotos() + b.shareOfMotos()) / variance) / scatter.degreesOfFreedom();
    return Math.min(1e6, 1 / unsure);
  }

  private static OptionalInt toSettle(
      double difference, double lapVariance, double laps, int from, MotoScatter scatter) {
    double tau2 = square(scatter.sd());
    double ofLaps = lapVariance / laps;
    for (int motos = from; motos <= MOST_MOTOS; motos++) {
      double variance = 2 * (tau2 + ofLaps) / motos;
      double unsure =
          2 * square(ofLaps / motos / variance) / Math.max(1, motos * laps - 1)
              + square(2 * tau2 / motos / variance) / scatter.degreesOfFreedom();
      double half = new StudentT(Math.min(1e6, 1 / unsure)).of95() * Math.sqrt(variance);
      if (half < Math.abs(difference)) {
        return OptionalInt.of(motos);
      }
    }
    return OptionalInt.empty();
  }

  private static void check(List<double[]> motos) {
    for (double[] moto : motos) {
      Given.within("laps of a moto", moto.length, 1, 1e6);
      for (double lap : moto) {
        Given.within("lap", lap, -1e6, 1e6);
      }
    }
  }

  private static int laps(List<double[]> motos) {
    return motos.stream().mapToInt(moto -> moto.length).sum();
  }

  private static double square(double value) {
    return value * value;
  }
}
