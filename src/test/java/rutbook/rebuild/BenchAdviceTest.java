package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.figures.Need;
import rutbook.figures.Riding;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Job;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.reasoning.RuleBook;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.KinematicViscosity;
import rutbook.units.SpringRate;
import rutbook.words.Phrases;
import rutbook.words.RemarkWords;

class BenchAdviceTest {
  private static final Sheet SHEET = Bench.sheet();
  private static final OilId THIN = new OilId("thin");
  private static final OilId THICK = new OilId("thick");

  private static Oil oil(OilId id, String kv40, String kv100) {
    return new Oil(id, id.text(), Optional.of(viscosity(kv40)), Optional.of(viscosity(kv100)));
  }

  private static Amount viscosity(String number) {
    return Amount.of(number, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND);
  }

  private static Job oilJob(Scope scope, OilId oil) {
    return new Job(
        scope,
        Set.of(Renewed.OIL),
        Bench.FIRST_BASELINE,
        Bench.setup(),
        SHEET.from(),
        Optional.ofNullable(oil));
  }

  private static BenchAdvice advice(RuleBook rules, Job... before) {
    return new BenchAdvice(
        new Riding(Optional.of(mm("70")), Optional.of(mm("0"))),
        Optional.of(mm("104")),
        List.of(oil(THIN, "13.1", "3.2"), oil(THICK, "18.6", "4.4")),
        List.of(before),
        rules);
  }

  private static Setting setting(SettingId id) {
    return SHEET.setting(id).orElseThrow();
  }

  private static List<Remark> shortOf(RuleBook rules, SettingId id, Reading wanted, Reading held) {
    Setup reached = Bench.setup().with(Placed.found(id, held));
    return advice(rules).onShortfall(SHEET, reached, setting(id), wanted);
  }

  /**
   * Worked by hand: 506 mL of stroke in a chamber reckoned for a ratio of 6 at 380 mL leave 101 mL;
   * 5 mL more leave 96 mL, and (6^1.3 − 1)/(6.26^1.3 − 1) is 5.9 % less; the air takes 3.2 J less
   * of 305 J with the coil.
   */
  @Test
  void fiveMillilitresShortSoftenTheEndAndHardlyTouchTheEnergy() {
    List<Remark> remarks =
        shortOf(
            RuleBook.none(),
            Bench.FORK_OIL,
            Reading.bothLegs(ml("385")),
            Reading.bothLegs(ml("380")));
    Remark.Curve curve = (Remark.Curve) remarks.get(0);
    assertThat(curve.endAirForce()).isCloseTo(-0.059, within(0.001));
    assertThat(curve.totalEnergy()).isCloseTo(-0.0106, within(0.0003));
    assertThat(curve.estimate()).isTrue();
    assertThat(remarks).as("no step of a spring is that fine").hasSize(1);
  }

  @Test
  void aLargeShortfallOfOilIsGivenBackByTheSpringTheCurveSays() {
    List<Remark> remarks =
        shortOf(
            RuleBook.none(),
            Bench.FORK_OIL,
            Reading.bothLegs(ml("380")),
            Reading.bothLegs(ml("340")));
    Remark.MakesUp spring = (Remark.MakesUp) remarks.get(1);
    assertThat(spring.setting().id()).isEqualTo(Bench.FORK_SPRING);
    assertThat(spring.basis()).isEqualTo(Remark.Basis.CURVE);
    assertThat(spring.part().orElseThrow()).isBetween(0.5, 1.5);
    assertThat(spring.to().amounts().get(0).compareQuantity(spring.from().amounts().get(0)))
        .isPositive();
    assertThat(SHEET.limits(spring.setting()).contains(spring.to().amounts().get(0))).isTrue();
  }

