package rutbook.stats;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** What is known of some numbers together: a mean for each and how they vary with each other. */
public final class Gaussian {

  private final double[] mean;
  private final double[][] covariance;

  /**
   * A mean and a covariance.
   *
   * @param mean at least one, each within ±1e9
   * @param covariance symmetric, with positive variances up to 1e18
   */
  public Gaussian(double[] mean, double[][] covariance) {
    this.mean = Given.numbers("mean", mean);
    Given.within("size", mean.length, 1, 10_000);
    Given.size("rows of the covariance", covariance.length, mean.length);
    this.covariance = new double[mean.length][];
    for (int i = 0; i < mean.length; i++) {
      Given.size("columns of the covariance", covariance[i].length, mean.length);
      Given.within("variance", covariance[i][i], Double.MIN_NORMAL, 1e18);
      this.covariance[i] = covariance[i].clone();
    }
  }

  /** Independent numbers, each with its mean and standard deviation. */
  public static Gaussian independent(double[] mean, double[] sd) {
    Given.size("number of sds", sd.length, mean.length);
    double[][] covariance = new double[mean.length][mean.length];
    for (int i = 0; i < sd.length; i++) {
      covariance[i][i] = sd[i] * sd[i];
    }
    return new Gaussian(mean, covariance);
  }

  /** A value and its standard deviation. */
  public record Estimate(double mean, double sd) {

    /**
     * The value that lies above a share of what is likely: shares 0.1 and 0.9 are the ends of an 80
     * % interval.
     *
     * @param share 1e-9 to 1 − 1e-9
     */
    public double quantile(double share) {
      return mean + sd * Normal.quantile(share);
    }
  }

  public double mean(int i) {
    return mean[i];
  }

  public double[] means() {
    return mean.clone();
  }

  public double covariance(int i, int j) {
    return covariance[i][j];
  }

  public double sd(int i) {
    return Math.sqrt(covariance[i][i]);
  }

  /** Correlation of two of them, −1 to 1: above 0.7 in size they can hardly be told apart. */
  public double correlation(int i, int j) {
    double r = covariance[i][j] / (sd(i) * sd(j));
    return Math.max(-1, Math.min(1, r));
  }

  /** The number {@code Σ x_i value_i} with its standard deviation. */
  public Estimate along(double[] x) {
    Given.size("number of parts", x.length, mean.length);
    double value = 0;
    double variance = 0;
    for (int i = 0; i < x.length; i++) {
      if (x[i] != 0) {
        value += x[i] * mean[i];
        for (int j = 0; j < x.length; j++) {
          variance += x[i] * x[j] * covariance[i][j];
        }
      }
    }
    return new Estimate(value, Math.sqrt(Math.max(0, variance)));
  }

  /**
   * What is known after measuring {@code y = X b + noise}, closed form: {@code V' = (V⁻¹ +
   * XᵀX/σ²)⁻¹}, {@code m' = V' (V⁻¹ m + Xᵀy/σ²)}. No rows give back what was known; rows one by one
   * give the same as all at once.
   *
   * @param x one row for each measurement
   * @param y the measurements
   * @param noise σ, sd of the noise, 1e-9 to 1e9
   */
  public Gaussian after(double[][] x, double[] y, double noise) {
    Given.size("number of measurements", y.length, x.length);
    double weight = 1 / square(Given.within("noise", noise, 1e-9, Given.MOST));
    RealMatrix precision = inverse(covariance);
    double[] pull = precision.operate(mean);
    double[][] sum = precision.getData();
    for (int row = 0; row < x.length; row++) {
      Given.size("number of parts", x[row].length, mean.length);
      for (int i = 0; i < mean.length; i++) {
        double part = Given.within("part", x[row][i], -Given.MOST, Given.MOST) * weight;
        pull[i] += part * Given.within("measurement", y[row], -Given.MOST, Given.MOST);
        for (int j = 0; j < mean.length; j++) {
          sum[i][j] += part * x[row][j];
        }
      }
    }
    RealMatrix after = inverse(sum);
    return new Gaussian(after.operate(pull), after.getData());
  }

  /** The precision that belongs to a covariance: its inverse. */
  public static double[][] precision(double[][] covariance) {
    return inverse(covariance).getData();
  }

  /** Inverse of a symmetric positive matrix; refused when it is none. */
  static RealMatrix inverse(double[][] matrix) {
    try {
      RealMatrix inverse =
          new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-9, 0)
              .getSolver()
              .solve(MatrixUtils.createRealIdentityMatrix(matrix.length));
      return inverse.add(inverse.transpose()).scalarMultiply(0.5);
    } catch (org.hipparchus.exception.MathIllegalArgumentException unfit) {
      throw new IllegalArgumentException("not a covariance of " + matrix.length, unfit);
    }
  }

  private static double square(double value) {
    return value * value;
  }
}
