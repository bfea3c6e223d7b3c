package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.checks.Uses;
import rutbook.physics.MotionRatio.Convention;

/** Sag, wheel rate and preload against outside values. */
public class SagChecksTest {

  public static final Uses USES =
      new Uses()
          .use("d.static.630", SagChecksTest::twoLengths)
          .use("d.preload.35", SagChecksTest::preload)
          .use("d.wheelrate.", SagChecksTest::wheelRate)
          .use("d.mr.1.25", SagChecksTest::writtenTheOtherWay)
          .use("d.rule.", SagChecksTest::springAndPreload)
          .use("d.K.from.sags", SagChecksTest::wheelRateFromSags)
          .use("d.collar", SagChecksTest::collar)
          .use("d.range.race.", row -> windowAgrees(row, SagWindow.RACE))
          .use("d.range.static.", row -> windowAgrees(row, SagWindow.FREE));

  static List<Row> rows() {
    return Checks.topic("d-sag");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void theSagIsThePublishedOne(Row row) {
    USES.run(row);
  }

  private static void twoLengths(Row row) {
    row.mustBe(Sag.of(row.in("extended") / 1000, row.in("settled") / 1000).sag() * 1000);
  }

  private static void preload(Row row) {
    row.mustBe(
        1000
            * Preload.forSag(
                row.in("springCompressionNeeded_mm") / 1000, row.in("sagWanted_mm") / 1000));
  }

  private static void wheelRate(Row row) {
    MotionRatio ratio =
        new MotionRatio(row.in("MR=spring/wheel travel"), Convention.SPRING_OVER_WHEEL);
    row.mustBe(ratio.wheelRate(row.in("springRate")));
    assertThat(ratio.springRateFor(ratio.wheelRate(50))).isCloseTo(50, within(1e-12));
  }

  private static void writtenTheOtherWay(Row row) {
    row.mustBe(
        new MotionRatio(row.in("ratio=wheel/spring travel"), Convention.WHEEL_OVER_SPRING)
            .wheelRate(1));
  }

  private static void springAndPreload(Row row) {
    assertThat(row.text("MR")).isEqualTo("1/3");
    SagWorksheet.Fitted fitted =
        SagWorksheet.with(
            row.in("springRate_N/mm") * 1000,
            new MotionRatio(1.0 / 3, Convention.SPRING_OVER_WHEEL),
            row.in("bikeLoadAtRearWheel_N"),
            row.in("riderLoadAtRearWheel_N"),
            row.in("raceSag_mm") / 1000);
    row.mustBe("preloadAtSpring_mm", fitted.preload() * 1000);
    row.mustBe("staticSag_mm", fitted.freeSag() * 1000);
  }

  private static void wheelRateFromSags(Row row) {
    row.mustBe(
        SagWorksheet.wheelRate(
                row.in("riderLoadAtRearWheel_N"),
                row.in("raceSag_mm") / 1000,
                row.in("staticSag_mm") / 1000)
            / 1000);
  }

  private static void collar(Row row) {
    assertThat(row.text("MR")).isEqualTo("1/3");
    MotionRatio third = new MotionRatio(1.0 / 3, Convention.SPRING_OVER_WHEEL);
    double pitch = row.in("threadPitch_mm") / 1000;
    row.mustBe(1000 * row.in("turns") * Preload.sagPerTurn(pitch, third));
    assertThat(Preload.turns(0.003, pitch, third)).isCloseTo(row.in("turns"), within(1e-12));
  }

  /** Common practice differs: the window used must share at least 5 mm with each that is said. */
  private static void windowAgrees(Row row, SagWindow window) {
    double[] said = row.expectedList("");
    double shared =
        Math.min(window.most() * 1000, said[1]) - Math.max(window.least() * 1000, said[0]);
    assertThat(shared).as("%s", row).isGreaterThanOrEqualTo(5 - 1e-9);
  }
}
