package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import rutbook.notebook.Bike;
import rutbook.notebook.Bounds;
import rutbook.notebook.Dice;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;

/** What holds for the plan of any job, begun or under way, on the bikes of any notebook. */
class AnyRebuildTest {

  /** Every job under way, and one that begins now on each bike. */
  private static List<PlanFrom> jobs(Notebook notebook, Dice dice) {
    List<PlanFrom> jobs = new ArrayList<>();
    for (Bike bike : notebook.bikes()) {
      Timeline timeline = Timeline.of(notebook, bike.id());
      timeline
          .entries(Entry.RebuildJob.class)
          .forEach(job -> jobs.add(PlanFrom.of(notebook, job).orElseThrow()));
      PlanFrom.beginning(
              timeline, dice.any(Scope.class), dice.some(Renewed.class), Optional.empty())
          .ifPresent(jobs::add);
    }
    return jobs;
  }

  @Property(tries = 120, seed = "61")
  void noPlanOfAnyNotebookLeavesALimitOrItsOrder(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    jobs(notebook, new Dice(new Random(seed))).forEach(AnyRebuildTest::insideAndInOrder);
  }

  @Tag("long")
  @Property(tries = 5_000, seed = "62")
  void noPlanOfAnyNotebookLeavesALimitOrItsOrderAtLength(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    jobs(notebook, new Dice(new Random(seed))).forEach(AnyRebuildTest::insideAndInOrder);
  }

  private static void insideAndInOrder(PlanFrom from) {
    Plan plan = Planner.plan(from, Advisor.SILENT);
    Set<StepId> done = new HashSet<>();
    for (Step step : plan.steps()) {
      assertThat(done).as("before %s", step.id()).containsAll(step.after());
      assertThat(done.add(step.id())).as("%s twice", step.id()).isTrue();
      if (step.setting().isPresent() && step.target().isPresent()) {
        for (Amount amount : step.target().get().reading().amounts()) {
          assertThat(Bounds.refusal(from.sheet(), step.setting().get(), amount))
              .as("%s to %s", step.id(), amount)
              .isEmpty();
        }
      }
    }
    Setup reached = plan.back().reached(from.now());
    for (SettingReturn each : plan.back().settings()) {
      Bounds.requireChoosable(
          from.sheet(), each.setting(), reached.reading(each.setting().id()).orElseThrow());
      assertThat(each.shortfalls()).allSatisfy(short1 -> assertThat(short1.sense()).isNotNull());
      each.shortfalls().forEach(Shortfall::missing);
    }
    plan.steps().forEach(plan::state);
    plan.steps().forEach(plan::prefilled);
    plan.leftOver();
    plan.back().oneAtATime(ReturnOrder.TRADE);
  }

  @Property(tries = 80, seed = "65")
  void whateverIsEnteredAtWhateverStepTheJobGoesOn(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    Dice dice = new Dice(new Random(seed));
    for (PlanFrom from : jobs(notebook, dice)) {
      Plan plan = Planner.plan(from, Advisor.SILENT);
      List<StepDone> done = new ArrayList<>();
      for (Step step : plan.steps()) {
        if (dice.once(2)) {
          done.add(new StepDone(step.id(), Jobs.NOON, entered(dice, from.sheet(), step)));
        }
      }
      Plan after =
          Planner.plan(
              new PlanFrom(from.sheet(), from.baseline(), from.job(), done), Advisor.SILENT);
      assertThat(Jobs.ids(after)).isEqualTo(Jobs.ids(plan));
      after.steps().forEach(after::state);
      for (Step step : after.steps()) {
        after
            .prefilled(step)
            .ifPresent(reading -> Bounds.requireFits(step.setting().orElseThrow(), reading));
      }
      int whole = plan.steps().stream().mapToInt(step -> step.kind().minutes()).sum();
      assertThat(after.minutesLeft()).isBetween(0, whole);
    }
  }

  /** What fits where a setting is put, as the notebook has it checked, and anything elsewhere. */
  private static Entered entered(Dice dice, Sheet sheet, Step step) {
    Setting any = sheet.settings().isEmpty() ? null : dice.any(sheet.settings());
    boolean reads = step.kind().places() || step.kind() == StepKind.SHOP_FOUND;
    Setting setting = reads ? step.setting().orElseThrow() : any;
    if (setting == null || dice.once(6)) {
      return dice.once(2) ? new Entered.Ticked() : new Entered.Skipped("no time");
    }
    return dice.once(2)
        ? new Entered.Counted(dice.found(setting))
        : new Entered.Measured(dice.found(setting), Optional.empty());
  }

  @Property(tries = 80, seed = "63")
  void aPlanDoesNotDependOnTheOrderOfStorage(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    Notebook other = Notebooks.shuffled(notebook, seed);
    assertThat(jobs(other, new Dice(new Random(seed))))
        .isEqualTo(jobs(notebook, new Dice(new Random(seed))));
    Shelf shelf = notebook.shelf();
    for (Bike bike : notebook.bikes()) {
      Timeline before = Timeline.of(notebook, bike.id());
      Timeline after = Timeline.of(other, bike.id());
      var day = bike.sheets().get(0).from().plusDays(seed % 400);
      assertThat(ServiceBoard.of(after, day)).isEqualTo(ServiceBoard.of(before, day));
      for (PlanFrom from : jobs(notebook, new Dice(new Random(seed)))) {
        assertThat(ShopSheet.of(shelf, after, from)).isEqualTo(ShopSheet.of(shelf, before, from));
      }
    }
  }

  @Property(tries = 80, seed = "64")
  void aConfirmMotoIsJudgedWhateverWasRidden(
      @ForAll(supplier = Notebooks.class) Notebook notebook) {
    for (Bike bike : notebook.bikes()) {
      Timeline timeline = Timeline.of(notebook, bike.id());
      for (Entry.RebuildJob job : timeline.entries(Entry.RebuildJob.class)) {
        PlanFrom from = PlanFrom.of(notebook, job).orElseThrow();
        ConfirmMoto judged =
            ConfirmMoto.judge(
                BaselineMotos.before(timeline, job.id(), from.baseline().setup()),
                BaselineMotos.after(timeline, job.id()),
                Planner.plan(from, Advisor.SILENT));
        assertThat(judged.suspects().isEmpty())
            .isEqualTo(judged.verdict() != ConfirmMoto.Verdict.NOT_BACK);
        assertThat(judged.worstRise()).isBetween(-5.0, 5.0);
      }
    }
  }
}
