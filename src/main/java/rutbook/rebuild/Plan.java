package rutbook.rebuild;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Job;
import rutbook.notebook.Oil;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * The steps of one job in working order, what was entered at them, and what that shows. Computed
 * from the job and its entries each time; it can be closed at any step and taken up again.
 */
public final class Plan {
  private final PlanFrom from;
  private final List<Step> steps;
  private final ReturnToBaseline back;
  private final List<Remark> remarks;
  private final Map<StepId, StepDone> done = new HashMap<>();
  private final List<Finding> findings;

  Plan(PlanFrom from, List<Step> steps, ReturnToBaseline back, List<Remark> remarks) {
    this.from = from;
    this.steps = List.copyOf(steps);
    this.back = back;
    this.remarks = List.copyOf(remarks);
    from.done().forEach(each -> done.put(each.step(), each));
    List<Finding> found = new ArrayList<>();
    for (Step step : steps) {
      if (done.containsKey(step.id())) {
        found.addAll(Findings.of(from.sheet(), back, step, done));
      }
    }
    this.findings = List.copyOf(found);
  }

  /** How far a step is. */
  public enum State {
    /** Its prerequisites are not all done. */
    WAITING,
    /** It can be done now. */
    READY,
    DONE,
    SKIPPED,
    /** What was entered does not do: to be done again. */
    AGAIN
  }

  public Job job() {
    return from.job();
  }

  public Sheet sheet() {
    return from.sheet();
  }

  /** All that it is computed from. */
  public PlanFrom from() {
    return from;
  }

  /** What the bike returns to. */
  public Entry.Baseline baseline() {
    return from.baseline();
  }

  /** What goes into the fork, by its name on the shelf. */
  public Optional<Oil> oil() {
    return from.oil();
  }

  /** Every step, in working order. */
  public List<Step> steps() {
    return steps;
  }

  public Optional<Step> step(StepId id) {
    return steps.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  /** Where every setting is now and where it goes. */
  public ReturnToBaseline back() {
    return back;
  }

  /** What new oil and parts do, to be said before the ride. */
  public List<Remark> remarks() {
    return remarks;
  }

  public List<Finding> findings() {
    return findings;
  }

  public List<Finding> findings(StepId step) {
    return findings.stream().filter(each -> each.step().equals(step)).toList();
  }

  public Optional<StepDone> done(StepId step) {
    return Optional.ofNullable(done.get(step));
  }

  public State state(Step step) {
    StepDone entered = done.get(step.id());
    if (entered == null) {
      return step.after().stream().allMatch(this::isPassed) ? State.READY : State.WAITING;
    }
    if (entered.entered() instanceof Entered.Skipped) {
      return State.SKIPPED;
    }
    return findings(step.id()).stream().anyMatch(Finding::again) ? State.AGAIN : State.DONE;
  }

  private boolean isPassed(StepId id) {
    return done.containsKey(id) && findings(id).stream().noneMatch(Finding::again);
  }

  /** The step to do now: the first that is not done; empty when the job is through. */
  public Optional<Step> next() {
    return steps.stream().filter(step -> isOpen(step)).findFirst();
  }

  private boolean isOpen(Step step) {
    State state = state(step);
    return state != State.DONE && state != State.SKIPPED;
  }

  /**
   * The oil that the fills of all legs come to, by their targets; pumping and spilling need more.
   * Empty where no fill is measured by volume.
   */
  public Optional<Amount> oilNeeded() {
    return steps.stream()
        .filter(step -> step.goal().oil().isPresent() && step.leg().isPresent())
        .flatMap(step -> step.target().stream())
        .flatMap(target -> target.reading().amounts().stream())
        .filter(amount -> amount.dimension() == Dimension.VOLUME)
        .reduce(Amount::plus);
  }

  /** Minutes of work still ahead. */
  public int minutesLeft() {
    return steps.stream().filter(this::isOpen).mapToInt(step -> step.kind().minutes()).sum();
  }

  /** What has to lie ready for the steps still ahead, in the order in which it is needed. */
  public List<Tool> tools() {
    Set<Tool> tools = new LinkedHashSet<>();
    steps.stream().filter(this::isOpen).forEach(step -> tools.addAll(step.kind().tools()));
    return List.copyOf(tools);
  }

  /**
   * The steps to be done again when a step does not come out: from the one it falls back to, with
   * all that rested on that; empty when there is nothing to fall back to.
   */
  public List<StepId> reopenedBy(StepId failed) {
    Optional<StepId> start = step(failed).flatMap(Step::otherwise);
    if (start.isEmpty()) {
      return List.of();
    }
    Set<StepId> again = new LinkedHashSet<>(Set.of(start.get()));
    for (Step step : steps) {
      if (step.after().stream().anyMatch(again::contains)) {
        again.add(step.id());
      }
    }
    return List.copyOf(again);
  }

  /** What can be entered at once at a step that places a setting: what was measured leg by leg. */
  public Optional<Reading> prefilled(Step step) {
    if (!step.kind().places() || !step.ask().bothLegs()) {
      return Optional.empty();
    }
    Setting setting = step.setting().orElseThrow();
    Value left = measured(setting, Side.LEFT);
    Value right = measured(setting, Side.RIGHT);
    Reading reading = new Reading.Pair(left, right);
    return reading.amounts().isEmpty() ? Optional.empty() : Optional.of(reading);
  }

  private Value measured(Setting setting, Side leg) {
    for (StepKind kind : List.of(StepKind.FILL, StepKind.CARTRIDGE_FILL, StepKind.FIT_SPRING)) {
      StepDone entered = done.get(Step.id(kind, Subject.of(setting, leg)));
      Optional<Reading> reading =
          entered == null ? Optional.empty() : Ask.reading(entered.entered());
      if (reading.filter(each -> measures(setting, each)).isPresent()) {
        return reading.get().leg(leg);
      }
    }
    return new Value.Unknown(WhyUnknown.NOT_COUNTED);
  }

  private static boolean measures(Setting setting, Reading reading) {
    return reading.amounts().stream().allMatch(amount -> amount.dimension() == setting.dimension());
  }

  /** Settings away from the baseline that this job does not reach. */
  public List<SettingReturn> leftOver() {
    Set<SettingId> placed = new LinkedHashSet<>();
    steps.forEach(step -> step.id().placed().ifPresent(placed::add));
    return back.settings().stream()
        .filter(each -> each.moved() && !placed.contains(each.setting().id()))
        .toList();
  }

  /** Shortfalls of the targets this job aims at. */
  public List<Shortfall> shortfalls() {
    return steps.stream()
        .filter(step -> step.kind().places())
        .flatMap(step -> step.target().stream())
        .flatMap(target -> target.shortfalls().stream())
        .toList();
  }
}
