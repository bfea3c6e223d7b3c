package rutbook.rebuild;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Range;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.Duration;

/** Draws up the plan of a job: only the steps that it needs, in an order that work can follow. */
public final class Planner {
  /** New seals and bushings settle within these hours; common practice, no source. */
  private static final Range RUNNING_IN =
      new Range(Amount.of(3, Duration.HOUR), Amount.of(5, Duration.HOUR));

  private Planner() {}

  public static Plan plan(PlanFrom from, Advisor advisor) {
    Drafting draft = new Drafting(from, advisor);
    Chain chain = Chain.start();
    ForkSteps fork = new ForkSteps(draft);
    ShockSteps shock = new ShockSteps(draft);
    onTheFloor(draft, chain, fork, shock);
    chain.then(Step.of(StepKind.STAND, Subject.BIKE));
    List<Chain> ends = new ArrayList<>();
    if (from.job().shock()) {
      Chain branch = chain.branch();
      shock.offAndIn(branch);
      ends.add(branch);
    }
    if (from.job().fork()) {
      Chain branch = chain.branch();
      fork.outAndIn(branch);
      ends.add(branch);
    }
    chain.joined(ends);
    if (from.job().fork()) {
      fork.axle(chain);
    }
    if (from.job().renewed().contains(Renewed.SPRING)
        || from.job().renewed().contains(Renewed.VALVING)) {
      chain.then(Step.of(StepKind.NEW_SHEET, Subject.BIKE));
    }
    new ClosingSteps(draft).close(chain);
    ReturnToBaseline back =
        ReturnToBaseline.of(from.sheet(), from.baseline().setup(), from.now(), advisor);
    return new Plan(from, Habits.inOrder(chain.steps()), back, beforeTheRide(from, advisor));
  }

  /** Everything that is read, released and counted before the bike is lifted. */
  private static void onTheFloor(Drafting draft, Chain chain, ForkSteps fork, ShockSteps shock) {
    chain.then(Step.of(StepKind.HOURS, Subject.BIKE).asking(Ask.measure(Duration.HOUR, false)));
    if (draft.job().fork()) {
      fork.air().forEach(chain::then);
    }
    List<Step> counts = new ArrayList<>();
    if (draft.job().fork()) {
      draft.clickers(true).forEach(each -> counts.add(draft.count(each)));
    }
    if (draft.job().shock()) {
      draft.clickers(false).forEach(each -> counts.add(draft.count(each)));
      counts.addAll(shock.notes());
    }
    chain.together(counts);
    if (draft.job().fork() && !draft.clickers(true).isEmpty()) {
      chain.then(Step.of(StepKind.BACK_OUT, Subject.BIKE));
    }
  }

  /** What new oil and parts do: said before the ride, and never turned into clicks. */
  private static List<Remark> beforeTheRide(PlanFrom from, Advisor advisor) {
    List<Remark> remarks =
        new ArrayList<>(advisor.onRenewed(from.sheet(), from.baseline().setup(), from.job()));
    for (Setting spring : from.sheet().settings()) {
      if (spring.role() == Role.FORK_SPRING || spring.role() == Role.SHOCK_SPRING) {
        springRatio(from, spring, remarks);
      }
    }
    if (from.job().renewed().contains(Renewed.SEALS)) {
      remarks.add(new Remark.RunningIn(RUNNING_IN));
    }
    return remarks;
  }

  private static void springRatio(PlanFrom from, Setting spring, List<Remark> remarks) {
    List<Amount> fitted =
        from.now().reading(spring.id()).map(reading -> reading.amounts()).orElse(List.of());
    List<Amount> wanted =
        from.baseline()
            .setup()
            .reading(spring.id())
            .map(reading -> reading.amounts())
            .orElse(List.of());
    if (fitted.isEmpty() || wanted.isEmpty() || fitted.get(0).sameQuantity(wanted.get(0))) {
      return;
    }
    double baseline = wanted.get(0).si();
    if (baseline > 0) {
      remarks.add(new Remark.SpringRatio(spring.id(), fitted.get(0).si() / baseline));
    }
  }
}
