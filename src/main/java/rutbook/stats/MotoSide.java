package rutbook.stats;

import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * One side of a comparison: motos with their laps, {@code lap = μ + moto (sd τ) + lap (sd s)}, τ
 * given, s found so that the weighted squares have their expectation n − 1.
 */
final class MotoSide {

  private final double[] laps;
  private final double[] means;
  private final double within;
  private final double tau2;
  private final int count;
  private final double lapVariance;
  private final double mean;

  MotoSide(List<double[]> motos, double tau) {
    laps = motos.stream().mapToDouble(moto -> moto.length).toArray();
    means = motos.stream().mapToDouble(Summary::mean).toArray();
    double squares = 0;
    for (int i = 0; i < means.length; i++) {
      squares += Summary.squares(motos.get(i), means[i]);
    }
    within = squares;
    tau2 = tau * tau;
    count = (int) java.util.Arrays.stream(laps).sum();
    lapVariance = solveLapVariance();
    mean = weightedMean(lapVariance);
  }

  double mean() {
    return mean;
  }

  /** s², variance of a lap within its moto. */
  double lapVariance() {
    return lapVariance;
  }

  int count() {
    return count;
  }

  /** Variance of the mean, {@code 1 / Σ k/(s² + k τ²)}; zero when nothing scatters. */
  double variance() {
    if (lapVariance == 0 && tau2 == 0) {
      return 0;
    }
    return 1 / sumOfWeights(1, 1);
  }

  /** Slope of the variance in s², times s². */
  double shareOfLaps() {
    return lapVariance == 0 ? 0 : lapVariance * variance() * variance() * sumOfWeights(1, 2);
  }

  /** Slope of the variance in τ², times τ². */
  double shareOfMotos() {
    return tau2 == 0 ? 0 : tau2 * variance() * variance() * sumOfWeights(2, 2);
  }

  private double sumOfWeights(int power, int below) {
    double sum = 0;
    for (double k : laps) {
      sum += Math.pow(k, power) / Math.pow(lapVariance + k * tau2, below);
    }
    return sum;
  }

  private double weightedMean(double s2) {
    if (s2 == 0 && tau2 == 0) {
      return means[0];
    }
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < means.length; i++) {
      double weight = laps[i] / (s2 + laps[i] * tau2);
      weights += weight;
      sum += weight * (means[i] - means[0]);
    }
    return means[0] + sum / weights;
  }

  private double solveLapVariance() {
    double most = (within + between(0, 1)) / (count - 1);
    if (most == 0 || excess(most * 1e-12) <= 0) {
      return 0;
    }
    if (excess(most) >= 0) {
      return most;
    }
    return new BracketingNthOrderBrentSolver(1e-14, most * 1e-15, 1e-12, 5)
        .solve(300, this::excess, most * 1e-12, most);
  }

  /** Weighted squares at a lap variance, less their expectation; falls as the variance grows. */
  private double excess(double s2) {
    return within / s2 + between(tau2, s2) - (count - 1);
  }

  private double between(double motoVariance, double s2) {
    double centre = 0;
    double weights = 0;
    for (int i = 0; i < means.length; i++) {
      double weight = laps[i] / (s2 + laps[i] * motoVariance);
      weights += weight;
      centre += weight * (means[i] - means[0]);
    }
    double from = means[0] + centre / weights;
    double sum = 0;
    for (int i = 0; i < means.length; i++) {
      double off = means[i] - from;
      sum += laps[i] / (s2 + laps[i] * motoVariance) * off * off;
    }
    return sum;
  }
}
