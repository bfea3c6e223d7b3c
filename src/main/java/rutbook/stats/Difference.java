package rutbook.stats;

/**
 * A difference of two means and how sure it is.
 *
 * @param difference first less second, in their unit
 * @param standardError of the difference, above zero
 * @param degreesOfFreedom of the t distribution
 * @param chance of a difference at least this great either way if there were none, 0 to 1
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 */
public record Difference(
    double difference,
    double standardError,
    double degreesOfFreedom,
    double chance,
    double low,
    double high) {

  static Difference of(double difference, double standardError, double degreesOfFreedom) {
    StudentT student = new StudentT(degreesOfFreedom);
    double half = student.of95() * standardError;
    return new Difference(
        difference,
        standardError,
        degreesOfFreedom,
        student.twoSided(difference / standardError),
        difference - half,
        difference + half);
  }

  /** The difference in standard errors. */
  public double t() {
    return difference / standardError;
  }

  /** Whether the 95 % interval leaves out zero; inside the noise nothing is called a difference. */
  public boolean beyondNoise() {
    return low > 0 || high < 0;
  }
}
