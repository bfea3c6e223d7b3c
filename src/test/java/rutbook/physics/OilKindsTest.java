package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import rutbook.physics.ViscosityIndex.Procedure;

/** Index, grades, blends and levels: what the outside values do not say. */
class OilKindsTest {

  @Test
  void anIndexFromBetweenTheCarriedRowsIsAnEstimate() {
    IndexAnswer answer = ViscosityIndex.of(15, 3.6);
    assertThat(answer).isInstanceOf(ViscosityIndex.class);
    ViscosityIndex index = (ViscosityIndex) answer;
    assertThat(index.estimate()).isTrue();
    assertThat(index.procedure()).isEqualTo(Procedure.B);
    assertThat(index.value()).isBetween(100.0, 150.0);
  }

  @Test
  void anIndexThatNeedsARowNotCarriedIsLeftOut() {
    assertThat(ViscosityIndex.of(32, 4.5))
        .isEqualTo(new IndexAnswer.None(IndexAnswer.Why.ROW_NOT_CARRIED));
  }

  /** Each carried row left out and estimated from its neighbours moves an index by under ten. */
  @Test
  void theEstimateIsWithinAboutTenPoints() {
    double[][] triples = {{3, 4, 5}, {4, 5, 7.8}, {5, 7.8, 8.9}};
    for (double[] t : triples) {
      double part = (t[1] - t[0]) / (t[2] - t[0]);
      double below = ReferenceOils.at(t[0]).h() / t[0];
      double above = ReferenceOils.at(t[2]).h() / t[2];
      double guess = t[1] * (below + part * (above - below));
      double kv40 = 0.7 * guess;
      double off =
          ViscosityIndex.procedureB(guess, kv40, t[1])
              - ViscosityIndex.procedureB(ReferenceOils.at(t[1]).h(), kv40, t[1]);
      assertThat(Math.abs(off)).as("row %s", t[1]).isLessThan(10);
    }
  }

  @Property(tries = 500, seed = "41")
  void whateverIsAcceptedGivesAFiniteIndexOrNone(
      @ForAll @Scale(6) @DoubleRange(min = 0.21, max = 1000) double kv100,
      @ForAll @Scale(6) @DoubleRange(min = 1.0001, max = 1000) double times) {
    IndexAnswer answer = ViscosityIndex.of(kv100 * times, kv100);
    if (answer instanceof ViscosityIndex index) {
      assertThat(index.value()).isFinite();
    } else {
      assertThat(answer).isInstanceOf(IndexAnswer.None.class);
    }
  }

  @Test
  void anOilThatThickensWhenWarmHasNoIndex() {
    assertThatThrownBy(() -> ViscosityIndex.of(5, 5)).hasMessageContaining("5.0");
  }

  @Test
  void viscositiesInAGapHaveNoGrade() {
    assertThat(ViscosityGrade.of(17.5)).as("between 15 and 22").isEmpty();
    assertThat(ViscosityGrade.of(16.5)).contains(ViscosityGrade.VG15);
    assertThat(ViscosityGrade.of(1)).isEmpty();
    assertThatThrownBy(() -> ViscosityGrade.of(-1)).hasMessageContaining("-1");
  }

  @Property(tries = 300, seed = "42")
  void aBlendLiesBetweenItsPartsAndBelowTheLinearMean(
      @ForAll @Scale(6) @DoubleRange(min = 2, max = 100) double first,
      @ForAll @Scale(6) @DoubleRange(min = 1.05, max = 5) double times,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.99) double part) {
    double second = first * times;
    Blend blend = Blend.of(first, second, part);
    double linear = part * first + (1 - part) * second;
    assertThat(blend.doubleLog()).isBetween(first, second).isLessThan(linear);
    assertThat(blend.refutas()).isBetween(first, second).isLessThan(linear);
    assertThat(blend.doubleLog())
        .isCloseTo(Blend.of(second, first, 1 - part).doubleLog(), within(1e-9 * second));
  }

  @Test
  void allOfOneOilIsThatOil() {
    assertThat(Blend.of(15, 32, 1).doubleLog()).isCloseTo(15, within(1e-9));
    assertThat(Blend.of(15, 32, 0).refutas()).isCloseTo(32, within(1e-9));
    assertThatThrownBy(() -> Blend.of(15, 32, 1.1)).hasMessageContaining("1.1");
  }

  @Property(tries = 200, seed = "43")
  void levelAndVolumeAreInverses(
      @ForAll @Scale(6) @DoubleRange(min = -0.2, max = 0.2) double change,
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.06) double bore) {
    double volume = OilLevel.volume(change, bore, bore / 3);
    assertThat(OilLevel.level(volume, bore, bore / 3)).isCloseTo(change, within(1e-15));
  }

  @Test
  void aRodAsWideAsTheBoreIsRefused() {
    assertThatThrownBy(() -> OilLevel.volume(0.01, 0.046, 0.046)).hasMessageContaining("0.046");
  }
}
