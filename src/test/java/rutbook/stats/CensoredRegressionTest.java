package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rutbook.bench.SideBySide;
import rutbook.stats.CensoredRegression.Prior;
import rutbook.stats.Observation.Kind;

class CensoredRegressionTest {

  private static final double MOST_RATIO = 25;
  private static final Prior ONE = new Prior(new double[] {0.5}, new double[] {1.2}, 1);
  private static final Prior TWO = new Prior(new double[] {0, 0.4}, new double[] {1.5, 0.6}, 1);

  /** Ratings of a line from 0 to 5, cut where the scale ends. */
  private static List<Observation> ratings(Random random, int rows, double[] truth, double noise) {
    List<Observation> list = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      double[] x = new double[truth.length];
      double z = noise * random.nextGaussian();
      for (int j = 0; j < x.length; j++) {
        x[j] = j == 0 ? 1 : random.nextInt(5) - 2;
        z += x[j] * truth[j];
      }
      list.add(rated(x, z));
    }
    return list;
  }

  private static Observation rated(double[] x, double z) {
    if (z <= 0.5) {
      return Observation.of(x, 0.5, Kind.AT_MOST);
    }
    return z >= 4.5 ? Observation.of(x, 4.5, Kind.AT_LEAST) : Observation.of(x, z, Kind.MEASURED);
  }

  @Test
  void noRowsGiveBackWhatWasKnown() {
    CensoredFit fit = CensoredRegression.fit(TWO, List.of(), 0.8);
    assertThat(fit.coefficients().means()).containsExactly(0, 0.4);
    assertThat(fit.coefficients().sd(0)).isCloseTo(1.5, within(1e-12));
    assertThat(fit.noiseRatio()).isEqualTo(1);
    assertThat(fit.groupOffsets()).isEmpty();
  }

  @Property(tries = 50, seed = "91")
  void withoutBoundsItIsTheClosedForm(@ForAll long seed) {
    Random random = new Random(seed);
    double[][] x = new double[12][];
    double[] y = new double[12];
    List<Observation> rows = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      x[i] = new double[] {1, random.nextGaussian()};
      y[i] = random.nextGaussian();
      rows.add(Observation.of(x[i], y[i], Kind.MEASURED));
    }
    Gaussian closed = Gaussian.independent(TWO.mean(), TWO.sd()).after(x, y, 0.7);
    Gaussian fit = CensoredRegression.fit(TWO, rows, 0.7).coefficients();
    for (int i = 0; i < 2; i++) {
      assertThat(fit.mean(i)).isCloseTo(closed.mean(i), within(1e-10));
      for (int j = 0; j < 2; j++) {
        assertThat(fit.covariance(i, j)).isCloseTo(closed.covariance(i, j), within(1e-10));
      }
    }
  }

  /** Density of the posterior up to a factor, written out again from its definition. */
  private static double logDensity(Prior prior, List<Observation> rows, double noise, double... b) {
    double sum = 0;
    for (int i = 0; i < b.length; i++) {
      double off = (b[i] - prior.mean()[i]) / prior.sd()[i];
      sum -= off * off / 2;
    }
    for (Observation row : rows) {
      double mean = 0;
      for (int i = 0; i < b.length; i++) {
        mean += row.x()[i] * b[i];
      }
      double r = (row.value() - mean) / noise;
      double tail =
          org.hipparchus.special.Erf.erfc((row.kind() == Kind.AT_MOST ? -r : r) / Math.sqrt(2)) / 2;
      sum += row.kind() == Kind.MEASURED ? -r * r / 2 : Math.log(tail);
    }
    return sum;
  }

  @net.jqwik.api.Tag("heavy")
  @Property(tries = 40, seed = "92")
  void inOneDimensionItAgreesWithPlainIntegration(@ForAll long seed) {
    List<Observation> rows = ratings(new Random(seed), 9, new double[] {0.6}, 0.8);
    Gaussian fit = CensoredRegression.fit(ONE, rows, 0.8).coefficients();
    double best = Double.NEGATIVE_INFINITY;
    double bestAt = 0;
    double[] sums = new double[3];
    double top = logDensity(ONE, rows, 0.8, fit.mean(0));
    for (double b = -6; b <= 6; b += 0.001) {
      double log = logDensity(ONE, rows, 0.8, b);
      if (log > best) {
        best = log;
        bestAt = b;
      }
      double density = Math.exp(log - top);
      sums[0] += density;
      sums[1] += density * b;
      sums[2] += density * b * b;
    }
    double mean = sums[1] / sums[0];
    double sd = Math.sqrt(sums[2] / sums[0] - mean * mean);
    assertThat(fit.mean(0)).as("most likely").isCloseTo(bestAt, within(0.001));
    assertThat(fit.mean(0)).as("mean").isCloseTo(mean, within(0.2 * sd));
    assertThat(fit.sd(0)).as("sd").isCloseTo(sd, within(0.1 * sd));
  }

  @net.jqwik.api.Tag("heavy")
  @Property(tries = 10, seed = "93")
  void inTwoDimensionsItAgreesWithPlainIntegration(@ForAll long seed) {
    List<Observation> rows = ratings(new Random(seed), 14, new double[] {1.0, 0.5}, 0.8);
    Gaussian fit = CensoredRegression.fit(TWO, rows, 0.8).coefficients();
    double top = logDensity(TWO, rows, 0.8, fit.means());
    double mass = 0;
    double[] first = new double[2];
    double[] second = new double[3];
    for (double a = -6; a <= 6; a += 0.04) {
      for (double b = -3; b <= 3; b += 0.02) {
        double density = Math.exp(logDensity(TWO, rows, 0.8, a, b) - top);
        assertThat(density).as("nothing is likelier").isLessThanOrEqualTo(1 + 1e-9);
        mass += density;
        first[0] += density * a;
        first[1] += density * b;
        second[0] += density * a * a;
        second[1] += density * b * b;
        second[2] += density * a * b;
      }
    }
    double[] mean = {first[0] / mass, first[1] / mass};
    for (int i = 0; i < 2; i++) {
      double sd = Math.sqrt(second[i] / mass - mean[i] * mean[i]);
      assertThat(fit.mean(i)).as("mean %s", i).isCloseTo(mean[i], within(0.25 * sd));
      assertThat(fit.sd(i)).as("sd %s", i).isCloseTo(sd, within(0.15 * sd));
    }
    double covariance = second[2] / mass - mean[0] * mean[1];
    assertThat(fit.covariance(0, 1)).isCloseTo(covariance, within(0.1 * fit.sd(0) * fit.sd(1)));
  }

  @Test
  void manyRatingsFindTheTruthThatZerosAsMeasurementsMiss() {
    double[] truth = {0.2, 0.6};
    List<Observation> rows = ratings(new Random(3), 2000, truth, 0.8);
    Gaussian fit = CensoredRegression.fit(TWO, rows, 0.8).coefficients();
    for (int i = 0; i < 2; i++) {
      assertThat(fit.mean(i)).isCloseTo(truth[i], within(4 * fit.sd(i)));
    }
    List<Observation> plain =
        rows.stream()
            .map(r -> Observation.of(r.x(), r.value() == 0.5 ? 0 : r.value(), Kind.MEASURED))
            .toList();
    double wrong = CensoredRegression.fit(TWO, plain, 0.8).coefficients().mean(1);
    assertThat(wrong).as("taken as measurements").isLessThan(0.45);
  }

  @Test
  void theNoiseIsFoundFromTheRows() {
    List<Observation> rows = ratings(new Random(4), 1500, new double[] {1, 0.5}, 1.1);
    assertThat(CensoredRegression.noise(TWO, rows, 0.8, 0.5, 50)).isCloseTo(1.1, within(0.06));
    List<Observation> quiet = ratings(new Random(4), 500, new double[] {1, 0.5}, 0.2);
    assertThat(CensoredRegression.noise(TWO, quiet, 0.8, 0.5, 50)).isEqualTo(0.5);
    assertThat(CensoredRegression.noise(TWO, List.of(), 0.8, 0.5, 50)).isEqualTo(0.8);
  }

  /** The days' offsets taken out beforehand are the same as a column for each of them. */
  @Test
  void daysAsGroupsAreTheSameAsDaysAsColumns() {
    Random random = new Random(6);
    int days = 5;
    List<Observation> grouped = new ArrayList<>();
    List<Observation> columns = new ArrayList<>();
    for (Observation row : ratings(random, 40, new double[] {1, 0.5}, 0.8)) {
      int day = random.nextInt(days);
      grouped.add(row.onDay(day));
      double[] wide = new double[2 + days];
      System.arraycopy(row.x(), 0, wide, 0, 2);
      wide[2 + day] = 1;
      columns.add(Observation.of(wide, row.value(), row.kind()));
    }
    Prior prior = new Prior(TWO.mean(), TWO.sd(), 0.7);
    double[] means = new double[2 + days];
    double[] sds = new double[2 + days];
    java.util.Arrays.fill(sds, 0.7);
    System.arraycopy(TWO.mean(), 0, means, 0, 2);
    System.arraycopy(TWO.sd(), 0, sds, 0, 2);
    CensoredFit byGroup = CensoredRegression.fit(prior, grouped, 0.8);
    CensoredFit byColumn = CensoredRegression.fit(new Prior(means, sds, 1), columns, 0.8);
    for (int i = 0; i < 2; i++) {
      assertThat(byGroup.coefficients().mean(i))
          .isCloseTo(byColumn.coefficients().mean(i), within(1e-9));
      for (int j = 0; j < 2; j++) {
        assertThat(byGroup.coefficients().covariance(i, j))
            .isCloseTo(byColumn.coefficients().covariance(i, j), within(1e-9));
      }
    }
    for (int d = 0; d < days; d++) {
      assertThat(byGroup.groupOffsets().get(d))
          .isCloseTo(byColumn.coefficients().mean(2 + d), within(1e-9));
    }
    assertThat(byGroup.noiseRatio()).isCloseTo(byColumn.noiseRatio(), within(1e-9));
  }

  @Test
  void aRowOfHalfTheWeightIsOneOfTwiceTheVariance() {
    Observation row = Observation.of(new double[] {1}, 3, Kind.MEASURED);
    Observation light = new Observation(row.x(), 3, Kind.MEASURED, Observation.NO_GROUP, 0.5, 0);
    Observation unsure = new Observation(row.x(), 3, Kind.MEASURED, Observation.NO_GROUP, 1, 0.64);
    assertThat(CensoredRegression.fit(ONE, List.of(light), 0.8).coefficients().mean(0))
        .isCloseTo(
            CensoredRegression.fit(ONE, List.of(unsure), 0.8).coefficients().mean(0),
            within(1e-12));
  }

  @org.junit.jupiter.api.Tag("heavy")
  @Test
  void aRoundOverTenThousandMotosCostsAFewTimesItsProducts() {
    double[] truth = new double[30];
    Random random = new Random(8);
    for (int i = 1; i < truth.length; i++) {
      truth[i] = 0.2 * random.nextGaussian();
    }
    List<Observation> rows = new ArrayList<>();
    for (Observation row : ratings(random, 10_000, truth, 0.8)) {
      rows.add(row.onDay(rows.size() / 3));
    }
    double[] sds = new double[30];
    java.util.Arrays.fill(sds, 0.5);
    Prior prior = new Prior(new double[30], sds, 0.5);
    CensoredFit fit = CensoredRegression.fit(prior, rows, 0.8);
    double ratio =
        SideBySide.ratio(
            3, () -> CensoredRegression.fit(prior, rows, 0.8).rounds(), () -> products(rows));
    assertThat(ratio / fit.rounds()).as("a round against its products").isLessThan(MOST_RATIO);
    for (int i = 0; i < 30; i++) {
      assertThat(fit.coefficients().mean(i))
          .isCloseTo(truth[i], within(5 * fit.coefficients().sd(i)));
    }
  }

  @Property(tries = 200, seed = "94")
  void whateverIsAcceptedGivesFiniteNumbers(@ForAll long seed) {
    Random random = new Random(seed);
    List<Observation> rows = new ArrayList<>();
    for (int i = 0; i < random.nextInt(8); i++) {
      double[] x = {Math.pow(10, random.nextInt(5) - 2), -random.nextInt(3)};
      double value = (random.nextInt(3) - 1) * Math.pow(10, random.nextInt(5));
      rows.add(Observation.of(x, value, Kind.values()[random.nextInt(3)]).onDay(random.nextInt(3)));
    }
    CensoredFit fit = CensoredRegression.fit(TWO, rows, Math.pow(10, random.nextInt(4) - 2));
    for (int i = 0; i < 2; i++) {
      assertThat(fit.coefficients().mean(i)).isFinite();
      assertThat(fit.coefficients().sd(i)).isFinite().isPositive();
      assertThat(fit.coefficients().correlation(0, i)).isBetween(-1.0, 1.0);
    }
    assertThat(fit.noiseRatio()).isFinite().isGreaterThanOrEqualTo(0);
    assertThat(fit.rounds()).isLessThan(100);
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    List<Observation> wide = List.of(Observation.of(new double[] {1, 2}, 1, Kind.MEASURED));
    assertThatThrownBy(() -> CensoredRegression.fit(ONE, wide, 0.8)).hasMessageContaining("was 2");
    assertThatThrownBy(() -> CensoredRegression.fit(ONE, List.of(), 0)).hasMessageContaining("0.0");
    assertThatThrownBy(() -> Observation.of(new double[] {Double.NaN}, 1, Kind.MEASURED))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> new Prior(new double[] {1}, new double[] {0}, 1))
        .hasMessageContaining("0.0");
  }

  /** The products of every pair of columns, as any fit of these rows has to make them. */
  private static double products(List<Observation> rows) {
    int columns = rows.get(0).x().length;
    double[][] products = new double[columns][columns];
    for (Observation row : rows) {
      double[] x = row.x();
      for (int i = 0; i < columns; i++) {
        for (int j = 0; j <= i; j++) {
          products[i][j] += x[i] * x[j];
        }
      }
    }
    return products[columns - 1][0];
  }
}
