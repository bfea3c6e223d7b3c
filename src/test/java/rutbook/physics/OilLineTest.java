package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class OilLineTest {

  @Property(tries = 300, seed = "31")
  void theLineGivesBackBothPoints(
      @ForAll @Scale(6) @DoubleRange(min = 5, max = 300) double kv40,
      @ForAll @Scale(6) @DoubleRange(min = 0.45, max = 0.9) double part) {
    double kv100 = part * Math.pow(kv40, 0.66);
    OilLine line = OilLine.of(kv40, kv100);
    double slip = kv100 < 2 ? 1e-3 : 1e-9 * kv100;
    assertThat(line.viscosityAt(313.15)).isCloseTo(kv40, within(1e-8 * kv40));
    assertThat(line.viscosityAt(373.15)).isCloseTo(kv100, within(slip));
  }

  @Property(tries = 300, seed = "32")
  void aWarmerOilIsThinner(@ForAll @Scale(6) @DoubleRange(min = 253.15, max = 392) double kelvin) {
    OilLine thin = OilLine.of(5, 1.7);
    assertThat(thin.viscosityAt(kelvin)).isGreaterThan(thin.viscosityAt(kelvin + 1));
  }

  @Property(tries = 500, seed = "33")
  void theInverseOfTheScaleIsExact(
      @ForAll @Scale(6) @DoubleRange(min = 0.21, max = 1.999) double viscosity) {
    assertThat(D341.viscosity(D341.z(viscosity))).isCloseTo(viscosity, within(1e-10));
    assertThat(D341.viscosity(D341.z(viscosity + 1.8))).isCloseTo(viscosity + 1.8, within(1e-3));
    assertThat(D341.viscosity(D341.z(viscosity * 1000)))
        .isCloseTo(viscosity * 1000, within(1e-9 * viscosity * 1000));
  }

  @Property(tries = 500, seed = "34")
  void theStandardsOwnFitIsNearTheExactInverse(
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 2) double viscosity) {
    assertThat(D341.fittedViscosity(D341.lowZ(viscosity)))
        .isCloseTo(viscosity, within(3e-4 * viscosity));
  }

  @Test
  void aThickerOilHasARatioAboveOne() {
    OilLine old = OilLine.of(15, 3.3);
    OilLine now = OilLine.of(32, 5.4);
    double ratio = old.ratioOf(now, 333.15);
    assertThat(ratio).isGreaterThan(1);
    assertThat(now.ratioOf(old, 333.15)).isCloseTo(1 / ratio, within(1e-12));
    assertThat(old.ratioOf(old, 300)).isEqualTo(1);
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    OilLine line = OilLine.of(15, 3.3);
    assertThatThrownBy(() -> line.viscosityAt(253)).hasMessageContaining("253");
    assertThatThrownBy(() -> line.viscosityAt(394)).hasMessageContaining("394");
    assertThatThrownBy(() -> OilLine.of(3.3, 15)).hasMessageContaining("3.3");
    assertThatThrownBy(() -> OilLine.of(10, 10)).hasMessageContaining("10.0");
    assertThatThrownBy(() -> OilLine.of(Double.NaN, 3)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> OilLine.of(50_000, 1))
        .as("a line no oil has")
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 500, seed = "35")
  void whateverIsAcceptedGivesFiniteNumbers(
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 1e5) double kv40,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 1e5) double kv100) {
    OilLine line;
    try {
      line = OilLine.of(kv40, kv100);
    } catch (IllegalArgumentException refused) {
      return;
    }
    assertThat(line.viscosityAt(OilLine.COLDEST)).isFinite().isPositive();
    assertThat(line.viscosityAt(OilLine.HOTTEST)).isFinite().isPositive();
  }
}
