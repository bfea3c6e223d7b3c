package rutbook.stats;

import java.util.Arrays;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Slope and curvature of the log posterior at a state, the groups' part kept apart. */
final class CensoredEquations {
  private final CensoredProblem problem;
  private final CensoredState at;
  private final double[][] curvature;
  private final double[] slope;
  private final double[][] shared;
  private final double[] groupCurvature;
  private final double[] groupSlope;
  private CholeskyDecomposition solver;

  CensoredEquations(CensoredProblem problem, CensoredState at) {
    this.problem = problem;
    this.at = at;
    int p = at.b.length;
    int groups = at.offsets.length;
    curvature = new double[p][p];
    slope = new double[p];
    shared = new double[groups][p];
    groupCurvature = new double[groups];
    groupSlope = new double[groups];
    for (int i = 0; i < p; i++) {
      curvature[i][i] = problem.priorWeight(i);
      slope[i] = -(at.b[i] - problem.priorMean(i)) * problem.priorWeight(i);
    }
    for (int g = 0; g < groups; g++) {
      groupCurvature[g] = problem.groupWeight();
      groupSlope[g] = -at.offsets[g] * problem.groupWeight();
    }
    problem.rows().forEach(this::add);
  }

  private void add(Observation row) {
    double variance = problem.variance(row);
    double sd = Math.sqrt(variance);
    double r = (row.value() - at.mean(row)) / sd;
    double pull = CensoredProblem.pull(row.kind(), r) / sd;
    double weight = CensoredProblem.weight(row.kind(), r) / variance;
    double[] x = row.parts();
    int group = row.group();
    for (int i = 0; i < x.length; i++) {
      if (x[i] == 0) {
        continue;
      }
      slope[i] += pull * x[i];
      double part = weight * x[i];
      double[] line = curvature[i];
      for (int j = 0; j <= i; j++) {
        line[j] += part * x[j];
      }
      if (group >= 0) {
        shared[group][i] += part;
      }
    }
    if (group >= 0) {
      groupCurvature[group] += weight;
      groupSlope[group] += pull;
    }
  }

  CensoredState step() {
    double[] right = slope.clone();
    for (int g = 0; g < shared.length; g++) {
      double part = groupSlope[g] / groupCurvature[g];
      for (int i = 0; i < right.length; i++) {
        right[i] -= shared[g][i] * part;
      }
    }
    double[] b = solver().getSolver().solve(new ArrayRealVector(right, false)).toArray();
    double[] offsets = new double[shared.length];
    for (int g = 0; g < offsets.length; g++) {
      offsets[g] = (groupSlope[g] - dot(shared[g], b)) / groupCurvature[g];
    }
    return new CensoredState(b, offsets);
  }

  /** Twice what the step is expected to gain: nothing at the top. */
  double gain(CensoredState step) {
    return dot(slope, step.b) + dot(groupSlope, step.offsets);
  }

  private CholeskyDecomposition solver() {
    if (solver == null) {
      double[][] reduced = new double[slope.length][slope.length];
      for (int i = 0; i < slope.length; i++) {
        System.arraycopy(curvature[i], 0, reduced[i], 0, i + 1);
      }
      for (int g = 0; g < shared.length; g++) {
        takeOut(shared[g], groupCurvature[g], reduced);
      }
      for (int i = 0; i < slope.length; i++) {
        for (int j = 0; j < i; j++) {
          reduced[j][i] = reduced[i][j];
        }
      }
      solver = decomposed(reduced);
    }
    return solver;
  }

  private static CholeskyDecomposition decomposed(double[][] matrix) {
    try {
      return new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-9, 0);
    } catch (MathIllegalArgumentException unfit) {
      throw new IllegalArgumentException(
          "parts too far apart in size for " + matrix.length + " coefficients", unfit);
    }
  }

  private static void takeOut(double[] shared, double curvature, double[][] from) {
    for (int i = 0; i < shared.length; i++) {
      if (shared[i] != 0) {
        double part = shared[i] / curvature;
        for (int j = 0; j <= i; j++) {
          from[i][j] -= part * shared[j];
        }
      }
    }
  }

  /** The fit when the state is the top. */
  CensoredFit fit(int rounds) {
    RealMatrix covariance = covariance();
    return new CensoredFit(
        new Gaussian(at.b, covariance.getData()),
        Arrays.stream(at.offsets).boxed().toList(),
        noiseRatio(covariance),
        rounds);
  }

  private RealMatrix covariance() {
    RealMatrix inverse = solver().getSolver().getInverse();
    return inverse.add(inverse.transpose()).scalarMultiply(0.5);
  }

  /** Expected square of each row's noise over its variance, root of the mean. */
  private double noiseRatio(RealMatrix covariance) {
    if (problem.rows().isEmpty()) {
      return 1;
    }
    double[][] c = covariance.getData();
    double sum = 0;
    for (Observation row : problem.rows()) {
      double variance = problem.variance(row);
      double r = (row.value() - at.mean(row)) / Math.sqrt(variance);
      sum +=
          CensoredProblem.square(row.kind(), r)
              + meanVariance(row, c) / variance * CensoredProblem.weight(row.kind(), r);
    }
    return Math.sqrt(sum / problem.rows().size());
  }

  private double meanVariance(Observation row, double[][] covariance) {
    double[] x = row.parts();
    double own = 0;
    if (row.group() >= 0) {
      double curvatureOfGroup = groupCurvature[row.group()];
      own = 1 / curvatureOfGroup;
      x = x.clone();
      for (int i = 0; i < x.length; i++) {
        x[i] -= shared[row.group()][i] / curvatureOfGroup;
      }
    }
    double sum = own;
    for (int i = 0; i < x.length; i++) {
      if (x[i] != 0) {
        sum += x[i] * dot(covariance[i], x);
      }
    }
    return sum;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
