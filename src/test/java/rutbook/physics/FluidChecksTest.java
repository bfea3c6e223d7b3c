package rutbook.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.checks.Uses;

/** Viscosity, its index, grades and blends, and oil levels against outside values. */
public class FluidChecksTest {

  public static final Uses VISCOSITY =
      new Uses()
          .use("a.vi.A.raw", row -> row.mustBe(index(row).value()))
          .use("a.vi.A.rounded", row -> row.mustBe(index(row).whole()))
          .use("a.vi.A.unrounded", row -> row.mustBe(index(row).value()))
          .use("a.vi.B.H", row -> row.mustBe(ReferenceOils.at(row.in("KV100")).h()))
          .use(
              "a.vi.B.N",
              row ->
                  row.mustBe(
                      ViscosityIndex.exponentB(row.in("H"), row.in("KV40"), row.in("KV100"))))
          .use("a.vi.B.rounded", row -> row.mustBe(index(row).whole()))
          .use("a.vi.B.printed", row -> row.mustBe(index(row).value()))
          .use("a.vi.B.unrounded", row -> row.mustBe(index(row).value()))
          .use("a.vi.B.2", row -> row.mustBe(index(row).value()))
          .use("a.vi.table.", FluidChecksTest::tableRow)
          .use("a.vi.above70", row -> row.mustBe(index(row).value()))
          .use("a.vi.undefined", FluidChecksTest::undefinedIndex)
          .use("a.d341.pub.B", row -> row.mustBe(lineOfSheet(row).b()))
          .use("a.d341.pub.v80", row -> row.mustBe(lineOfSheet(row).viscosityAt(kelvin(row, "t"))))
          .use("a.d341.32_5.4.", FluidChecksTest::lineOfOil)
          .use("a.d341.15_3.3.", FluidChecksTest::lineOfOil)
          .use("a.d341.22.83_5.05.", FluidChecksTest::lineOfOil)
          .use("a.d341.73.3_8.86.", FluidChecksTest::lineOfOil)
          .use("a.d341.46_6.8.", FluidChecksTest::lineOfOil)
          .use("a.d341.Z.", row -> row.mustBe(D341.lowZ(row.in("nu"))))
          .use("a.d341.Zinv.1", row -> row.mustBe(D341.fittedViscosity(row.in("Z"))))
          .use("a.blend.walther.", FluidChecksTest::blend)
          .use("a.blend.refutas.vbn5", row -> row.mustBe(Blend.refutasIndex(row.in("nu"))))
          .use("a.blend.refutas.2234", row -> row.mustBe(Blend.refutasIndex(row.in("nu"))))
          .use("a.iso3448.", FluidChecksTest::grade);

  public static final Uses OIL =
      new Uses()
          .use("f.bore.", FluidChecksTest::oilLevel)
          .use("f.annulus", FluidChecksTest::oilLevel);

  static List<Row> viscosityRows() {
    return Checks.topic("a-viscosity");
  }

  static List<Row> oilRows() {
    return Checks.topic("f-oil").stream().filter(row -> !row.id().contains("interval")).toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("viscosityRows")
  void theViscosityIsThePublishedOne(Row row) {
    VISCOSITY.run(row);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("oilRows")
  void theOilIsThePublishedOne(Row row) {
    OIL.run(row);
  }

  private static ViscosityIndex index(Row row) {
    IndexAnswer answer = ViscosityIndex.of(row.in("KV40"), row.in("KV100"));
    assertThat(answer).as("%s", row).isInstanceOf(ViscosityIndex.class);
    ViscosityIndex index = (ViscosityIndex) answer;
    assertThat(index.estimate()).as("%s is no estimate", row).isFalse();
    return index;
  }

  private static void tableRow(Row row) {
    ReferenceOils.Reference reference = ReferenceOils.at(row.in("KV100"));
    row.mustBe("L", reference.l().orElseThrow());
    row.mustBe("H", reference.h());
    assertThat(reference.estimate()).isFalse();
  }

  private static void undefinedIndex(Row row) {
    assertThat(row.expected().isNull()).isTrue();
    assertThat(ViscosityIndex.of(row.in("KV40"), row.in("KV100")))
        .isEqualTo(new IndexAnswer.None(IndexAnswer.Why.TOO_THIN));
  }

  private static OilLine lineOfSheet(Row row) {
    return OilLine.through(kelvin(row, "t1"), row.in("v1"), kelvin(row, "t2"), row.in("v2"));
  }

  /** The row says itself how it makes kelvin; one published sheet adds 273. */
  private static double kelvin(Row row, String name) {
    return row.in(name) + row.in("kelvinOffset");
  }

  private static void lineOfOil(Row row) {
    row.mustBe(OilLine.of(row.in("KV40"), row.in("KV100")).viscosityAt(kelvin(row, "t_C")));
  }

  private static void blend(Row row) {
    row.mustBe(Blend.of(row.in("nu1"), row.in("nu2"), row.in("volFraction1")).doubleLog());
  }

  private static void grade(Row row) {
    ViscosityGrade grade = ViscosityGrade.valueOf("VG" + (int) row.in("VG"));
    row.mustBe("min", grade.least());
    row.mustBe("mid", grade.middle());
    row.mustBe("max", grade.most());
    assertThat(ViscosityGrade.of(grade.middle())).contains(grade);
  }

  private static void oilLevel(Row row) {
    double rod = row.has("rod_mm") ? row.in("rod_mm") / 1000 : 0;
    double cubicMetres = OilLevel.volume(row.in("dh_mm") / 1000, row.in("bore_mm") / 1000, rod);
    row.mustBe(cubicMetres * 1e6);
  }
}
