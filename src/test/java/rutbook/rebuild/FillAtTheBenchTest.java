package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberVolume;
import rutbook.notebook.Measure;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;
import rutbook.notebook.WhyUnknown;

/** What is typed as a fill, beside the other leg and beside the baseline. */
class FillAtTheBenchTest {
  private static final String LEFT = "fill:fork-oil:left";
  private static final String RIGHT = "fill:fork-oil:right";
  private static final Riding RIDING = new Riding(Optional.of(mm("70")), Optional.of(mm("0")));
  private static final Reading TYPED = Reading.of(ml("345"));

  private final PlanFrom from = Jobs.from(Scope.FORK, Renewed.OIL);
  private final Plan plan = Jobs.plan(from);

  private static Step step(Plan plan, String id) {
    return plan.step(new StepId(id)).orElseThrow();
  }

  private static BothLegs legs(Plan plan, String step, Reading typed) {
    return BothLegs.at(plan, step(plan, step), typed).orElseThrow();
  }

  @Test
  void theOtherLegIsTakenToBecomeLikeThisOne() {
    BothLegs left = legs(plan, LEFT, TYPED);
    assertThat(left.reading()).isEqualTo(Reading.bothLegs(ml("345")));
    assertThat(left.unfilled()).contains(Side.RIGHT);
    assertThat(left.differ()).isFalse();
    assertThat(left.mayDiffer()).isEqualTo(ml("2"));
    assertThat(left.meant()).contains(Reading.bothLegs(ml("335")));
    assertThat(legs(plan, RIGHT, TYPED).unfilled()).contains(Side.LEFT);
  }

  @Test
  void whatIsInTheOtherLegStandsBesideIt() {
    Plan begun = Jobs.plan(from, Jobs.measured(LEFT, Reading.of(ml("335"))));
    BothLegs right = legs(begun, RIGHT, TYPED);
    assertThat(right.reading()).isEqualTo(Reading.of(ml("335"), ml("345")));
    assertThat(right.unfilled()).isEmpty();
    assertThat(right.differ()).isTrue();
    Plan other = Jobs.plan(from, Jobs.measured(RIGHT, Reading.of(ml("335"))));
    assertThat(legs(other, LEFT, TYPED).reading()).isEqualTo(Reading.of(ml("345"), ml("335")));
  }

  /** What was typed in another kind of unit is no fill of the other leg. */
  @Test
  void onlyAFillCountsAsWhatIsInTheOtherLeg() {
    Plan odd = Jobs.plan(from, Jobs.measured(LEFT, Reading.of(clicks(3))));
    assertThat(legs(odd, RIGHT, TYPED).unfilled()).contains(Side.LEFT);
    Plan skipped = Jobs.plan(from, Jobs.skipped(LEFT, "later"));
    assertThat(legs(skipped, RIGHT, TYPED).unfilled()).contains(Side.LEFT);
  }

  @Test
  void whereBothLegsAreTypedNothingIsMadeUp() {
    BothLegs both = legs(plan, "place:fork-oil", Reading.of(ml("330"), ml("340")));
    assertThat(both.reading()).isEqualTo(Reading.of(ml("330"), ml("340")));
    assertThat(both.unfilled()).isEmpty();
    assertThat(BothLegs.at(plan, step(plan, "race-sag"), Reading.of(mm("104")))).isEmpty();
    assertThat(BothLegs.at(plan, step(plan, "place:tyre-front"), Reading.of(Jobs.bar("1"))))
        .isEmpty();
  }

  @Test
  void aFillIsReckonedBesideTheBaselines() {
    ChosenFill chosen = ChosenFill.at(plan, step(plan, LEFT), TYPED, RIDING).orElseThrow();
    Setup was = Bench.setup();
    Setup is = was.with(Placed.found(Bench.FORK_OIL, Reading.bothLegs(ml("345"))));
    assertThat(chosen.before()).isEqualTo(Reading.bothLegs(ml("335")));
    assertThat(chosen.chosen()).isEqualTo(Reading.bothLegs(ml("345")));
    assertThat(chosen.alike()).contains(Side.RIGHT);
    assertThat(chosen.was()).isEqualTo(ForkFigures.of(Bench.sheet(), was, RIDING));
    assertThat(chosen.is()).isEqualTo(ForkFigures.of(Bench.sheet(), is, RIDING));
    assertThat(chosen.change().found().orElseThrow().endAirForce().orElseThrow())
        .as("more oil, less air, firmer at the end")
        .isPositive();
    assertThat(chosen.room().orElseThrow()).isEqualTo(FillRoom.of(Bench.sheet(), is));
  }