  @Test
  void theRulesNameTheClickerThatIsQuickestToReach() {
    List<Remark> remarks =
        shortOf(
            RulesJson.ofTheTrade(),
            Bench.FORK_OIL,
            Reading.bothLegs(ml("385")),
            Reading.bothLegs(ml("380")));
    Remark.MakesUp clicker = (Remark.MakesUp) remarks.get(remarks.size() - 1);
    assertThat(clicker.setting().id()).isEqualTo(Bench.FORK_COMPRESSION);
    assertThat(clicker.basis()).isEqualTo(Remark.Basis.RULE);
    assertThat(clicker.against()).contains(Symptom.BOTTOMS);
    assertThat(clicker.from()).isEqualTo(clicks(12, 12));
    assertThat(clicker.to()).as("0.4 points a dose against 0.25").isEqualTo(clicks(10, 10));
  }

  private static Reading clicks(int left, int right) {
    return Reading.of(Bench.clicks(left), Bench.clicks(right));
  }

  @Test
  void aClickerAtItsStopHasAStandInTooAndNeverItself() {
    List<Remark> remarks =
        shortOf(RulesJson.ofTheTrade(), Bench.FORK_COMPRESSION, clicks(-3, -3), clicks(0, 0));
    assertThat(remarks).hasSize(1);
    Remark.MakesUp instead = (Remark.MakesUp) remarks.get(0);
    assertThat(instead.setting().id()).isNotEqualTo(Bench.FORK_COMPRESSION);
    assertThat(SHEET.limits(instead.setting()).contains(instead.to().amounts().get(0))).isTrue();
  }

  /** k' (s MR + p) = k (s MR + p_wanted): 54 (37.44 + 20)/(37.44 + 16) = 58.04, on steps of 3. */
  @Test
  void preloadBeyondItsLimitIsASpringByTheSagWorksheet() {
    Remark.MakesUp spring =
        (Remark.MakesUp)
            shortOf(RuleBook.none(), Bench.PRELOAD, Reading.of(mm("20")), Reading.of(mm("16")))
                .get(0);
    assertThat(spring.basis()).isEqualTo(Remark.Basis.SAG_WORKSHEET);
    assertThat(spring.to())
        .isEqualTo(Reading.of(Amount.of("57", SpringRate.NEWTON_PER_MILLIMETRE)));
  }

  @Test
  void aForkWithoutItsDataSaysWhatIsMissing() {
    Sheet bare = Jobs.withFork(SHEET, ForkKind.PRESSURISED_CARTRIDGE);
    List<Remark> remarks =
        advice(RuleBook.none())
            .onShortfall(bare, Bench.setup(), setting(Bench.FORK_OIL), Reading.bothLegs(ml("390")));
    assertThat(remarks).hasSize(1);
    assertThat(((Remark.NoCurve) remarks.get(0)).needs())
        .extracting(Need::quantity)
        .extracting(Enum::name)
        .containsExactlyInAnyOrder("FORK_TRAVEL", "SEAL_DIAMETER");
  }

  @Test
  void newOilIsARatioAtRidingTemperatureAndNeverClicks() {
    BenchAdvice advice = advice(RulesJson.ofTheTrade(), oilJob(Scope.FORK, THIN));
    List<Remark> remarks = advice.onRenewed(SHEET, Bench.setup(), oilJob(Scope.FORK, THICK));
    Remark.Viscosity viscosity = (Remark.Viscosity) remarks.get(0);
    assertThat(viscosity.ratio()).isCloseTo(1.4, within(0.1));
    assertThat(new RemarkWords(Phrases.english(Display.METRIC)).remark(SHEET, viscosity))
        .startsWith("thick is 1.4")
        .contains("at 50 °C: slower, and firmer at low speed");
    assertThat(remarks).hasSize(1);
  }

