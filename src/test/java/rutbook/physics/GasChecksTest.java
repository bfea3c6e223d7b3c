package rutbook.physics;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.checks.Uses;

/** The air outside, sealed gas and a fork leg's air spring against outside values. */
public class GasChecksTest {

  private static final double CELSIUS = 273.15;

  public static final Uses USES =
      new Uses()
          .use(
              "b.atm.H3000",
              row -> row.mustBe(Atmosphere.pressureAt(row.in("geopotentialAltitude_m"))))
          .use(
              "b.atm.Z2000",
              row ->
                  row.mustBe(
                      Atmosphere.pressureAt(
                          Atmosphere.geopotential(row.in("geometricAltitude_m")))))
          .use("b.atm.pub304.8", GasChecksTest::altitude)
          .use("b.atm.pub609.6", GasChecksTest::altitude)
          .use("b.atm.pub1524.0", GasChecksTest::altitude)
          .use("b.atm.pub1828.8", GasChecksTest::altitude)
          .use("b.atm.sea", GasChecksTest::altitude)
          .use(
              "b.poly.",
              row ->
                  row.mustBe(Polytropic.pressure(row.in("p0_abs_Pa"), row.in("V0/V"), row.in("n"))))
          .use(
              "b.gaylussac.",
              row ->
                  row.mustBe(
                      SealedGas.pressureAt(
                          row.in("p_abs_Pa"), row.in("t1_C") + CELSIUS, row.in("t2_C") + CELSIUS)))
          .use("b.gauge.", GasChecksTest::gauge)
          .use("b.k", GasChecksTest::stiffness)
          .use("b.fork.", GasChecksTest::fork);

  static List<Row> rows() {
    return Checks.topic("b-gas");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void theGasIsThePublishedOne(Row row) {
    USES.run(row);
  }

  private static void altitude(Row row) {
    row.mustBe(Atmosphere.pressureAt(row.in("altitude_m")));
  }

  private static void gauge(Row row) {
    row.mustBe(
        SealedGas.gaugeAt(
            row.in("gauge_at_sea_level_Pa"),
            Atmosphere.SEA_LEVEL,
            Atmosphere.pressureAt(row.in("altitude_m"))));
  }

  private static void stiffness(Row row) {
    GasColumn column = new GasColumn(row.in("p_abs_Pa"), row.in("V_m3"), row.in("A_m2"));
    row.mustBe(column.rate(0, row.in("n")));
  }

  private static void fork(Row row) {
    double diameter = row.in("boreAndRod_mm") / 1000;
    OpenBath leg =
        new OpenBath(
            diameter,
            diameter,
            row.in("airGapAtFullCompression_mm") / 1000,
            0,
            row.in("travel_mm") / 1000,
            new TrappedAir(row.in("p0_abs_Pa"), row.in("pAtm_Pa")));
    row.mustBe(leg.spring().force(row.in("x_mm") / 1000, row.in("n")));
  }
}
