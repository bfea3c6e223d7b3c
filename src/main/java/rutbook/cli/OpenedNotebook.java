package rutbook.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.compare.Comparison;
import rutbook.json.RulesJson;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.reasoning.MoveEffects;
import rutbook.reasoning.RuleBook;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.BenchAdvice;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Unit;
import rutbook.words.ChangeWords;
import rutbook.words.CompareWords;
import rutbook.words.EffectWords;
import rutbook.words.FaultWords;
import rutbook.words.Phrases;
import rutbook.words.PlanWords;
import rutbook.words.ReadingWords;
import rutbook.words.RemarkWords;

/** A notebook with the bike in question and the words for it. */
record OpenedNotebook(Notebook notebook, Bike bike, Phrases phrases) {

  static OpenedNotebook of(Notebook notebook, String bikeName, Phrases phrases) {
    return new OpenedNotebook(notebook, bike(notebook, bikeName, phrases), phrases);
  }

  private static Bike bike(Notebook notebook, String name, Phrases phrases) {
    if (notebook.bikes().isEmpty()) {
      throw Refusal.use(phrases.say("Cli", "no-bike"));
    }
    if (name.isEmpty() && notebook.bikes().size() == 1) {
      return notebook.bikes().get(0);
    }
    String names =
        String.join(
            ", ", notebook.bikes().stream().map(each -> phrases.safe(each.name())).toList());
    List<Bike> meant =
        notebook.bikes().stream().filter(each -> each.id().text().equals(name)).toList();
    if (meant.isEmpty()) {
      meant = notebook.bikes().stream().filter(each -> each.name().equalsIgnoreCase(name)).toList();
    }
    if (meant.size() > 1) {
      String ids = String.join(", ", meant.stream().map(each -> each.id().text()).toList());
      throw Refusal.use(phrases.say("Cli", "which-bike", name, ids));
    }
    if (meant.isEmpty()) {
      throw Refusal.use(
          phrases.say("Cli", name.isEmpty() ? "which-bike" : "no-such-bike", name, names));
    }
    return meant.get(0);
  }

  /**
   * The oil of that name; none for an empty name.
   *
   * @throws Refusal when no oil on the shelf has it
   */
  Optional<OilId> oil(String name) {
    if (name.isEmpty()) {
      return Optional.empty();
    }
    List<Oil> oils = notebook.shelf().oils();
    String names = String.join(", ", oils.stream().map(each -> phrases.safe(each.name())).toList());
    return Optional.of(
        oils.stream()
            .filter(each -> each.name().equalsIgnoreCase(name) || each.id().text().equals(name))
            .map(Oil::id)
            .findFirst()
            .orElseThrow(() -> Refusal.use(phrases.say("Cli", "no-such-oil", name, names))));
  }

  /**
   * The amount that an option says, empty for an empty one; a bare number counts in the unit.
   *
   * @throws Refusal when it is none of that kind
   */
  Optional<Amount> amount(String typed, Unit unit) {
    return typed.isEmpty() ? Optional.empty() : Optional.of(written(typed, unit));
  }

  private Amount written(String typed, Unit unit) {
    try {
      Amount amount = AmountText.parse(typed, unit);
      if (amount.dimension() == unit.dimension()) {
        return amount;
      }
    } catch (AmountException unclear) {
      throw Refusal.use(faults().sentence(unclear));
    }
    throw Refusal.use(phrases.say("Cli", "other-kind", typed, unit.dimension()));
  }

  FaultWords faults() {
    return new FaultWords(phrases);
  }

  Timeline timeline() {
    return Timeline.of(notebook, bike.id());
  }

  ReadingWords readings() {
    return new ReadingWords(phrases);
  }

  ChangeWords changes() {
    return new ChangeWords(phrases);
  }

  CompareWords comparing() {
    return new CompareWords(phrases);
  }

  RemarkWords remarks() {
    return new RemarkWords(phrases);
  }

  /** What curves, oils and rules have to say beside a plan. */
  Advisor advisor() {
    RuleBook rules = RulesJson.ofTheTrade().with(notebook.ruleChanges());
    return BenchAdvice.of(notebook, timeline(), rules);
  }

  /** What moving settings does, by rules and by the rider's own motos. */
  MoveEffects effects() {
    return MoveEffects.of(notebook, timeline(), RulesJson.ofTheTrade());
  }

  /** The same in words, for every setting that differs. */
  Map<SettingId, List<String>> effects(MoveEffects effects, Comparison sides) {
    return new EffectWords(phrases).lines(effects, sides);
  }

  PlanWords planning() {
    return new PlanWords(phrases);
  }

  String say(String key, Object... facts) {
    return phrases.say("Cli", key, facts);
  }
}
