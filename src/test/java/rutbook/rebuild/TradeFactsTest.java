package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Datum;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scale;
import rutbook.notebook.Scope;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.StepId;
import rutbook.units.Display;
import rutbook.words.BenchWords;
import rutbook.words.Phrases;
import rutbook.words.PlanWords;

/**
 * What a mechanic with such a fork on the bench must read, in either system of units. All numbers
 * are common practice, no source: they fit one kind of bike and are unsafe elsewhere.
 */
class TradeFactsTest {
  private final PlanWords us = new PlanWords(Phrases.english(Display.US));
  private final PlanWords metric = new PlanWords(Phrases.english(Display.METRIC));

  private static Plan plan(String fluidOunces) {
    Setup baseline = Jobs.outer(fluidOunces);
    return Jobs.plan(Jobs.from(Jobs.american(), baseline, baseline, Scope.FORK, Renewed.OIL));
  }

  private static Step step(Plan plan, String id) {
    return plan.step(new StepId(id)).orElseThrow();
  }

  @Test
  void theCartridgeTakesItsNominalFill() {
    Step fill = step(plan("11"), "cartridge-fill:cartridge-oil:left");
    assertThat(us.values(fill)).startsWith("to 8.3 fl oz (245 mL)");
    assertThat(metric.values(fill)).startsWith("to 245 mL (8.3 fl oz)");
  }

  @Test
  void theOuterChamberHasItsLimitsInBothSystems() {
    Step fill = step(plan("11"), "fill:fork-oil:left");
    assertThat(us.values(fill))
        .containsExactly("to 11 fl oz (325 mL)", "allowed 10 to 13 fl oz (296 to 384 mL)");
    assertThat(metric.values(fill))
        .containsExactly("to 325 mL (11 fl oz)", "allowed 296 to 384 mL (10 to 13 fl oz)");
  }

  @Test
  void tooMuchIsHeldAtTheMostAndWhatIsMissingIsSaid() {
    Step fill = step(plan("13.5"), "fill:fork-oil:left");
    assertThat(us.values(fill))
        .containsExactly(
            "to 13 fl oz (384 mL)",
            "allowed 10 to 13 fl oz (296 to 384 mL)",
            "Outer chamber oil, left leg: wanted 13.5 fl oz (399 mL), today's most is 13 fl oz (384 mL):"
                + " held there, 0.5 fl oz short.");
    assertThat(metric.values(fill))
        .contains(
            "to 384 mL (13 fl oz)",
            "Outer chamber oil, left leg: wanted 399 mL (13.5 fl oz), today's most is 384 mL (13 fl oz):"
                + " held there, 14.8 mL short.");
  }

  @Test
  void tooLittleIsHeldAtTheLeastAndWhatIsOverIsSaid() {
    Step fill = step(plan("9.5"), "fill:fork-oil:left");
    assertThat(us.values(fill))
        .contains(
            "to 10 fl oz (296 mL)",
            "Outer chamber oil, left leg: wanted 9.5 fl oz (281 mL), today's least is 10 fl oz (296 mL):"
                + " held there, 0.5 fl oz over.");
  }

  @Test
  void moreOilIsFirmer() {
    Setting oil = Jobs.american().setting(Bench.FORK_OIL).orElseThrow();
    assertThat(oil.sense(Bench.floz("11"), Bench.floz("12"))).contains(Sense.FIRMER);
    assertThat(plan("13.5").shortfalls())
        .extracting(Shortfall::sense)
        .containsExactly(Sense.SOFTER, Sense.SOFTER);
  }

  @Test
  void everyTorqueIsSaidInBothSystemsAtItsStep() {
    Plan plan = plan("11");
    assertThat(us.values(step(plan, "assemble:left")))
        .containsExactly(
            "REBOUND_ADJUSTER_LOCK_NUT: 16 lbf·ft (21.7 N·m)", "CENTRE_BOLT: 51 lbf·ft (69.1 N·m)");
    assertThat(metric.values(step(plan, "axle-nut")))
        .containsExactly("AXLE_NUT: 88.1 N·m (65 lbf·ft)");
    assertThat(metric.values(step(plan, "wheel-on")))
        .containsExactly("BRAKE_CALIPER: 29.8 N·m (22 lbf·ft)");
    for (String pinch : List.of("pinch-first:right", "pinch-last:left")) {
      assertThat(us.values(step(plan, pinch)))
          .containsExactly("AXLE_PINCH_BOLTS: 15 lbf·ft (20.3 N·m)");
    }
    assertThat(us.values(step(plan, "clamp-lower")))
        .containsExactly("LOWER_CLAMP: 15 lbf·ft (20.3 N·m)");
  }

  @Test
  void aRodThatDoesNotComeBackIsSaidToMeanAirAndBleedingAgain() {
    Step rod = step(plan("11"), "rod-returns:left");
    assertThat(us.title(rod))
        .isEqualTo(
            "Push the rod in and let go: it must come back by itself, otherwise air is left and it"
                + " is bled again: left leg");
    assertThat(rod.otherwise()).contains(new StepId("pump-cartridge:left"));
  }

  /** 380 mL is 12.849 fl oz: neither the step nor the page at the bench may say 12.85. */
  @Test
  void aTargetAtItsLimitIsNotSaidToLieBeyondItInAnotherUnit() {
    Setup baseline = Jobs.with(Bench.setup(), Bench.FORK_OIL, Reading.bothLegs(Bench.ml("380")));
    Plan plan = Jobs.plan(Jobs.from(Bench.sheet(), baseline, baseline, Scope.FORK, Renewed.OIL));
    Step fill = step(plan, "fill:fork-oil:left");
    assertThat(us.values(fill))
        .containsExactly("to 12.84 fl oz (380 mL)", "allowed 10.15 to 12.84 fl oz (300 to 380 mL)");
    BenchWords bench = new BenchWords(Phrases.english(Display.US));
    assertThat(bench.headline(fill)).isEqualTo(Optional.of("12.84 fl oz"));
    assertThat(bench.otherSystem(fill)).isEqualTo(Optional.of("380 mL"));
  }

  @Test
  void anAdjusterThatCountsFromOpenIsTurnedTheOtherWay() {
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    Scale scale = compression.scale();
    Setting fromOpen =
        new Setting(
            compression.id(),
            compression.name(),
            compression.role(),
            compression.carrier(),
            new Scale(
                scale.limits(),
                scale.wish(),
                scale.step(),
                Datum.IN_FROM_OPEN,
                Sense.FIRMER,
                scale.total()),
            compression.work());
    Sheet sheet =
        Bench.sheet()
            .withSettings(
                Bench.sheet().settings().stream()
                    .map(each -> each.id().equals(fromOpen.id()) ? fromOpen : each)
                    .toList());
    Plan plan = Jobs.plan(Jobs.from(sheet, Bench.setup(), Bench.setup(), Scope.FORK));
    assertThat(us.title(step(plan, "count:fork-compression")))
        .isEqualTo("Count out to open and write it down: Fork compression");
    assertThat(us.title(step(plan, "count:fork-rebound")))
        .isEqualTo("Count in to closed and write it down: Fork rebound");
    assertThat(us.title(step(plan, "place:fork-compression")))
        .isEqualTo("Turn in to the baseline: Fork compression");
  }
}