  @Test
  void onlyWhatMovesTheForksCurveIsReckoned() {
    assertThat(plan.steps().stream().filter(step -> ChosenFill.applies(plan, step)))
        .extracting(step -> step.id().text())
        .containsExactly(LEFT, RIGHT, "place:fork-oil");
    assertThat(
            ChosenFill.at(
                plan,
                step(plan, "cartridge-fill:cartridge-oil:left"),
                Reading.of(ml("220")),
                RIDING))
        .isEmpty();
    Plan air = Jobs.plan(Jobs.from(Jobs.air(), Jobs.airSetup(), Jobs.airSetup(), Scope.FORK));
    assertThat(air.steps().stream().filter(step -> ChosenFill.applies(air, step)))
        .extracting(step -> step.id().text())
        .containsExactly("place:fork-air");
    ChosenFill pressure =
        ChosenFill.at(air, step(air, "place:fork-air"), Reading.of(Jobs.bar("10.5")), RIDING)
            .orElseThrow();
    assertThat(pressure.chosen()).isEqualTo(Reading.of(Jobs.bar("10.5")));
    assertThat(pressure.room()).as("a pressure leaves the room as it is").isEmpty();
  }

  @Test
  void whereTheBaselineKnowsNoFillTheNominalOneIsComparedWith() {
    Setup unknown =
        Jobs.with(
            Bench.setup(), Bench.FORK_OIL, Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED));
    Plan nominal = Jobs.plan(Jobs.from(Bench.sheet(), unknown, unknown, Scope.FORK, Renewed.OIL));
    assertThat(ChosenFill.at(nominal, step(nominal, LEFT), TYPED, RIDING).map(ChosenFill::before))
        .contains(Reading.bothLegs(ml("335")));
    Plan nothing = Jobs.plan(Jobs.from(withOuter(Optional.empty()), unknown, unknown, Scope.FORK));
    assertThat(ChosenFill.at(nothing, step(nothing, LEFT), TYPED, RIDING)).isEmpty();
  }

  @Test
  void halfAFillIsNotReckoned() {
    Reading half = Reading.unknown(Carrier.SINGLE, WhyUnknown.NOT_COUNTED);
    assertThat(ChosenFill.at(plan, step(plan, LEFT), half, RIDING)).isEmpty();
  }

  private static Sheet withOuter(Optional<ChamberVolume> volume) {
    Chamber outer =
        new Chamber(
            Bench.OUTER,
            "Outer chamber",
            Carrier.PAIR,
            Measure.VOLUME,
            new Range(ml("300"), ml("380")),
            Optional.empty(),
            volume);
    return Bench.sheet().withChambers(List.of(Bench.chambers().get(0), outer));
  }

  /**
   * Worked by hand: 300 mm of 48 mm less the rod of 12.5 mm sweep 506 mL of a chamber of 900 mL.
   * 375 mL of oil leave 19 of 525 mL of air, compressed 28 times; 350 mL leave 44 of 550, 12 times.
   */
  @Test
  void aMeasuredLegWithoutRoomIsDoneAgainAndAnEstimateIsNot() {
    for (boolean measured : new boolean[] {true, false}) {
      Sheet sheet = withOuter(Optional.of(new ChamberVolume(ml("900"), measured)));
      PlanFrom tight = Jobs.from(sheet, Bench.setup(), Bench.setup(), Scope.FORK, Renewed.OIL);
      for (String leg : List.of(LEFT, RIGHT)) {
        assertThat(noRoom(tight, leg, Reading.of(ml("375"))))
            .hasSize(measured ? 1 : 0)
            .allMatch(each -> each.room().leg() == (leg.equals(LEFT) ? Side.LEFT : Side.RIGHT));
        assertThat(noRoom(tight, leg, Reading.of(ml("350")))).isEmpty();
      }
      assertThat(noRoom(tight, "place:fork-oil", Reading.bothLegs(ml("375"))))
          .extracting(each -> each.room().leg())
          .containsExactlyElementsOf(measured ? List.of(Side.values()) : List.of());
    }
  }

  private static List<Finding.NoRoom> noRoom(PlanFrom from, String step, Reading reading) {
    List<Finding.NoRoom> found =
        Jobs.plan(from, Jobs.measured(step, reading)).findings().stream()
            .filter(Finding.NoRoom.class::isInstance)
            .map(Finding.NoRoom.class::cast)
            .toList();
    assertThat(found).allMatch(Finding::again);
    return found;
  }
}
