package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The shares against Pólya's urn: six rules' worth before, and each rule that showed itself. */
class RuleTrustTest {
  private static final int COMPLAINTS = 5;

  /** Five rules that all say that a dose more makes worse by 0.4, on motos of 0 and 5 doses. */
  private static RuleTrust after(int atNone, int atFive) {
    PriorCell cell = PriorCell.of(new TreeMap<>(Map.of(0.4, 1.0)), false);
    PriorCell[][] cells = new PriorCell[COMPLAINTS][];
    Arrays.setAll(cells, s -> new PriorCell[] {cell});
    double[][] x = {{0}, {5}, {0}, {5}, {0}, {5}};
    int[][] code = new int[COMPLAINTS][];
    Arrays.setAll(code, s -> new int[] {atNone, atFive, atNone, atFive, atNone, atFive});
    RecentRatings ratings =
        new RecentRatings(x, new double[1], new double[6], 0, new int[6], new int[6], code);
    return RuleTrust.of(
        new PlausibleBikes(
            new BikeSampler(
                    cells, new double[][] {{-20, 20}}, ratings, new OldEvidence[COMPLAINTS], 3)
                .draw(300, 3000)));
  }

  @Test
  void rulesThatShowThemselvesReversedAreCountedAndSaid() {
    RuleTrust trust = after(4, 2);
    assertThat(trust.reversed()).isCloseTo((0.6 + COMPLAINTS) / (6 + COMPLAINTS), within(0.03));
    assertThat(trust.isLess()).isTrue();
  }

  @Test
  void rulesThatHoldAreCountedTooAndNothingIsSaid() {
    RuleTrust trust = after(2, 4);
    assertThat(trust.holds()).isCloseTo((4.68 + COMPLAINTS) / (6 + COMPLAINTS), within(0.03));
    assertThat(trust.isLess()).isFalse();
  }

  @Test
  void beforeAnyMotoAsManyAsUsualAreReversed() {
    assertThat(RuleTrust.USUAL.reversed()).isCloseTo(0.1, within(1e-12));
    assertThat(RuleTrust.USUAL.isLess()).isFalse();
  }
}