  @Test
  void oilThatWasNeverNotedIsSaidToBeUnknown() {
    BenchAdvice never = advice(RuleBook.none());
    assertThat(never.onRenewed(SHEET, Bench.setup(), oilJob(Scope.FORK, THICK)))
        .containsExactly(new Remark.NoViscosity(Remark.NoViscosity.Why.OLD_OIL_NOT_NOTED));
    assertThat(never.onRenewed(SHEET, Bench.setup(), oilJob(Scope.FORK, null)))
        .containsExactly(new Remark.NoViscosity(Remark.NoViscosity.Why.NEW_OIL_NOT_NOTED));
    assertThat(never.onRenewed(SHEET, Bench.setup(), oilJob(Scope.SHOCK, THICK)))
        .as("a shock's oil is the shop's")
        .isEmpty();
    OilId gone = new OilId("gone");
    assertThat(
            advice(RuleBook.none(), oilJob(Scope.FORK, gone))
                .onRenewed(SHEET, Bench.setup(), oilJob(Scope.FORK, THICK)))
        .containsExactly(new Remark.NoViscosity(Remark.NoViscosity.Why.VISCOSITY_NOT_ON_SHELF));
  }

  @Test
  void theOilOfAJobUnderWayIsNotTheOneThatComesOut() {
    Job before = oilJob(Scope.FORK, THIN);
    Job now = oilJob(Scope.BOTH, THICK);
    Remark.Viscosity viscosity =
        (Remark.Viscosity)
            advice(RuleBook.none(), before, now).onRenewed(SHEET, Bench.setup(), now).get(0);
    assertThat(viscosity.old().id()).isEqualTo(THIN);
  }

  /**
   * Seals alone leave the oil in, and a shock's is another: the last fork oil is what comes out.
   */
  @Test
  void theOilThatComesOutIsThatOfTheLastForkThatGotAny() {
    Job seals =
        new Job(
            Scope.FORK,
            Set.of(Renewed.SEALS),
            Bench.FIRST_BASELINE,
            Bench.setup(),
            SHEET.from(),
            Optional.of(THICK));
    BenchAdvice advice =
        advice(
            RuleBook.none(),
            oilJob(Scope.FORK, THICK),
            oilJob(Scope.FORK, THIN),
            seals,
            oilJob(Scope.SHOCK, THICK));
    Remark.Viscosity viscosity =
        (Remark.Viscosity) advice.onRenewed(SHEET, Bench.setup(), oilJob(Scope.BOTH, THICK)).get(0);
    assertThat(viscosity.old().id()).isEqualTo(THIN);
  }

  /** Whatever is short, and by how much: what makes it up lies inside its own limits. */
  @Test
  void whatMakesItUpIsInsideItsOwnLimits() {
    Notebook notebook = Bench.notebook();
    Advisor advisor =
        BenchAdvice.of(notebook, Timeline.of(notebook, Bench.BIKE), RulesJson.ofTheTrade());
    int made = 0;
    for (Setting setting : SHEET.settings()) {
      for (int beyond = 1; beyond <= 60; beyond++) {
        for (int way : new int[] {-1, 1}) {
          Amount limit = way < 0 ? SHEET.limits(setting).least() : SHEET.limits(setting).most();
          Amount step = setting.scale().step();
          Amount by =
              step.withValue(step.value().multiply(java.math.BigDecimal.valueOf(way * beyond)));
          Reading now = Bench.setup().reading(setting.id()).orElseThrow();
          Setup baseline =
              Bench.setup().with(Placed.found(setting.id(), now.map(any -> limit.plus(by))));
          for (SettingReturn back :
              ReturnToBaseline.of(SHEET, baseline, Bench.setup(), advisor).settings()) {
            for (Remark remark : back.remarks()) {
              if (remark instanceof Remark.MakesUp makesUp) {
                made++;
                assertThat(makesUp.to().amounts())
                    .allMatch(SHEET.limits(makesUp.setting())::contains);
                assertThat(makesUp.to().sameAs(makesUp.from())).isFalse();
              }
              assertThat(new RemarkWords(Phrases.english(Display.US)).remark(SHEET, remark))
                  .doesNotContain("NaN", "∞", "{");
            }
          }
        }
      }
    }
    assertThat(made).isGreaterThan(100);
  }
}
