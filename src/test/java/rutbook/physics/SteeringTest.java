package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class SteeringTest {

  private static final Chassis BIKE = new Chassis(0.335, 0.343, Math.toRadians(27), 0.052, 1.480);

  @Test
  void nothingChangedIsTheBikeAsMeasured() {
    Steering same = Steering.of(BIKE, 0, 0);
    assertThat(same.noseDown()).isCloseTo(0, within(1e-12));
    assertThat(same.rake()).isCloseTo(BIKE.rake(), within(1e-12));
    assertThat(same.wheelbase()).isCloseTo(1.480, within(1e-12));
  }

  @Property(tries = 300, seed = "61")
  void theRootAgreesWithTheSmallAngleFormForSmallChanges(
      @ForAll @Scale(6) @DoubleRange(min = -0.01, max = 0.01) double tube,
      @ForAll @Scale(6) @DoubleRange(min = -0.015, max = 0.015) double sag) {
    double small = (tube * Math.cos(BIKE.rake()) - sag) / BIKE.wheelbase();
    assertThat(Steering.of(BIKE, tube, sag).noseDown()).isCloseTo(small, within(2e-4));
  }

  @Property(tries = 300, seed = "62")
  void bothTyresStandOnTheGround(
      @ForAll @Scale(6) @DoubleRange(min = -0.15, max = 0.15) double tube,
      @ForAll @Scale(6) @DoubleRange(min = -0.15, max = 0.15) double sag) {
    Steering now = Steering.of(BIKE, tube, sag);
    double forward = BIKE.wheelbase() - tube * Math.sin(BIKE.rake());
    double up = 0.008 + tube * Math.cos(BIKE.rake()) - sag;
    double frontHeight = up * Math.cos(now.noseDown()) - forward * Math.sin(now.noseDown());
    assertThat(frontHeight).isCloseTo(0.008, within(1e-12));
    assertThat(now.wheelbase())
        .isCloseTo(Math.sqrt(forward * forward + up * up - 0.008 * 0.008), within(1e-12));
  }

  /** 5 mm of tube is about 0.17° and 1.2 mm of trail; 10 mm of rear sag about 0.39° and 2.7 mm. */
  @Test
  void theKnownRulesOfThumbComeOut() {
    double trail = Steering.trail(0.343, BIKE.rake(), 0.052);
    Steering front = Steering.of(BIKE, 0.005, 0);
    assertThat(Math.toDegrees(front.noseDown())).isCloseTo(0.17, within(0.005));
    assertThat((trail - front.trail()) * 1000).isCloseTo(1.2, within(0.05));
    Steering rear = Steering.of(BIKE, 0, 0.010);
    assertThat(Math.toDegrees(rear.noseDown())).isCloseTo(-0.39, within(0.005));
    assertThat((rear.trail() - trail) * 1000).isCloseTo(2.7, within(0.05));
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    assertThatThrownBy(() -> Steering.of(BIKE, 5, 0)).hasMessageContaining("5.0");
    assertThatThrownBy(() -> Steering.trail(0.343, 27, 0.052)).hasMessageContaining("27");
    assertThatThrownBy(() -> new Chassis(0.335, 0.343, 0.47, 0.052, 1480))
        .hasMessageContaining("1480");
  }

  @Test
  void aSwingThatHardlySwingsIsUnreliable() {
    assertThat(LogDecrement.ofSwings(10, 0.1, 1).unreliable()).isTrue();
    assertThat(LogDecrement.ofSwings(10, 10, 5)).isEqualTo(new LogDecrement(0, 0));
    assertThatThrownBy(() -> LogDecrement.ofSwings(10, 11, 1)).hasMessageContaining("11");
    assertThatThrownBy(() -> LogDecrement.ofSwings(10, 0, 1)).hasMessageContaining("0.0");
    assertThatThrownBy(() -> LogDecrement.ofSystem(8, 5400, 500)).hasMessageContaining("1.2");
  }

  @Test
  void aWarmRigidChamberHighUpReadsBothEffects() {
    double high = Atmosphere.pressureAt(1000);
    double both = SealedGas.gaugeAt(1e5, Atmosphere.SEA_LEVEL, high, 293.15, 313.15);
    double heat = SealedGas.pressureAt(1e5 + Atmosphere.SEA_LEVEL, 293.15, 313.15);
    assertThat(both).isCloseTo(heat - high, within(1e-9));
    assertThat(SealedGas.gaugeAt(1e5, Atmosphere.SEA_LEVEL, high, 293.15, 293.15))
        .isCloseTo(SealedGas.gaugeAt(1e5, Atmosphere.SEA_LEVEL, high), within(1e-9));
    assertThatThrownBy(() -> Atmosphere.pressureAt(12_000)).hasMessageContaining("12000");
    assertThatThrownBy(() -> SealedGas.pressureAt(1e5, 20, 40)).hasMessageContaining("20");
  }
}
