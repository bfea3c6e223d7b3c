package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;

/**
 * The sampler against the same posterior worked out another way: every combination of the unknowns
 * weighed and summed, the chance of a rating as an integral of the normal density (Hipparchus'
 * Simpson rule), nothing drawn and no table read.
 */
class BikeSamplerTest {
  private static final int DRAWS = 40_000;
  private static final double SLIP = 0.02;

  /** Sums over every combination: mean and variance of a few numbers. */
  private static final class Sums {
    private final double[] first;
    private final double[] second;
    private double mass;

    Sums(int numbers) {
      first = new double[numbers];
      second = new double[numbers];
    }

    void add(double weight, double... numbers) {
      mass += weight;
      for (int i = 0; i < numbers.length; i++) {
        first[i] += weight * numbers[i];
        second[i] += weight * numbers[i] * numbers[i];
      }
    }

    double mean(int i) {
      return first[i] / mass;
    }

    double sd(int i) {
      return Math.sqrt(second[i] / mass - mean(i) * mean(i));
    }
  }

  /** Chance of a whole number from 0 to 5, the ends of the scale taking all beyond them. */
  private static double chance(int rating, double severity, double noise) {
    double low = rating == 0 ? severity - 12 * noise : rating - 0.5;
    double high = rating == 5 ? severity + 12 * noise : rating + 0.5;
    if (high <= severity - 12 * noise || low >= severity + 12 * noise) {
      return SLIP / 6;
    }
    double from = Math.max(low, severity - 12 * noise);
    double to = Math.min(high, severity + 12 * noise);
    double mass =
        from >= to
            ? 0
            : new SimpsonIntegrator(1e-9, 1e-11, 4, 30)
                .integrate(
                    2_000_000,
                    z ->
                        Math.exp(-(z - severity) * (z - severity) / (2 * noise * noise))
                            / (noise * Math.sqrt(2 * Math.PI)),
                    from,
                    to);
    return (1 - SLIP) * mass + SLIP / 6;
  }

  private static RecentRatings ratings(double[] x, double here, int... ratings) {
    double[][] by = Arrays.stream(x).mapToObj(each -> new double[] {each}).toArray(double[][]::new);
    return new RecentRatings(
        by,
        new double[] {here},
        new double[x.length],
        0,
        new int[x.length],
        new int[x.length],
        new int[][] {ratings});
  }

  private static List<PlausibleBikes.Bike> drawn(PriorCell cell, RecentRatings ratings) {
    return new BikeSampler(
            new PriorCell[][] {{cell}}, new double[][] {{-20, 20}}, ratings, new OldEvidence[1], 11)
        .draw(500, DRAWS);
  }

  private static void agrees(
      List<PlausibleBikes.Bike> bikes,
      java.util.function.ToDoubleFunction<PlausibleBikes.Bike> of,
      Sums sums,
      int i) {
    double mean = bikes.stream().mapToDouble(of).average().orElseThrow();
    double square = bikes.stream().mapToDouble(of).map(each -> each * each).average().orElseThrow();
    assertThat(mean).isCloseTo(sums.mean(i), within(0.02 + 0.04 * sums.sd(i)));
    assertThat(Math.sqrt(square - mean * mean))
        .isCloseTo(sums.sd(i), within(0.02 + 0.06 * sums.sd(i)));
  }

  @net.jqwik.api.Tag("heavy")
  @Property(tries = 8, seed = "31")
  void inOneDimensionItAgreesWithIntegrationWithRatingsAtTheEndsOfTheScaleToo(@ForAll long seed) {
    Random random = new Random(seed);
    int[] rated = new int[1 + random.nextInt(5)];
    Arrays.setAll(rated, i -> Math.max(0, Math.min(5, random.nextInt(9) - 2)));
    PriorCell nothing = new PriorCell(false, 0, new double[] {0}, new int[1], new double[] {1});
    List<PlausibleBikes.Bike> bikes = drawn(nothing, ratings(new double[rated.length], 0, rated));
    Sums sums = new Sums(1);
    for (int l = 0; l < BeforeRiding.LEFT.size(); l++) {
      double left = BeforeRiding.LEFT.value()[l];
      for (int n = 0; n < BeforeRiding.NOISE.size(); n++) {
        double weight = BeforeRiding.LEFT.chance()[l] * BeforeRiding.NOISE.chance()[n];
        for (int rating : rated) {
          weight *= chance(rating, left, BeforeRiding.NOISE.value()[n]);
        }
        sums.add(weight, left);
      }
    }
    agrees(bikes, bike -> bike.here()[0], sums, 0);
  }

