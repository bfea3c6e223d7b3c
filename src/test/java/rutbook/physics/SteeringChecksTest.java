package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.checks.Uses;

/** Steering geometry and logarithmic decrement against outside values. */
public class SteeringChecksTest {

  public static final Uses GEOMETRY =
      new Uses()
          .use("c.trail.", SteeringChecksTest::trail)
          .use("c.pitch.", SteeringChecksTest::pitch);

  public static final Uses DECREMENT =
      new Uses()
          .use("i.logdec.", SteeringChecksTest::decrement)
          .use("i.pub.zeta", row -> row.mustBe(system(row).dampingRatio()))
          .use("i.full", SteeringChecksTest::wholeSystem);

  static List<Row> geometryRows() {
    return Checks.topic("c-geometry");
  }

  static List<Row> decrementRows() {
    return Checks.topic("i-logdec");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("geometryRows")
  void theGeometryIsTheComputedOne(Row row) {
    GEOMETRY.run(row);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("decrementRows")
  void theDecrementIsThePublishedOne(Row row) {
    DECREMENT.run(row);
  }

  private static void trail(Row row) {
    double radius = row.in("R_mm") / 1000;
    double rake = Math.toRadians(row.in("rake_deg"));
    double offset = row.in("offset_mm") / 1000;
    row.mustBe("trail", 1000 * Steering.trail(radius, rake, offset));
    row.mustBe("normalTrail", 1000 * Steering.normalTrail(radius, rake, offset));
  }

  private static void pitch(Row row) {
    Chassis chassis =
        new Chassis(
            row.in("Rr_mm") / 1000,
            row.in("Rf_mm") / 1000,
            Math.toRadians(row.in("rake_deg")),
            row.in("offset_mm") / 1000,
            row.in("wheelbase_mm") / 1000);
    Steering now =
        Steering.of(chassis, row.in("forkShorter_mm") / 1000, row.in("rearLower_mm") / 1000);
    row.mustBe("noseDown_deg", Math.toDegrees(now.noseDown()));
    row.mustBe("rake", Math.toDegrees(now.rake()));
    row.mustBe("trail", now.trail() * 1000);
    row.mustBe("normalTrail", now.normalTrail() * 1000);
    row.mustBe("wheelbase", now.wheelbase() * 1000);
  }

  private static void decrement(Row row) {
    LogDecrement swing = LogDecrement.ofSwings(row.in("x0"), row.in("xn"), (int) row.in("n"));
    row.mustBe("delta", swing.decrement());
    row.mustBe("zeta", swing.dampingRatio());
    assertThat(swing.unreliable()).isFalse();
  }

  private static LogDecrement system(Row row) {
    return LogDecrement.ofSystem(row.in("m_kg"), row.in("k_N/m"), row.in("c_Ns/m"));
  }

  private static void wholeSystem(Row row) {
    row.mustBe("cc", LogDecrement.criticalDamping(row.in("m_kg"), row.in("k_N/m")));
    row.mustBe("zeta", system(row).dampingRatio());
    row.mustBe("delta", system(row).decrement());
    row.mustBe("ratio", system(row).ratio());
  }
}
