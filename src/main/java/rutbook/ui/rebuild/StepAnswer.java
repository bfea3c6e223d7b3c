package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import rutbook.figures.FillRoom;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Entered;
import rutbook.notebook.Fault;
import rutbook.notebook.Instrument;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Value;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.words.ForkWords;
import rutbook.words.Phrases;
import rutbook.words.PlanWords;
import rutbook.words.SettingWords;
import rutbook.words.WindowWords;

/**
 * What is typed at a step as what would be entered, and the sentence why it may not be: at the
 * bench and on paper. It knows no toolkit.
 */
final class StepAnswer {
  private final WindowWords words;
  private final Phrases phrases;
  private final SettingWords settingWords;
  private final Plan plan;
  private final Step step;

  StepAnswer(WindowWords words, Phrases phrases, Plan plan, Step step) {
    this.words = words;
    this.phrases = phrases;
    this.settingWords = new SettingWords(() -> phrases);
    this.plan = plan;
    this.step = step;
  }

  /** How many boxes are typed into: one for each leg that is asked for, none for a tick. */
  int boxes() {
    if (step.ask().form() == Ask.Form.TICK) {
      return 0;
    }
    return step.ask().bothLegs() ? 2 : 1;
  }

  /** Why it cannot be entered; empty when it can. */
  Optional<String> fault(String typed) {
    try {
      Amount amount = amount(typed);
      return amount.value().signum() < 0
          ? Optional.of(words.text("bench.below.zero"))
          : unfit(amount).map(settingWords::refusal).or(() -> beyond(amount));
    } catch (AmountException fault) {
      return Optional.of(words.fault(fault));
    }
  }

  /** Why these words cannot be entered; empty when they can. */
  Optional<String> wordsFault(String said) {
    try {
      new Entered.Ticked(said);
      return Optional.empty();
    } catch (NotebookException refused) {
      return Optional.of(settingWords.refusal(refused));
    }
  }

  /** What would be entered; empty while a box is blank or refused. */
  Optional<Entered> entered(List<String> typed, Optional<Instrument> instrument) {
    boolean whole =
        typed.size() == boxes()
            && typed.stream().allMatch(each -> !each.isBlank() && fault(each).isEmpty());
    if (!whole || boxes() == 0) {
      return Optional.empty();
    }
    List<Amount> amounts = typed.stream().map(this::amount).toList();
    Reading reading =
        step.ask().bothLegs()
            ? new Reading.Pair(Value.of(amounts.get(0)), Value.of(amounts.get(1)))
            : Reading.of(amounts.get(0));
    return Optional.of(
        step.ask().form() == Ask.Form.COUNT
            ? new Entered.Counted(reading)
            : new Entered.Measured(reading, instrument));
  }

  /** What was typed, in the unit of the step where none is said. */
  private Amount amount(String typed) {
    return AmountText.parse(typed, step.ask().unit().orElseThrow(), words.locale());
  }

  /** An amount of something else, or of a size that no notebook takes. */
  private Optional<NotebookException> unfit(Amount amount) {
    String about = step.setting().map(Setting::name).orElseGet(this::title);
    if (amount.dimension() != step.ask().unit().orElseThrow().dimension()) {
      return Optional.of(
          new NotebookException(
              Fault.WRONG_UNIT, about, amount.unit().symbol(), step.ask().unit().get().symbol()));
    }
    try {
      step.setting()
          .filter(setting -> setting.dimension() == amount.dimension())
          .ifPresent(setting -> Bounds.requireFits(setting, whole(setting, amount)));
      return Optional.empty();
    } catch (NotebookException refused) {
      return Optional.of(refused);
    }
  }

  private static Reading whole(Setting setting, Amount amount) {
    return setting.carrier() == Carrier.PAIR ? Reading.bothLegs(amount) : Reading.of(amount);
  }

  private String title() {
    return new PlanWords(phrases).title(step);
  }

  /** What is found stays as found; what is put back must lie inside the limits and leave air. */
  private Optional<String> beyond(Amount amount) {
    if (step.kind().finds() || step.kind() == StepKind.TOTAL) {
      return Optional.empty();
    }
    return step.setting()
        .flatMap(
            setting ->
                Bounds.refusal(plan.sheet(), setting, amount)
                    .map(settingWords::refusal)
                    .or(() -> noRoom(setting, amount)));
  }

  private Optional<String> noRoom(Setting setting, Amount amount) {
    return FillRoom.planned(plan.sheet(), setting.id(), Reading.of(amount)).stream()
        .filter(room -> room.verdict() == FillRoom.Verdict.REFUSED)
        .filter(room -> step.leg().map(leg -> leg == room.leg()).orElse(true))
        .findFirst()
        .flatMap(new ForkWords(phrases)::warning);
  }
}
