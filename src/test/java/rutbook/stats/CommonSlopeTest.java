package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/** One slope for groups with levels of their own. */
class CommonSlopeTest {
  /** The reference is ordinary least squares of Hipparchus 4.0.2 with a column for every group. */
  @Test
  void itIsTheFitWithAColumnForEveryGroup() {
    Random random = new Random(31);
    int groups = 7;
    int points = 60;
    int[] group = new int[points];
    double[] x = new double[points];
    double[] y = new double[points];
    double[][] columns = new double[points][groups];
    for (int i = 0; i < points; i++) {
      group[i] = i % groups;
      x[i] = 20 * random.nextDouble();
      y[i] = 0.05 * x[i] + group[i] + random.nextGaussian();
      columns[i][0] = x[i];
      if (group[i] > 0) {
        columns[i][group[i]] = 1;
      }
    }
    OLSMultipleLinearRegression other = new OLSMultipleLinearRegression();
    other.newSampleData(y, columns);
    CommonSlope fit = CommonSlope.fit(group, x, y);
    assertThat(fit.slope()).isCloseTo(other.estimateRegressionParameters()[1], within(1e-12));
    assertThat(fit.standardError())
        .isCloseTo(other.estimateRegressionParametersStandardErrors()[1], within(1e-12));
    assertThat(fit.degreesOfFreedom()).isEqualTo(points - groups - 1);
    LeastSquares wide = LeastSquares.fit(columns, y);
    assertThat(fit.halfInterval()).isCloseTo(wide.halfInterval(1), within(1e-12));
    assertThat(fit.chance()).isCloseTo(wide.chance(1), within(1e-12));
  }

  @Test
  void levelsOfTheGroupsDoNotMatter() {
    int[] group = {3, 3, 3, -8, -8, -8};
    double[] x = {1, 2, 3, 1, 2, 3};
    double[] low = {1, 1.5, 2.2, 1, 1.4, 2};
    double[] lifted = {1, 1.5, 2.2, 101, 101.4, 102};
    assertThat(CommonSlope.fit(group, x, lifted).slope())
        .isCloseTo(CommonSlope.fit(group, x, low).slope(), within(1e-12));
  }

  @Test
  void whatCannotBeFittedIsRefused() {
    double[] three = {1, 2, 3};
    assertThatThrownBy(() -> CommonSlope.fit(new int[] {1, 1, 2}, three, three))
        .hasMessage("number of points must lie in 4.0 to 2.147483647E9, was 3.0");
    assertThatThrownBy(() -> CommonSlope.fit(new int[3], new double[] {4, 4, 4}, three))
        .hasMessage("x does not vary within any group");
    assertThatThrownBy(() -> CommonSlope.fit(new int[2], three, three))
        .hasMessage("number of groups' places must be 3, was 2");
    assertThatThrownBy(() -> CommonSlope.fit(new int[3], new double[] {1, Double.NaN, 2}, three))
        .hasMessageStartingWith("x must lie in");
  }
}
