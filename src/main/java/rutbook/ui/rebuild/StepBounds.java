package rutbook.ui.rebuild;

import java.util.Optional;
import rutbook.figures.FillRoom;
import rutbook.notebook.Bounds;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.ui.Desk;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.words.ForkWords;

/** What may be entered at a step, and the sentence where it may not: at the bench and on paper. */
final class StepBounds {
  private final Desk desk;
  private final Plan plan;
  private final Step step;

  StepBounds(Desk desk, Plan plan, Step step) {
    this.desk = desk;
    this.plan = plan;
    this.step = step;
  }

  /**
   * What was typed, in the unit of the step where none is said.
   *
   * @throws AmountException when it is no amount
   */
  Amount amount(String typed) {
    return AmountText.parse(typed, step.ask().unit().orElseThrow(), desk.words().locale());
  }

  /** Why it cannot be entered; empty when it can. */
  Optional<String> fault(String typed) {
    try {
      Amount amount = amount(typed);
      return amount.value().signum() < 0
          ? Optional.of(desk.text("bench.below.zero"))
          : beyond(amount);
    } catch (AmountException fault) {
      return Optional.of(desk.words().fault(fault));
    }
  }

  /** What is found stays as found; what is put back must lie inside the limits and leave air. */
  private Optional<String> beyond(Amount amount) {
    if (step.kind().compareTo(StepKind.STAND) <= 0 || step.kind() == StepKind.TOTAL) {
      return Optional.empty();
    }
    return step.setting()
        .flatMap(
            setting ->
                Bounds.refusal(plan.sheet(), setting, amount)
                    .map(refused -> desk.settingWords().refusal(refused))
                    .or(() -> noRoom(setting, amount)));
  }

  private Optional<String> noRoom(Setting setting, Amount amount) {
    return FillRoom.planned(plan.sheet(), setting.id(), Reading.of(amount)).stream()
        .filter(room -> room.verdict() == FillRoom.Verdict.REFUSED)
        .filter(room -> step.leg().map(leg -> leg == room.leg()).orElse(true))
        .findFirst()
        .flatMap(new ForkWords(desk.phrases())::warning);
  }
}
