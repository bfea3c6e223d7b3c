package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import rutbook.physics.MotionRatio.Convention;
import rutbook.physics.SagWorksheet.Fitted;
import rutbook.physics.SagWorksheet.Neighbours;
import rutbook.physics.SagWorksheet.Plan;
import rutbook.physics.SagWorksheet.Range;

class SagWorksheetTest {

  private static final MotionRatio THIRD = new MotionRatio(1.0 / 3, Convention.SPRING_OVER_WHEEL);

  private static SagWorksheet today(double race, double free) {
    return new SagWorksheet(600, race, free, 54_000, 0.010, THIRD);
  }

  @Test
  void theMiddleOfTwoLengthsTakesFrictionOut() {
    Sag sag = Sag.of(0.630, 0.520, 0.530);
    assertThat(sag.sag()).isCloseTo(0.105, within(1e-12));
    assertThat(sag.friction()).isCloseTo(0.010, within(1e-12));
    assertThat(Sag.of(0.63, 0.6).friction()).isZero();
    assertThatThrownBy(() -> Sag.of(630, 600)).hasMessageContaining("630");
  }

  @Property(tries = 200, seed = "51")
  void todaysSagsAsTargetsGiveBackTodaysSpring(
      @ForAll @Scale(6) @DoubleRange(min = 0.08, max = 0.13) double race,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double free,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.03) double preload,
      @ForAll @Scale(6) @DoubleRange(min = 300, max = 900) double rider) {
    SagWorksheet sheet = new SagWorksheet(rider, race, free, 54_000, preload, THIRD);
    Plan same = sheet.meeting(race, free);
    assertThat(same.rate().middle()).isCloseTo(54_000, within(1e-6));
    assertThat(same.preload()).isCloseTo(preload, within(1e-12));
    assertThat(same.share()).isCloseTo(0, within(1e-12));
  }

  @Property(tries = 200, seed = "52")
  void thePlannedSpringMeetsBothTargets(
      @ForAll @Scale(6) @DoubleRange(min = 0.095, max = 0.11) double race,
      @ForAll @Scale(6) @DoubleRange(min = 0.025, max = 0.04) double free) {
    SagWorksheet sheet = today(0.104, 0.018);
    Plan plan = sheet.meeting(race, free);
    Fitted fitted = sheet.with(plan.rate().middle(), race);
    assertThat(fitted.freeSag()).isCloseTo(free, within(1e-12));
    assertThat(fitted.preload()).isCloseTo(plan.preload(), within(1e-12));
  }

  /** The figures of the design: race 105, free 15: to 25 is +12 %, to 35 is +29 %. */
  @Test
  void theNearestEdgeOfTheFreeSagWindowAsksForFarLessThanItsMiddle() {
    SagWorksheet sheet = today(0.105, 0.015);
    assertThat(sheet.meeting(0.105, 0.025).share()).isCloseTo(0.125, within(1e-9));
    assertThat(sheet.meeting(0.105, 0.035).share()).isCloseTo(0.2857, within(1e-4));
    assertThat(sheet.meeting(0.105, SagWindow.FREE)).isEqualTo(sheet.meeting(0.105, 0.025));
  }

  @Test
  void twoMillimetresOnEachSagAreAboutSixPerCentOfTheRate() {
    Range rate = today(0.105, 0.035).wheelRate();
    assertThat(rate.middle()).isCloseTo(600 / 0.07, within(1e-9));
    assertThat(rate.most() / rate.middle() - 1).isBetween(0.055, 0.065);
    assertThat(1 - rate.least() / rate.middle()).isBetween(0.05, 0.06);
    Range spring = today(0.105, 0.035).meeting(0.105, 0.035).rate();
    assertThat(spring.least()).isLessThan(spring.middle());
    assertThat(spring.most() / spring.middle() - 1).isCloseTo(4.0 / 70, within(1e-9));
  }

  @Test
  void theSameSpringWithMorePreloadSitsHigher() {
    SagWorksheet sheet = today(0.105, 0.035);
    Fitted same = sheet.with(54_000, 0.105);
    assertThat(same.freeSag()).isCloseTo(0.035, within(1e-12));
    Fitted higher = sheet.with(54_000, 0.100);
    assertThat(higher.preload() - same.preload()).isCloseTo(0.005 / 3, within(1e-12));
    assertThat(higher.freeSag()).isCloseTo(0.030, within(1e-12));
    assertThat(sheet.wheelRateOfSpring()).isCloseTo(6000, within(1e-9));
  }

  @Test
  void freeSagSpeaksOfTheSpringOnlyWhenRaceSagIsRight() {
    assertThat(SpringVerdict.of(0.105, SagWindow.RACE, 0.010, SagWindow.FREE))
        .contains(SpringVerdict.TOO_SOFT);
    assertThat(SpringVerdict.of(0.105, SagWindow.RACE, 0.050, SagWindow.FREE))
        .contains(SpringVerdict.TOO_STIFF);
    assertThat(SpringVerdict.of(0.105, SagWindow.RACE, 0.030, SagWindow.FREE))
        .contains(SpringVerdict.RIGHT);
    assertThat(SpringVerdict.of(0.120, SagWindow.RACE, 0.010, SagWindow.FREE)).isEmpty();
  }

  @Test
  void theNearestSpringsStandEitherSide() {
    List<Double> list = List.of(60_000.0, 50_000.0, 54_000.0);
    assertThat(SagWorksheet.nearest(55_000, list))
        .isEqualTo(new Neighbours(Optional.of(54_000.0), Optional.of(60_000.0)));
    assertThat(SagWorksheet.nearest(54_000, list))
        .isEqualTo(new Neighbours(Optional.of(54_000.0), Optional.of(54_000.0)));
    assertThat(SagWorksheet.nearest(70_000, list).stiffer()).isEmpty();
    assertThat(SagWorksheet.nearest(54_000, List.of()))
        .isEqualTo(new Neighbours(Optional.empty(), Optional.empty()));
  }

  @Test
  void oneRatioWrittenBothWaysIsTheSame() {
    MotionRatio three = new MotionRatio(3, Convention.WHEEL_OVER_SPRING);
    assertThat(three.wheelRate(54_000)).isCloseTo(THIRD.wheelRate(54_000), within(1e-9));
    assertThat(new MotionRatio(3, Convention.SPRING_OVER_WHEEL).wheelRate(1)).isEqualTo(9);
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    assertThatThrownBy(() -> today(0.03, 0.03)).hasMessageContaining("was 0.0");
    assertThatThrownBy(() -> today(105, 30)).hasMessageContaining("105");
    assertThatThrownBy(() -> new MotionRatio(0, Convention.SPRING_OVER_WHEEL))
        .hasMessageContaining("0.0");
    assertThatThrownBy(() -> new SagWindow(0.04, 0.03)).hasMessageContaining("0.03");
  }

  @Property(tries = 300, seed = "53")
  void whateverIsAcceptedGivesFiniteNumbers(
      @ForAll @Scale(6) @DoubleRange(min = 50, max = 5000) double rider,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1) double race,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double part,
      @ForAll @Scale(6) @DoubleRange(min = 100, max = 1e6) double rate,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 20) double ratio) {
    double free = Math.max(0, (race - 0.0101) * part);
    SagWorksheet sheet;
    try {
      sheet =
          new SagWorksheet(
              rider, race, free, rate, 0.2, new MotionRatio(ratio, Convention.WHEEL_OVER_SPRING));
    } catch (IllegalArgumentException refused) {
      assertThat(race - free).isLessThan(0.0101);
      return;
    }
    Plan plan = sheet.meeting(0.105, SagWindow.FREE);
    assertThat(plan.rate().least()).isFinite().isPositive();
    assertThat(plan.rate().most()).isFinite();
    assertThat(plan.preload()).isFinite();
    assertThat(sheet.with(rate, race).freeSag()).isFinite();
    assertThat(sheet.wheelRate().most()).isFinite();
  }

  @Test
  void turnsOfTheCollarFollowPitchAndRatio() {
    assertThat(Preload.turns(0.003, 0.0015, THIRD)).isCloseTo(2.0 / 3, within(1e-12));
    assertThat(Preload.turns(-0.006, 0.001, THIRD)).as("less preload").isCloseTo(-2, within(1e-12));
    assertThat(Preload.turns(0, 0.001, THIRD)).isZero();
    assertThatThrownBy(() -> Preload.sagPerTurn(1, THIRD)).hasMessageContaining("1.0");
  }
}
