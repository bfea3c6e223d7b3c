package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.checks.Uses;
import rutbook.stats.TwoMeans.Sample;

/** Summaries, comparisons and regressions against certified and outside values. */
public class StatsChecksTest {

  public static final Uses USES =
      new Uses()
          .use("g.norris.", StatsChecksTest::norris)
          .use("g.longley.b0", row -> longleyCoefficient(row, 0))
          .use("g.longley.b1", row -> longleyCoefficient(row, 1))
          .use("g.longley.b3", row -> longleyCoefficient(row, 3))
          .use("g.longley.b4", row -> longleyCoefficient(row, 4))
          .use("g.longley.b5", row -> longleyCoefficient(row, 5))
          .use("g.longley.b6", row -> longleyCoefficient(row, 6))
          .use("g.longley.sd", StatsChecksTest::longleyWhole)
          .use("g.pontius", StatsChecksTest::pontius)
          .use("g.wampler1", StatsChecksTest::wampler)
          .use("g.univ.", StatsChecksTest::univariate)
          .use("g.auto83b.welch", StatsChecksTest::welchOfCars)
          .use("g.auto83b.pooled", StatsChecksTest::pooledCars)
          .use("g.welch.sleep", StatsChecksTest::welchOfSleep)
          .use("g.motos.", StatsChecksTest::motos)
          .use("g.mw.small", StatsChecksTest::mannWhitney)
          .use("g.bayes.1", StatsChecksTest::bayes)
          .use("g.bayes.2", StatsChecksTest::bayes)
          .use("g.bayes.mean", StatsChecksTest::bayesOfMean)
          .use("g.cars", StatsChecksTest::cars)
          .use("g.quantile7", StatsChecksTest::quantiles);

