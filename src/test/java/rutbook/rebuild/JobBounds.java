package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import rutbook.notebook.Bounds;
import rutbook.notebook.Entry;
import rutbook.notebook.Reading;
import rutbook.notebook.StepDone;
import rutbook.units.Amount;

/**
 * What holds in every job, whatever was typed: nothing beyond the sheet was chosen or is asked for,
 * and no step was passed before those it rests on.
 */
public final class JobBounds {
  private JobBounds() {}

  public static void hold(Plan plan, Entry.RebuildJob job) {
    for (StepDone done : job.done()) {
      Step step = plan.step(done.step()).orElseThrow();
      boolean chosen = !step.kind().finds() && step.kind() != StepKind.TOTAL;
      if (chosen) {
        Ask.reading(done.entered()).ifPresent(reading -> inside(plan, step, reading));
      }
      assertThat(step.after())
          .as("before %s", step.id())
          .allMatch(before -> plan.done(before).isPresent());
    }
    for (Step step : plan.steps()) {
      step.target().ifPresent(target -> inside(plan, step, target.reading()));
    }
  }

  private static void inside(Plan plan, Step step, Reading reading) {
    List<Amount> amounts = step.setting().isPresent() ? reading.amounts() : List.of();
    for (Amount amount : amounts) {
      assertThat(Bounds.refusal(plan.sheet(), step.setting().get(), amount))
          .as("%s at %s", amount, step.id())
          .isEmpty();
    }
  }
}
