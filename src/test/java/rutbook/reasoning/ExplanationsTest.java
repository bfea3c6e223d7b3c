package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/**
 * Mistakes are held to Hipparchus' normal distribution, the limit to a search for where they meet.
 */
class ExplanationsTest {
  private static final Explanations.Move MORE = new Explanations.Move(0, 2);
  private static final Explanations.Move LESS = new Explanations.Move(0, -2);
  private static final Explanations.Move OTHER = new Explanations.Move(1, 2);

  /** One complaint, two settings. */
  private static PlausibleBikes.Bike bike(double here, double one, double other) {
    return new PlausibleBikes.Bike(
        new double[] {here}, new double[][] {{one, other}}, new double[1], RuleTrust.USUAL);
  }

  private static List<PlausibleBikes.Bike> bikes(int some, PlausibleBikes.Bike each) {
    return java.util.Collections.nCopies(some, each);
  }

  private static Optional<Explanations> of(List<PlausibleBikes.Bike> one, int n, double other) {
    List<PlausibleBikes.Bike> all = new ArrayList<>(one);
    all.addAll(bikes(n, bike(3, other, 0)));
    return Explanations.of(
        all,
        List.of(MORE, LESS, OTHER),
        (bike, move) ->
            Math.max(0, bike.here()[0])
                - Math.max(0, bike.here()[0] + move.doses() * bike.effect()[0][move.setting()]));
  }

  @Test
  void twoRemediesAreAsLikelyWhenEachWouldHelpMostOnHalfOfTheBikes() {
    Explanations two = of(bikes(60, bike(3, -0.5, 0)), 40, 0.5).orElseThrow();
    assertThat(two.first().move().isLike(MORE)).isTrue();
    assertThat(two.second().move().isLike(LESS)).isTrue();
    assertThat(two.first().chance()).isEqualTo(0.6);
    assertThat(two.second().chance()).isEqualTo(0.4);
  }

  @Test
  void whatIsMuchLikelierThanAnythingElseNeedsNoTest() {
    assertThat(of(bikes(80, bike(3, -0.5, 0)), 20, 0.5)).isEmpty();
    assertThat(of(bikes(80, bike(3, -0.5, 0)), 20, -0.4)).isEmpty();
    assertThat(of(bikes(60, bike(3, 0, 0)), 40, 0)).isEmpty();
  }

  @Property(tries = 50, seed = "41")
  void atItsLimitEitherIsMistakenForTheOtherAsOften(
      @ForAll @DoubleRange(min = 0.4, max = 0.7) double size) {
    Explanations two = of(bikes(50, bike(3, -size, 0)), 50, size).orElseThrow();
    Explanations.Sign sign = two.sign(MORE, 1).orElseThrow();
    double low = 3 - 2 * size;
    double high = 3 + 2 * size;
    double ifUnder =
        1 - new NormalDistribution(low, Explanations.NOISE).cumulativeProbability(sign.limit());
    double ifOver =
        new NormalDistribution(high, Explanations.NOISE).cumulativeProbability(sign.limit());
    assertThat(sign.firstUnder()).isEqualTo(two.first().move().doses() > 0);
    assertThat(ifUnder).isCloseTo(sign.mistaken(), within(1e-9));
    assertThat(ifOver).isCloseTo(sign.mistaken(), within(1e-9));
  }

  @Test
  void whereTheRatingWouldBeTheSameNothingIsTold() {
    Explanations two = of(bikes(50, bike(3, -0.5, 0)), 50, 0.5).orElseThrow();
    assertThat(two.sign(OTHER, 1)).isEmpty();
    assertThat(two.sign(MORE, 0)).isEmpty();
    assertThat(two.sign(new Explanations.Move(0, 1), 1)).isEmpty();
  }
}
