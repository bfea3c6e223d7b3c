package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Chamber;
import rutbook.notebook.Entry;
import rutbook.notebook.Job;
import rutbook.notebook.Measure;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Timeline;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;
import rutbook.units.SpringRate;

/** What a plan is asked: what to buy, how long it takes, what lies ready, what waits for what. */
class PlanAskedTest {
  private static final Oil OIL =
      new Oil(new OilId("oil"), "Fork oil", Optional.empty(), Optional.empty());

  private static Step step(Plan plan, String id) {
    return plan.step(new StepId(id)).orElseThrow();
  }

  private static Plan pouring(PlanFrom from) {
    return Planner.plan(from.pouring(Optional.of(OIL)), Advisor.SILENT);
  }

  /** Two legs of 220 and 335 mL; legs set apart on purpose are summed as they are. */
  @Test
  void theOilOfAllLegsIsSummed() {
    PlanFrom from = Jobs.from(Scope.FORK, Renewed.OIL);
    assertThat(pouring(from).oilNeeded()).contains(ml("1110"));
    assertThat(pouring(from).oil()).contains(OIL);
    Setup apart = Jobs.with(Bench.setup(), Bench.FORK_OIL, Reading.of(ml("330"), ml("340")));
    assertThat(pouring(Jobs.from(Bench.sheet(), apart, apart, Scope.FORK, Renewed.OIL)).oilNeeded())
        .contains(ml("1110"));
    assertThat(pouring(Jobs.from(Scope.FORK, Renewed.SEALS)).oilNeeded())
        .as("the cartridge stays closed")
        .contains(ml("670"));
    assertThat(Jobs.plan(from).oilNeeded()).as("no oil named").isEmpty();
    assertThat(Jobs.plan(from).oil()).isEmpty();
  }

  @Test
  void aLevelIsNoVolumeToBuy() {
    List<Chamber> levels = new ArrayList<>();
    for (Chamber chamber : Bench.chambers()) {
      Range range = new Range(mm("80"), mm("130"));
      levels.add(
          new Chamber(
              chamber.id(),
              chamber.name(),
              chamber.carrier(),
              Measure.LEVEL,
              range,
              Optional.of(mm("100")),
              Optional.empty()));
    }
    Setting outer = Bench.fill(Bench.FORK_OIL, "Oil level", Role.FORK_OIL, Bench.OUTER, mm("5"));
    Sheet sheet =
        Jobs.without(Bench.sheet(), Bench.CARTRIDGE_OIL, Bench.FORK_OIL).withChambers(levels);
    List<Setting> settings = new ArrayList<>(sheet.settings());
    settings.add(outer);
    Plan plan =
        pouring(Jobs.from(sheet.withSettings(settings), Setup.EMPTY, Setup.EMPTY, Scope.FORK));
    assertThat(step(plan, "fill:fork-oil:left").target().map(Target::reading))
        .contains(Reading.of(mm("100")));
    assertThat(plan.oilNeeded()).isEmpty();
  }

  /** What curves and rules have to say stands at the step of the setting that is held. */
  @Test
  void remarksStandAtTheirStep() {
    Remark remark = new Remark.Curve(-0.04, -0.006, true);
    Advisor advisor =
        new Advisor() {
          @Override
          public List<Remark> onShortfall(
              Sheet sheet, Setup reached, Setting setting, Reading wanted) {
            return List.of(remark);
          }

          @Override
          public List<Remark> onRenewed(Sheet sheet, Setup baseline, Job job) {
            return List.of();
          }
        };
    Setup wanted = Jobs.with(Bench.setup(), Bench.FORK_OIL, Reading.bothLegs(ml("390")));
    Plan plan = Planner.plan(Jobs.from(Bench.sheet(), wanted, Bench.setup(), Scope.FORK), advisor);
    for (String step : List.of("fill:fork-oil:left", "place:fork-oil")) {
      assertThat(step(plan, step).goal().remarks()).containsExactly(remark);
    }
    assertThat(step(plan, "place:tube-above-clamp").goal().remarks()).isEmpty();
  }

