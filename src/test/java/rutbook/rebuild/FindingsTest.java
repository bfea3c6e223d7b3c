package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;

/** What an entry shows at the step where it was made. */
class FindingsTest {
  private static final PlanFrom FORK = Jobs.from(Scope.FORK, Renewed.OIL);

  private static List<Finding> findings(StepDone... done) {
    return Jobs.plan(FORK, done).findings();
  }

  private static Setting setting(SettingId id) {
    return Bench.sheet().setting(id).orElseThrow();
  }

  /** A found half click is written down as it was found; a chosen one is no place to leave it. */
  @Test
  void whatIsFoundMayStandBetweenTwoClicksAndWhatIsChosenMayNot() {
    Reading between = Reading.bothLegs(Amount.of("11.5", ClickUnit.CLICK));
    assertThat(findings(Jobs.counted("count:fork-rebound", between)))
        .hasSize(2)
        .hasOnlyElementsOfType(Finding.CountDiffers.class);
    assertThat(findings(Jobs.counted("place:fork-rebound", between)))
        .filteredOn(Finding.OutsideLimits.class::isInstance)
        .hasSize(2)
        .allMatch(Finding::again);
  }

  @Test
  void aCountThatNothingWasNotedOfIsNoDifference() {
    PlanFrom unknown =
        Jobs.from(Bench.sheet(), Bench.setup(), Setup.EMPTY, Scope.FORK, Renewed.OIL);
    StepDone counted = Jobs.counted("count:fork-rebound", Reading.bothLegs(clicks(9)));
    assertThat(Jobs.plan(unknown, counted).findings()).isEmpty();
  }

  /** Each leg is held to its own target, within what counts as there. */
  @Test
  void whatIsPutElsewhereIsSaidForItsLeg() {
    assertThat(findings(Jobs.counted("place:fork-rebound", Reading.of(clicks(11), clicks(13)))))
        .containsExactly(
            new Finding.OffTarget(
                StepId.placing(Bench.FORK_REBOUND),
                StepKind.PLACE_CLICKER,
                Optional.of(setting(Bench.FORK_REBOUND)),
                Optional.of(Side.RIGHT),
                clicks(11),
                clicks(13)));
    assertThat(findings(Jobs.measured("fill:fork-oil:left", Reading.of(ml("337"))))).isEmpty();
    assertThat(findings(Jobs.measured("fill:fork-oil:left", Reading.of(ml("338")))))
        .hasOnlyElementsOfType(Finding.OffTarget.class)
        .hasSize(1);
    assertThat(findings(Jobs.measured("place:tube-above-clamp", Reading.of(mm("6"))))).isEmpty();
    assertThat(findings(Jobs.measured("place:tube-above-clamp", Reading.of(mm("6.5"))))).hasSize(1);
  }

  /** The baseline's sag within what can be measured; common practice, no source. */
  @Test
  void sagIsBackWithinTwoMillimetres() {
    assertThat(Tolerances.SAG).isEqualTo(mm("2"));
    for (String there : List.of("102", "104", "106")) {
      assertThat(findings(Jobs.measured("race-sag", Reading.of(mm(there))))).as(there).isEmpty();
    }
    for (String off : List.of("101.9", "106.1")) {
      assertThat(findings(Jobs.measured("race-sag", Reading.of(mm(off)))))
          .as(off)
          .hasOnlyElementsOfType(Finding.OffTarget.class)
          .hasSize(1)
          .noneMatch(Finding::again);
    }
  }

  @Test
  void whatDoesNotAnswerAStepIsDoneAgain() {
    assertThat(findings(Jobs.measured("fill:fork-oil:left", Reading.of(clicks(3)))))
        .containsExactly(new Finding.Incomplete(new StepId("fill:fork-oil:left")))
        .allMatch(Finding::again);
    assertThat(findings(Jobs.ticked("fill:fork-oil:left")))
        .hasOnlyElementsOfType(Finding.Incomplete.class);
    assertThat(findings(Jobs.ticked("stand"))).isEmpty();
  }

  /** The second leg is held against a first one that was filled, not against anything else. */
  @Test
  void theSecondLegIsComparedWithAFirstThatWasFilled() {
    StepDone right = Jobs.measured("fill:fork-oil:right", Reading.of(ml("335")));
    assertThat(findings(Jobs.measured("fill:fork-oil:left", Reading.of(clicks(3))), right))
        .hasOnlyElementsOfType(Finding.Incomplete.class);
    assertThat(findings(Jobs.skipped("fill:fork-oil:left", "later"), right))
        .hasOnlyElementsOfType(Finding.Skipped.class);
    assertThat(findings(Jobs.measured("fill:fork-oil:left", Reading.of(ml("332"))), right))
        .filteredOn(Finding.LegsDiffer.class::isInstance)
        .extracting(Finding::step)
        .containsExactly(new StepId("fill:fork-oil:right"));
  }

  @Test
  void aTargetIsReachedWithinItsTolerance() {
    Target target = new Target(Reading.of(mm("104")), Optional.empty(), mm("2"), List.of());
    assertThat(target.reached(mm("104"), mm("106"))).isTrue();
    assertThat(target.reached(mm("104"), mm("102"))).isTrue();
    assertThat(target.reached(mm("104"), mm("106.1"))).isFalse();
    assertThat(target.reached(mm("104"), mm("101.9"))).isFalse();
  }
}
