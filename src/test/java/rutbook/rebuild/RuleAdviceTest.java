package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.reasoning.Rule;
import rutbook.reasoning.SectionGroup;

/** A stand-in by the rules: 10 mL are two doses of oil, a click is a dose; rules made up here. */
class RuleAdviceTest {
  private static final Setup HELD =
      Jobs.with(Bench.setup(), Bench.FORK_OIL, Reading.bothLegs(ml("380")));

  private static Rule rule(String id, Symptom symptom, Role role, double size) {
    return new Rule(
        id,
        role.end(),
        symptom,
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        role,
        size,
        false,
        "made up");
  }

  private static Rule disputed(Rule rule) {
    return new Rule(
        rule.id(),
        rule.end(),
        rule.symptom(),
        rule.groups(),
        rule.bite(),
        rule.when(),
        rule.role(),
        rule.size(),
        true,
        rule.reason());
  }

  private static Optional<Remark.MakesUp> instead(String wanted, Rule... rules) {
    return new RuleAdvice(List.of(rules), Bench.sheet(), HELD)
        .instead(Bench.sheet().setting(Bench.FORK_OIL).orElseThrow(), Reading.bothLegs(ml(wanted)))
        .map(Remark.MakesUp.class::cast);
  }

  private static final Rule OIL_BOTTOMS = rule("oil-bottoms", Symptom.BOTTOMS, Role.FORK_OIL, -0.4);
  private static final Rule OIL_DIVES = rule("a-dives", Symptom.DIVES, Role.FORK_OIL, -0.2);
  private static final Rule CLICK_BOTTOMS =
      rule("click-bottoms", Symptom.BOTTOMS, Role.FORK_COMPRESSION, -0.4);
  private static final Rule CLICK_DIVES =
      rule("click-dives", Symptom.DIVES, Role.FORK_COMPRESSION, -0.2);

  /** Two doses of oil missing are two clicks of compression where both do as much: 12 to 10 out. */
  @Test
  void asMuchIsMadeUpAsIsMissing() {
    Remark.MakesUp makesUp = instead("390", OIL_BOTTOMS, CLICK_BOTTOMS).orElseThrow();
    assertThat(makesUp.setting().id()).isEqualTo(Bench.FORK_COMPRESSION);
    assertThat(makesUp.from()).isEqualTo(Reading.bothLegs(clicks(12)));
    assertThat(makesUp.to()).isEqualTo(Reading.bothLegs(clicks(10)));
    assertThat(makesUp.against()).contains(Symptom.BOTTOMS);
    Rule twice = rule("click-bottoms", Symptom.BOTTOMS, Role.FORK_COMPRESSION, -0.8);
    assertThat(instead("390", OIL_BOTTOMS, twice).map(Remark.MakesUp::to))
        .contains(Reading.bothLegs(clicks(11)));
  }

  @Test
  void whatHelpedMostIsMadeUp() {
    Rule[] rules = {OIL_DIVES, OIL_BOTTOMS, CLICK_DIVES, CLICK_BOTTOMS};
    assertThat(instead("390", rules).flatMap(Remark.MakesUp::against)).contains(Symptom.BOTTOMS);
    rules[1] = disputed(OIL_BOTTOMS);
    assertThat(instead("390", rules).flatMap(Remark.MakesUp::against))
        .as("a rule that is disputed comes after one that is not")
        .contains(Symptom.DIVES);
  }

  /** With less oil wanted than is allowed, what less would have helped is made up. */
  @Test
  void tooMuchIsMadeUpByWhatLessWouldHaveHelped() {
    Rule oilHarsh = rule("oil-harsh", Symptom.HARSH, Role.FORK_OIL, 0.4);
    Rule clickHarsh = rule("click-harsh", Symptom.HARSH, Role.FORK_COMPRESSION, 0.4);
    Remark.MakesUp makesUp =
        instead("370", oilHarsh, clickHarsh, OIL_BOTTOMS, CLICK_BOTTOMS).orElseThrow();
    assertThat(makesUp.against()).contains(Symptom.HARSH);
    assertThat(makesUp.to()).isEqualTo(Reading.bothLegs(clicks(14)));
  }

  @Test
  void noMoreThanThreeDosesAreMadeUpInOneGo() {
    assertThat(instead("480", OIL_BOTTOMS, CLICK_BOTTOMS).map(Remark.MakesUp::to))
        .contains(Reading.bothLegs(clicks(9)));
  }

  @Test
  void aStandInIsForTheSameSymptomAtTheSameEnd() {
    assertThat(instead("390", OIL_BOTTOMS, CLICK_DIVES)).isEmpty();
    Rule rear = rule("rear", Symptom.BOTTOMS, Role.SHOCK_LOW_SPEED, -0.4);
    assertThat(instead("390", OIL_BOTTOMS, rear)).isEmpty();
    assertThat(instead("390", OIL_BOTTOMS)).as("never itself").isEmpty();
    assertThat(instead("390", CLICK_BOTTOMS)).as("nothing is lost").isEmpty();
    Rule faint = rule("faint", Symptom.BOTTOMS, Role.FORK_COMPRESSION, -5);
    assertThat(instead("390", OIL_BOTTOMS, faint)).as("less than half a dose").isEmpty();
  }

  /** A rule for some sections, or for one answer, is no rule for a whole bike. */
  @Test
  void onlyRulesThatHoldEverywhereStandIn() {
    Rule whoops =
        new Rule(
            "whoops",
            End.FRONT,
            Symptom.BOTTOMS,
            Set.of(SectionGroup.WHOOPS),
            Optional.empty(),
            Optional.empty(),
            Role.FORK_COMPRESSION,
            -0.4,
            false,
            "made up");
    Rule asks =
        new Rule(
            "asks",
            End.FRONT,
            Symptom.BOTTOMS,
            Set.of(),
            Optional.of(Bite.values()[0]),
            Optional.empty(),
            Role.FORK_COMPRESSION,
            -0.4,
            false,
            "made up");
    assertThat(instead("390", OIL_BOTTOMS, whoops, asks)).isEmpty();
  }

  @Test
  void theQuickestToReachStandsIn() {
    Rule spring = rule("spring", Symptom.BOTTOMS, Role.FORK_SPRING, -0.4);
    assertThat(instead("390", OIL_BOTTOMS, spring, CLICK_BOTTOMS).map(each -> each.setting().id()))
        .contains(Bench.FORK_COMPRESSION);
    assertThat(instead("390", OIL_BOTTOMS, spring).map(each -> each.setting().id()))
        .contains(Bench.FORK_SPRING);
  }
}