  static List<Row> rows() {
    return Checks.topic("g-stats");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void theStatisticIsTheCertifiedOne(Row row) {
    USES.run(row);
  }

  private static LeastSquares fit(String set, int powers) {
    double[][] data = ReferenceSets.regression(set);
    double[] y = Arrays.stream(data).mapToDouble(line -> line[0]).toArray();
    double[][] x =
        Arrays.stream(data)
            .map(
                line ->
                    powers == 0
                        ? Arrays.copyOfRange(line, 1, line.length)
                        : powers(line[1], powers))
            .toArray(double[][]::new);
    return LeastSquares.fit(x, y);
  }

  private static double[] powers(double x, int count) {
    double[] powers = new double[count];
    for (int i = 0; i < count; i++) {
      powers[i] = (i == 0 ? 1 : powers[i - 1]) * x;
    }
    return powers;
  }

  private static void norris(Row row) {
    LeastSquares fit = fit("norris", 1);
    String what = row.id().substring("g.norris.".length());
    row.mustBe(
        switch (what) {
          case "b0" -> fit.coefficients()[0];
          case "b1" -> fit.coefficients()[1];
          case "se_b0" -> fit.standardErrors()[0];
          case "residSD" -> fit.residualSd();
          case "R2" -> fit.explained().orElseThrow();
          case "RSS" -> fit.residualSquares();
          case "F" -> fit.f().orElseThrow();
          default -> throw new AssertionError("no such figure: " + what);
        });
  }

  private static void longleyCoefficient(Row row, int coefficient) {
    LeastSquares fit = fit("longley", 0);
    row.mustBe("estimate", fit.coefficients()[coefficient]);
    row.mustBe("se", fit.standardErrors()[coefficient]);
  }

  private static void longleyWhole(Row row) {
    LeastSquares fit = fit("longley", 0);
    row.mustBe("residSD", fit.residualSd());
    row.mustBe("R2", fit.explained().orElseThrow());
    row.mustBe("F", fit.f().orElseThrow());
  }

  private static void pontius(Row row) {
    LeastSquares fit = fit("pontius", 2);
    row.mustBe("b0", fit.coefficients()[0]);
    row.mustBe("b1", fit.coefficients()[1]);
    row.mustBe("b2", fit.coefficients()[2]);
    row.mustBe("residSD", fit.residualSd());
    row.mustBe("R2", fit.explained().orElseThrow());
  }

  /** The data are the row's own formula: y = 1 + x + … + x⁵ at 0 to 20. */
  private static void wampler(Row row) {
    double[][] x = new double[21][];
    double[] y = new double[21];
    for (int i = 0; i <= 20; i++) {
      x[i] = powers(i, 5);
      y[i] = 1 + Arrays.stream(x[i]).sum();
    }
    LeastSquares fit = LeastSquares.fit(x, y);
    row.mustBe("b", fit.coefficients());
    row.mustBe("residSD", fit.residualSd());
  }

  private static void univariate(Row row) {
    double[] data = ReferenceSets.univariate(row.id().substring("g.univ.".length()));
    Summary summary = Summary.of(data);
    row.mustBe("mean", summary.mean());
    row.mustBe("sd", summary.sd().orElseThrow());
    row.mustBe("lag1", Summary.lagOne(data).orElseThrow());
  }

  private static Sample sample(Row row, String number) {
    return new Sample((int) row.in("n" + number), row.in("mean" + number), row.in("sd" + number));
  }

  private static void welchOfCars(Row row) {
    Difference welch = TwoMeans.welch(sample(row, "1"), sample(row, "2")).orElseThrow();
    row.mustBe("t", welch.t());
    row.mustBe("df", welch.degreesOfFreedom());
    double chance = row.expected().path("p_two_sided").doubleValue();
    assertThat(welch.chance()).as("%s", row).isCloseTo(chance, within(1e-3 * chance));
  }

  /** The pooled row names the other row's samples. */
  private static void pooledCars(Row row) {
    assertThat(row.text("same")).isEqualTo("AUTO83B");
    Row samples =
        rows().stream().filter(r -> r.id().equals("g.auto83b.welch")).findFirst().orElseThrow();
    Sample first = sample(samples, "1");
    Sample second = sample(samples, "2");
    Difference pooled = TwoMeans.pooled(first, second).orElseThrow();
    row.mustBe("t", pooled.t());
    row.mustBe("df", pooled.degreesOfFreedom());
    row.mustBe("pooledSD", TwoMeans.pooledSd(first, second));
  }

  private static void welchOfSleep(Row row) {
    Difference welch =
        TwoMeans.welch(Sample.of(row.list("x")), Sample.of(row.list("y"))).orElseThrow();
    row.mustBe("t", welch.t());
    row.mustBe("df", welch.degreesOfFreedom());
    row.mustBe("p", welch.chance());
    row.mustBe("ci95", new double[] {welch.low(), welch.high()});
  }

  /** Motos of different numbers of laps; without a scatter of motos it is Welch's of the laps. */
  private static void motos(Row row) {
    MotoComparison found =
        MotoComparison.of(
                List.of(row.table("first")),
                List.of(row.table("second")),
                new MotoScatter(row.in("tau"), row.in("df_tau")))
            .orElseThrow();
    Difference difference = found.difference();
    row.mustBe("difference", difference.difference());
    row.mustBe("se", difference.standardError());
    row.mustBe("df", difference.degreesOfFreedom());
    row.mustBe("p", difference.chance());
    row.mustBe("ci95", new double[] {difference.low(), difference.high()});
    row.mustBe("lapSd", found.lapSd());
    row.mustBe("motosToSettle", found.motosToSettle().orElseThrow());
  }

  private static void mannWhitney(Row row) {
    MannWhitney ranks = MannWhitney.of(row.list("x"), row.list("y"));
    row.mustBe("U_x", ranks.firstWins());
    row.mustBe("p_normal_nocorr", ranks.chance());
    row.mustBe("p_exact", ranks.exactChance().orElseThrow());
  }

  private static void bayes(Row row) {
    Gaussian before = new Gaussian(row.list("m0"), row.table("V0"));
    double[][] x = row.table("X");
    double[] y = row.list("y");
    double noise = Math.sqrt(row.in("sigma2"));
    Gaussian batch = before.after(x, y, noise);
    Gaussian oneByOne = before;
    for (int i = 0; i < y.length; i++) {
      oneByOne = oneByOne.after(new double[][] {x[i]}, new double[] {y[i]}, noise);
    }
    for (Gaussian after : List.of(batch, oneByOne)) {
      row.mustBe("mN", after.means());
      double[][] covariance = row.expectedTable("VN");
      for (int i = 0; i < 2; i++) {
        for (int j = 0; j < 2; j++) {
          assertThat(after.covariance(i, j))
              .as("%s", row)
              .isCloseTo(covariance[i][j], within(row.allowed(covariance[i][j])));
        }
      }
      Gaussian.Estimate next = after.along(row.list("xNew"));
      row.mustBe("predMean", next.mean());
      row.mustBe("predVar", next.sd() * next.sd() + row.in("sigma2"));
    }
  }

  private static void bayesOfMean(Row row) {
    Gaussian before =
        Gaussian.independent(new double[] {row.in("m0")}, new double[] {Math.sqrt(row.in("v0"))});
    double[] y = row.list("y");
    double[][] ones = new double[y.length][];
    Arrays.fill(ones, new double[] {1});
    Gaussian after = before.after(ones, y, Math.sqrt(row.in("sigma2")));
    row.mustBe("mean", after.mean(0));
    row.mustBe("var", after.covariance(0, 0));
  }

  private static void cars(Row row) {
    LeastSquares fit = fit("cars", 1);
    row.mustBe("b0", fit.coefficients()[0]);
    row.mustBe("b1", fit.coefficients()[1]);
    row.mustBe("se_b1", fit.standardErrors()[1]);
    row.mustBe("R2", fit.explained().orElseThrow());
    double half = fit.halfInterval(1);
    row.mustBe(
        "ci95_b1", new double[] {fit.coefficients()[1] - half, fit.coefficients()[1] + half});
  }

  private static void quantiles(Row row) {
    double[] x = row.list("x");
    Summary summary = Summary.of(x);
    row.mustBe("q25", Summary.quantile(0.25, x));
    row.mustBe("q75", Summary.quantile(0.75, x));
    row.mustBe("median", summary.median());
    row.mustBe("MAD", summary.mad());
    row.mustBe("sd", summary.sd().orElseThrow());
  }
}
