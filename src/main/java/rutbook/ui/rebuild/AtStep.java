package rutbook.ui.rebuild;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.edit.RebuildEdit;
import rutbook.notebook.Entered;
import rutbook.notebook.EntryId;
import rutbook.notebook.StepDone;
import rutbook.rebuild.Finding;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;

/** One step of a job at the bench: what each key does there, without a toolkit. */
record AtStep(EntryId job, Plan plan, Step step) {
  /** What the main key does. */
  enum Main {
    /** Something is missing or refused. */
    NOTHING,
    /** What stands there does not do, and nothing else stands there yet. */
    ANOTHER,
    /** Goes to what must be done before. */
    FIRST,
    /** Goes on: it is entered. */
    NEXT,
    /** Goes on although something was found. */
    LEAVE_IT,
    /** Goes on with a count that is not the notebook's. */
    TRUST_COUNT,
    /** Enters what stands there. */
    ENTER
  }

  /**
   * What the main key does.
   *
   * @param now what would be entered
   */
  Main main(Optional<Entered> now) {
    if (plan.state(step) == Plan.State.WAITING) {
      return Main.FIRST;
    }
    if (now.isEmpty()) {
      return Main.NOTHING;
    }
    if (!plan.done(step.id()).map(StepDone::entered).equals(now)) {
      return Main.ENTER;
    }
    if (plan.state(step) == Plan.State.AGAIN) {
      return Main.ANOTHER;
    }
    if (plan.findings(step.id()).isEmpty()) {
      return Main.NEXT;
    }
    return countDiffers() ? Main.TRUST_COUNT : Main.LEAVE_IT;
  }

  /** Whether what was counted is not what the notebook says: one of the two is to be trusted. */
  boolean countDiffers() {
    return plan.findings(step.id()).stream().anyMatch(Finding.CountDiffers.class::isInstance);
  }

  /** The first of the steps before this one that is not passed. */
  Step missing() {
    return plan.steps().stream()
        .filter(each -> step.after().contains(each.id()))
        .filter(each -> plan.done(each.id()).isEmpty() || plan.state(each) == Plan.State.AGAIN)
        .findFirst()
        .orElseGet(() -> plan.next().orElse(step));
  }

  /** Enters what the main key says; empty where it only goes somewhere, or nowhere. */
  Optional<Edit> enter(Optional<Entered> now, Instant at) {
    return main(now) == Main.ENTER ? now.map(entered -> entering(entered, at)) : Optional.empty();
  }

  private Edit entering(Entered entered, Instant at) {
    return new RebuildEdit.Enter(job, new StepDone(step.id(), at, entered));
  }

  /** Whether it can be left out: not before those that it rests on, which come first. */
  boolean canSkip() {
    return plan.state(step) != Plan.State.WAITING;
  }

  /**
   * Leaves it out.
   *
   * @throws rutbook.notebook.NotebookException when no reason is given, or one too long
   */
  Edit skip(String why, Instant at) {
    return entering(new Entered.Skipped(why), at);
  }

  /** The count before tear-down is taken as the notebook has it. */
  Optional<Edit> trustNotebook(Instant at) {
    return step.goal().noted().map(noted -> entering(new Entered.Counted(noted), at));
  }

  /** Whether it can be said that it did not come out. */
  boolean canBeginAgain() {
    return step.otherwise().isPresent() && plan.state(step) != Plan.State.WAITING;
  }

  /** What did not come out is done again, with all that rested on it. */
  Optional<Edit> beginAgain() {
    List<Edit> reopen =
        plan.reopenedBy(step.id()).stream()
            .filter(each -> plan.done(each).isPresent())
            .map(each -> (Edit) new RebuildEdit.Reopen(job, each))
            .toList();
    return reopen.isEmpty() ? Optional.empty() : Optional.of(new Edit.Together(reopen));
  }

  /** The step so many places on, or back; empty beyond either end. */
  Optional<Step> away(int by) {
    int place = plan.steps().indexOf(step) + by;
    return place < 0 || place >= plan.steps().size()
        ? Optional.empty()
        : Optional.of(plan.steps().get(place));
  }
}