  @Test
  void timeAndToolsAreThoseOfTheStepsAhead() {
    PlanFrom from = Jobs.from(Scope.FORK, Renewed.OIL);
    Plan plan = Jobs.plan(from);
    int all = plan.steps().stream().mapToInt(each -> each.kind().minutes()).sum();
    assertThat(plan.minutesLeft()).isEqualTo(all).isBetween(180, 360);
    assertThat(plan.tools())
        .startsWith(Tool.HOUR_METER, Tool.SCREWDRIVER)
        .contains(Tool.TORQUE_WRENCH, Tool.RING_GAUGE, Tool.DRAIN_PAN)
        .doesNotHaveDuplicates();
    Plan begun = Jobs.plan(from, Jobs.measured("hours", Reading.of(Bench.hours("20"))));
    assertThat(begun.minutesLeft()).isEqualTo(all - StepKind.HOURS.minutes());
    assertThat(begun.tools()).doesNotContain(Tool.HOUR_METER);
    Plan skipped = Jobs.plan(from, Jobs.skipped("hours", "no meter"));
    assertThat(skipped.minutesLeft()).isEqualTo(begun.minutesLeft());
  }

  /** Every step takes its time; oil drains and bubbles rise by themselves. Common practice. */
  @Test
  void everyStepTakesTime() {
    for (StepKind kind : StepKind.values()) {
      assertThat(kind.minutes()).as(kind.name()).isBetween(1, 60);
      boolean stands = kind == StepKind.DRAIN || kind == StepKind.PUMP_CARTRIDGE;
      assertThat(kind.waitMinutes().isPresent()).as(kind.name()).isEqualTo(stands);
    }
    assertThat(StepKind.DRAIN.waitMinutes()).hasValue(10);
    assertThat(StepKind.PUMP_CARTRIDGE.waitMinutes()).hasValue(5);
  }

  @Test
  void whatIsToBeDoneAgainHoldsUpWhatWaitsForIt() {
    PlanFrom from = Jobs.from(Scope.FORK, Renewed.OIL);
    List<StepDone> done = new ArrayList<>();
    Plan plan = Jobs.plan(from);
    while (!plan.next().orElseThrow().id().text().equals("assemble:left")) {
      done.add(Jobs.asItShould(plan.next().get()));
      plan = Jobs.plan(from, done.toArray(StepDone[]::new));
    }
    assertThat(plan.state(step(plan, "assemble:left"))).isEqualTo(Plan.State.READY);
    assertThat(plan.state(step(plan, "total:fork-rebound:left"))).isEqualTo(Plan.State.WAITING);
    done.removeIf(each -> each.step().text().equals("fill:fork-oil:left"));
    done.add(Jobs.measured("fill:fork-oil:left", Reading.of(ml("390"))));
    Plan again = Jobs.plan(from, done.toArray(StepDone[]::new));
    assertThat(again.state(step(again, "fill:fork-oil:left"))).isEqualTo(Plan.State.AGAIN);
    assertThat(again.state(step(again, "assemble:left"))).isEqualTo(Plan.State.WAITING);
    assertThat(again.next().orElseThrow().id()).isEqualTo(new StepId("fill:fork-oil:left"));
    assertThat(again.findings(new StepId("stand"))).isEmpty();
    assertThat(again.findings(new StepId("fill:fork-oil:left"))).isEqualTo(again.findings());
  }

  @Test
  void whatWasEnteredIsFoundByItsStep() {
    StepDone hours = Jobs.measured("hours", Reading.of(Bench.hours("20")));
    Plan plan = Jobs.plan(Jobs.from(Scope.FORK), hours);
    assertThat(plan.done(hours.step())).contains(hours);
    assertThat(plan.done(new StepId("stand"))).isEmpty();
    assertThat(plan.baseline()).isEqualTo(Bench.baseline(Bench.setup()));
  }

  /** What was entered in another kind of unit fills in nothing. */
  @Test
  void aLegThatWasNotMeasuredIsLeftToBeFilledIn() {
    PlanFrom from = Jobs.from(Scope.FORK, Renewed.OIL);
    Plan half = Jobs.plan(from, Jobs.measured("fill:fork-oil:left", Reading.of(ml("335"))));
    assertThat(half.prefilled(step(half, "place:fork-oil")))
        .contains(new Reading.Pair(Value.of(ml("335")), new Value.Unknown(WhyUnknown.NOT_COUNTED)));
    Plan odd = Jobs.plan(from, Jobs.measured("fill:fork-oil:left", Reading.of(clicks(3))));
    assertThat(odd.prefilled(step(odd, "place:fork-oil"))).isEmpty();
    assertThat(half.prefilled(step(half, "place:tube-above-clamp"))).isEmpty();
    assertThat(half.prefilled(step(half, "fill:fork-oil:right"))).isEmpty();
  }

