package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.checks.Uses;

/**
 * The air outside against the US Standard Atmosphere 1976 (its formula and printed tables), sealed
 * gas and a fork leg's air spring against the same laws computed with numpy 2.4.6 and scipy 1.17.1;
 * every row of checks.json names its own source, which a failure says.
 */
public class GasChecksTest {

  private static final double CELSIUS = 273.15;

  public static final Uses USES =
      new Uses()
          .use("b.atm.H3000", gives(row -> Atmosphere.pressureAt(row.in("geopotentialAltitude_m"))))
          .use(
              "b.atm.Z2000",
              gives(
                  row ->
                      Atmosphere.pressureAt(
                          Atmosphere.geopotential(row.in("geometricAltitude_m")))))
          .use("b.atm.pub304.8", gives(GasChecksTest::altitude))
          .use("b.atm.pub609.6", gives(GasChecksTest::altitude))
          .use("b.atm.pub1524.0", gives(GasChecksTest::altitude))
          .use("b.atm.pub1828.8", gives(GasChecksTest::altitude))
          .use("b.atm.sea", gives(GasChecksTest::altitude))
          .use(
              "b.poly.",
              gives(row -> Polytropic.pressure(row.in("p0_abs_Pa"), row.in("V0/V"), row.in("n"))))
          .use(
              "b.gaylussac.",
              gives(
                  row ->
                      SealedGas.pressureAt(
                          row.in("p_abs_Pa"), row.in("t1_C") + CELSIUS, row.in("t2_C") + CELSIUS)))
          .use("b.gauge.", gives(GasChecksTest::gauge))
          .use("b.k", gives(GasChecksTest::stiffness))
          .use("b.fork.", gives(GasChecksTest::fork));

  static List<Row> rows() {
    return Checks.topic("b-gas");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void theGasIsThePublishedOne(Row row) {
    USES.run(row);
  }

  /** What is reckoned is what the row's source has, within the row's tolerance. */
  private static Consumer<Row> gives(ToDoubleFunction<Row> reckoned) {
    return row ->
        assertThat(reckoned.applyAsDouble(row))
            .as("%s in %s, by %s", row.id(), row.unit(), row.source())
            .isCloseTo(row.value(), row.near());
  }

  private static double altitude(Row row) {
    return Atmosphere.pressureAt(row.in("altitude_m"));
  }

  private static double gauge(Row row) {
    return SealedGas.gaugeAt(
        row.in("gauge_at_sea_level_Pa"),
        Atmosphere.SEA_LEVEL,
        Atmosphere.pressureAt(row.in("altitude_m")));
  }

  private static double stiffness(Row row) {
    GasColumn column = new GasColumn(row.in("p_abs_Pa"), row.in("V_m3"), row.in("A_m2"));
    return column.rate(0, row.in("n"));
  }

  private static double fork(Row row) {
    double diameter = row.in("boreAndRod_mm") / 1000;
    OpenBath leg =
        new OpenBath(
            diameter,
            diameter,
            row.in("airGapAtFullCompression_mm") / 1000,
            0,
            row.in("travel_mm") / 1000,
            new TrappedAir(row.in("p0_abs_Pa"), row.in("pAtm_Pa")));
    return leg.spring().force(row.in("x_mm") / 1000, row.in("n"));
  }
}