  @net.jqwik.api.Tag("heavy")
  @Property(tries = 5, seed = "32")
  void inTwoDimensionsItAgreesWithIntegrationWithRatingsAtTheEndsOfTheScaleToo(@ForAll long seed) {
    Random random = new Random(seed);
    double[] value = {-0.6, -0.3, 0, 0.3, 0.6, 0.9};
    double[] known = {0.1, 0.2, 0.3, 0.2, 0.15, 0.05};
    PriorCell cell = new PriorCell(false, 0, value, new int[value.length], known);
    double[] x = new double[6];
    int[] rated = new int[x.length];
    for (int t = 0; t < x.length; t++) {
      x[t] = random.nextInt(9) - 4;
      rated[t] = (int) Math.max(0, Math.min(5, Math.round(1 + 0.5 * x[t] + random.nextGaussian())));
    }
    List<PlausibleBikes.Bike> bikes = drawn(cell, ratings(x, 2, rated));
    Sums sums = new Sums(2);
    for (int l = 0; l < BeforeRiding.LEFT.size(); l++) {
      for (int n = 0; n < BeforeRiding.NOISE.size(); n++) {
        for (int v = 0; v < value.length; v++) {
          double left = BeforeRiding.LEFT.value()[l];
          double weight = BeforeRiding.LEFT.chance()[l] * BeforeRiding.NOISE.chance()[n] * known[v];
          for (int t = 0; t < x.length; t++) {
            weight *= chance(rated[t], left + value[v] * x[t], BeforeRiding.NOISE.value()[n]);
          }
          sums.add(weight, left + 2 * value[v], value[v]);
        }
      }
    }
    agrees(bikes, bike -> bike.here()[0], sums, 0);
    agrees(bikes, bike -> bike.effect()[0][0], sums, 1);
  }

  /** With a rule: the most comfortable place, and whether the rule holds, are unknown as well. */
  @org.junit.jupiter.api.Tag("heavy")
  @Test
  void aRuleThatMayHoldDoNothingOrBeReversedAgreesWithTheSumOverAllThatMayBe() {
    agreesWithTheSum(PriorCell.of(new TreeMap<>(java.util.Map.of(0.4, 1.0)), false));
  }

  /** While its deciding question is open the likeliest value of a rule is none. */
  @org.junit.jupiter.api.Tag("heavy")
  @Test
  void aRuleWhoseQuestionIsOpenAgreesToo() {
    PriorCell cell = PriorCell.of(new TreeMap<>(java.util.Map.of(0.4, 0.5, -0.35, 0.5)), false);
    assertThat(cell.regime()[cell.usual()]).isEqualTo(PriorCell.NOTHING);
    agreesWithTheSum(cell);
  }