  private static Amount rate(String number) {
    return Amount.of(number, SpringRate.NEWTON_PER_MILLIMETRE);
  }

  @Test
  void aSpringOtherThanTheBaselinesIsSaidAtEitherEnd() {
    Setup stiffer = Jobs.with(Bench.setup(), Bench.SHOCK_SPRING, Reading.of(rate("57")));
    Plan plan = Jobs.plan(Jobs.from(Bench.sheet(), Bench.setup(), stiffer, Scope.FORK));
    assertThat(plan.remarks()).hasSize(1);
    Remark.SpringRatio ratio = (Remark.SpringRatio) plan.remarks().get(0);
    assertThat(ratio.setting()).isEqualTo(Bench.SHOCK_SPRING);
    assertThat(ratio.ratio()).isCloseTo(57.0 / 54, within(1e-12));
    Setup none = Jobs.with(Bench.setup(), Bench.SHOCK_SPRING, Reading.of(rate("0")));
    assertThat(Jobs.plan(Jobs.from(Bench.sheet(), none, stiffer, Scope.FORK)).remarks())
        .as("nothing to divide by")
        .isEmpty();
    Setup moved = Jobs.with(Bench.setup(), Bench.TUBE, Reading.of(mm("9")));
    assertThat(Jobs.plan(Jobs.from(Bench.sheet(), Bench.setup(), moved, Scope.FORK)).remarks())
        .isEmpty();
  }

  @Test
  void aJobOfTheNotebookIsReadWithItsBaselineSheetAndOil() {
    PlanFrom from = Jobs.from(Scope.FORK, Renewed.OIL);
    StepDone hours = Jobs.measured("hours", Reading.of(Bench.hours("20")));
    Entry.RebuildJob job = Jobs.entry(from, List.of(hours));
    Notebook notebook = Bench.notebook().with(job);
    PlanFrom read = PlanFrom.of(notebook, job).orElseThrow();
    assertThat(read)
        .isEqualTo(new PlanFrom(Bench.sheet(), from.baseline(), from.job(), List.of(hours)));
    assertThat(PlanFrom.of(Notebook.empty(notebook.id()), job)).isEmpty();
  }

  /** A job begins with what is on the bike, of what the sheet still has and measures so. */
  @Test
  void aJobBeginsWithWhatIsOnTheBike() {
    Timeline timeline = Timeline.of(Bench.notebook(), Bench.BIKE);
    PlanFrom begun = PlanFrom.beginning(timeline, Scope.FORK, Set.of(Renewed.OIL)).orElseThrow();
    assertThat(begun).isEqualTo(Jobs.from(Scope.FORK, Renewed.OIL));
    Sheet later =
        Jobs.without(Bench.sheet(), Bench.TYRE_REAR).with(Bench.SPRING.plusDays(9), "no tyre");
    Notebook notebook = Bench.notebook().with(Bench.bike().with(later));
    PlanFrom without =
        PlanFrom.beginning(Timeline.of(notebook, Bench.BIKE), Scope.FORK, Set.of()).orElseThrow();
    assertThat(without.sheet()).isEqualTo(later);
    assertThat(without.job().sheetFrom()).isEqualTo(later.from());
    assertThat(without.job().before().placed())
        .extracting(Placed::setting)
        .doesNotContain(Bench.TYRE_REAR)
        .hasSize(later.settings().size());
    Notebook nothing = Notebook.empty(notebook.id()).with(Bench.shelf());
    assertThat(PlanFrom.beginning(Timeline.of(nothing, Bench.BIKE), Scope.FORK, Set.of()))
        .isEmpty();
  }

  @Test
  void oneLegOfATargetIsItsOwn() {
    Setup apart = Jobs.with(Bench.setup(), Bench.FORK_OIL, Reading.of(ml("290"), ml("340")));
    Plan plan = Jobs.plan(Jobs.from(Bench.sheet(), apart, apart, Scope.FORK));
    Target left = step(plan, "fill:fork-oil:left").target().orElseThrow();
    Target right = step(plan, "fill:fork-oil:right").target().orElseThrow();
    assertThat(left.reading()).isEqualTo(Reading.of(ml("300")));
    assertThat(left.shortfalls())
        .extracting(Shortfall::leg)
        .containsExactly(Optional.of(Side.LEFT));
    assertThat(right.reading()).isEqualTo(Reading.of(ml("340")));
    assertThat(right.shortfalls()).isEmpty();
  }
}
