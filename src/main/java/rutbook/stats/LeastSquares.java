package rutbook.stats;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * A line, curve or plane through measured points by least squares (QR decomposition), with an
 * intercept as first coefficient.
 *
 * @param coefficients intercept first, then one for each column
 * @param standardErrors of the coefficients
 * @param residualSd scatter about the fit
 * @param residualSquares sum of squares left
 * @param explained R², share of the squares explained; empty when y is constant
 * @param f of the whole fit; empty when nothing is left over or y is constant
 * @param degreesOfFreedom points less coefficients, at least one
 */
public record LeastSquares(
    double[] coefficients,
    double[] standardErrors,
    double residualSd,
    double residualSquares,
    OptionalDouble explained,
    OptionalDouble f,
    int degreesOfFreedom) {

  /** Powers of a column may be great; beyond this they would overflow. */
  private static final double MOST_PART = 1e100;

  /**
   * The fit.
   *
   * @param x one row for each point, without the column of ones; parts within ±1e100
   * @param y one value for each point, within ±1e9; more points than coefficients
   * @throws IllegalArgumentException when there are too few points or columns depend on each other
   */
  public static LeastSquares fit(double[][] x, double[] y) {
    Given.size("number of values", y.length, x.length);
    Given.numbers("value", y);
    int columns = x.length == 0 ? 0 : x[0].length;
    Given.within("number of columns", columns, 1, 1000);
    Given.within("number of points", x.length, columns + 2, Integer.MAX_VALUE);
    for (double[] row : x) {
      Given.size("number of columns", row.length, columns);
      for (double part : row) {
        Given.within("part", part, -MOST_PART, MOST_PART);
      }
    }
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    double[] coefficients;
    double[] errors;
    try {
      regression.newSampleData(y, x);
      coefficients = regression.estimateRegressionParameters();
      errors = regression.estimateRegressionParametersStandardErrors();
    } catch (org.hipparchus.exception.MathRuntimeException dependent) {
      throw new IllegalArgumentException("columns depend on each other: " + columns, dependent);
    }
    if (!finite(coefficients) || !finite(errors)) {
      throw new IllegalArgumentException("columns depend on each other: " + columns);
    }
    double left = regression.calculateResidualSumOfSquares();
    double total = Summary.squares(y, Summary.mean(y));
    int freedom = y.length - columns - 1;
    double variance = left / freedom;
    boolean scatters = total > 0;
    double f = scatters ? (total - left) / columns / variance : 0;
    return new LeastSquares(
        coefficients,
        errors,
        Math.sqrt(variance),
        left,
        scatters ? OptionalDouble.of(1 - left / total) : OptionalDouble.empty(),
        scatters && Double.isFinite(f) ? OptionalDouble.of(f) : OptionalDouble.empty(),
        freedom);
  }

  private static boolean finite(double[] values) {
    return Arrays.stream(values).allMatch(Double::isFinite);
  }

  /** Half the width of a coefficient's 95 % interval. */
  public double halfInterval(int coefficient) {
    return new StudentT(degreesOfFreedom).of95() * standardErrors[coefficient];
  }

  /** Chance of a coefficient at least this far from zero, either way, when it is truly zero. */
  public double chance(int coefficient) {
    return new StudentT(degreesOfFreedom)
        .twoSided(coefficients[coefficient] / standardErrors[coefficient]);
  }
}