  private static void agreesWithTheSum(PriorCell cell) {
    double[] x = {0, 2, 4, 4};
    int[] rated = {3, 3, 4, 5};
    List<PlausibleBikes.Bike> bikes = drawn(cell, ratings(x, 0, rated));
    double all = Arrays.stream(BeforeRiding.RULES.chance()).sum();
    Sums sums = new Sums(4);
    for (int n = 0; n < BeforeRiding.NOISE.size(); n++) {
      double noise = BeforeRiding.NOISE.value()[n];
      for (int l = 0; l < BeforeRiding.LEFT.size(); l++) {
        for (int v = 0; v < cell.value().length; v++) {
          for (int b = 0; b < BeforeRiding.BEST.size(); b++) {
            double left = BeforeRiding.LEFT.value()[l];
            double each = cell.value()[v];
            double best = BeforeRiding.BEST.value()[b];
            double weight =
                BeforeRiding.NOISE.chance()[n]
                    * BeforeRiding.LEFT.chance()[l]
                    * BeforeRiding.BEST.chance()[b]
                    * cell.chance()[v]
                    * BeforeRiding.RULES.chance()[cell.regime()[v]]
                    / all;
            for (int t = 0; t < x.length; t++) {
              weight *= chance(rated[t], left + each * (x[t] - best), noise);
            }
            double reversed = cell.regime()[v] == PriorCell.REVERSED ? 1 : 0;
            double trust = (BeforeRiding.RULES.chance()[PriorCell.REVERSED] + reversed) / (all + 1);
            sums.add(weight, left - each * best, each, each < 0 ? 1 : 0, trust);
          }
        }
      }
    }
    agrees(bikes, bike -> bike.here()[0], sums, 0);
    agrees(bikes, bike -> bike.effect()[0][0], sums, 1);
    agrees(bikes, bike -> bike.effect()[0][0] < 0 ? 1 : 0, sums, 2);
    assertThat(RuleTrust.of(new PlausibleBikes(bikes)).reversed())
        .isCloseTo(sums.mean(3), within(0.01));
  }

  /**
   * Two complaints of one setting: rules that are reversed together are as likely as they should
   * be.
   */
  @org.junit.jupiter.api.Tag("heavy")
  @Test
  void twoRulesOfOneSettingAreReversedTogetherAsOftenAsTheSumOverAllThatMayBe() {
    PriorCell cell = PriorCell.of(new TreeMap<>(java.util.Map.of(0.4, 1.0)), false);
    double[] x = {0, 3, 0, 3};
    int[] rated = {3, 2, 2, 1};
    RecentRatings one = ratings(x, 0, rated);
    List<PlausibleBikes.Bike> bikes =
        new BikeSampler(
                new PriorCell[][] {{cell}, {cell}},
                new double[][] {{-20, 20}},
                new RecentRatings(
                    one.x(),
                    one.here(),
                    one.order(),
                    0,
                    one.day(),
                    one.unsure(),
                    new int[][] {rated, rated}),
                new OldEvidence[2],
                12)
            .draw(500, DRAWS);
    double[] prior = BeforeRiding.RULES.chance();
    double all = Arrays.stream(prior).sum();
    Sums sums = new Sums(2);
    for (int n = 0; n < BeforeRiding.NOISE.size(); n++) {
      for (int b = 0; b < BeforeRiding.BEST.size(); b++) {
        double[] byRegime = new double[3];
        for (int v = 0; v < cell.value().length; v++) {
          byRegime[cell.regime()[v]] += cell.chance()[v] * likelihood(x, rated, cell, v, b, n);
        }
        double weight = BeforeRiding.NOISE.chance()[n] * BeforeRiding.BEST.chance()[b];
        for (int first = 0; first < 3; first++) {
          for (int second = 0; second < 3; second++) {
            double together =
                prior[first] * (prior[second] + (first == second ? 1 : 0)) / (all * (all + 1));
            sums.add(
                weight * together * byRegime[first] * byRegime[second],
                first == PriorCell.REVERSED && second == PriorCell.REVERSED ? 1 : 0,
                first == PriorCell.HOLDS && second == PriorCell.HOLDS ? 1 : 0);
          }
        }
      }
    }
    agrees(bikes, bike -> bike.effect()[0][0] < 0 && bike.effect()[1][0] < 0 ? 1 : 0, sums, 0);
    agrees(bikes, bike -> bike.effect()[0][0] > 0 && bike.effect()[1][0] > 0 ? 1 : 0, sums, 1);
  }

  /** Of the ratings of one complaint, summed over what is left of it. */
  private static double likelihood(double[] x, int[] rated, PriorCell cell, int v, int b, int n) {
    double sum = 0;
    for (int l = 0; l < BeforeRiding.LEFT.size(); l++) {
      double each = BeforeRiding.LEFT.chance()[l];
      for (int t = 0; t < x.length; t++) {
        double off = x[t] - BeforeRiding.BEST.value()[b];
        double severity = BeforeRiding.LEFT.value()[l] + cell.value()[v] * off;
        each *= chance(rated[t], severity, BeforeRiding.NOISE.value()[n]);
      }
      sum += each;
    }
    return sum;
  }
}
