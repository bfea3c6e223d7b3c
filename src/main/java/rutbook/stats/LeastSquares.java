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

  /**
   * The fit.
   *
   * @param x one row for each point, without the column of ones
   * @param y one value for each point, more points than coefficients
   * @throws IllegalArgumentException when there are too few points or columns depend on each other
   */
  public static LeastSquares fit(double[][] x, double[] y) {
    Given.size("number of values", y.length, x.length);
    int columns = x.length == 0 ? 0 : x[0].length;
    Given.within("number of points", x.length, columns + 2, Integer.MAX_VALUE);
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
    double left = regression.calculateResidualSumOfSquares();
    double total = Summary.squares(y, Summary.mean(y));
    int freedom = y.length - columns - 1;
    double variance = left / freedom;
    boolean scatters = total > 0;
    double f = scatters ? (total - left) / Math.max(1, columns) / variance : 0;
    return new LeastSquares(
        coefficients,
        errors,
        Math.sqrt(variance),
        left,
        scatters ? OptionalDouble.of(1 - left / total) : OptionalDouble.empty(),
        scatters && Double.isFinite(f) ? OptionalDouble.of(f) : OptionalDouble.empty(),
        freedom);
  }

  /** Half the width of a coefficient's 95 % interval. */
  public double halfInterval(int coefficient) {
    return new StudentT(degreesOfFreedom).of95() * standardErrors[coefficient];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LeastSquares that
        && Arrays.equals(coefficients, that.coefficients)
        && Arrays.equals(standardErrors, that.standardErrors)
        && residualSquares == that.residualSquares
        && degreesOfFreedom == that.degreesOfFreedom;
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(coefficients);
  }
}
