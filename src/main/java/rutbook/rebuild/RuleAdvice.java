package rutbook.rebuild;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rutbook.notebook.Bounds;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.reasoning.Doses;
import rutbook.reasoning.Rule;

/**
 * What could stand in for a held setting by the rules of the trade: the same effect on the symptom
 * that the held one helps most with, from the setting that is quickest to reach.
 */
record RuleAdvice(List<Rule> rules, Sheet sheet, Setup reached) {
  /** No more than this in one go: a rule is an average of many bikes. */
  private static final int MOST_DOSES = 3;

  /** A stand-in for a setting that is held short of what was wanted; empty when no rule has one. */
  Optional<Remark> instead(Setting held, Reading wanted) {
    Optional<Double> want = Doses.of(held, wanted);
    Optional<Double> have = reached.reading(held.id()).flatMap(each -> Doses.of(held, each));
    if (want.isEmpty() || have.isEmpty()) {
      return Optional.empty();
    }
    double missing = want.get() - have.get();
    return plain()
        .filter(rule -> rule.role() == held.role() && rule.size() * missing < 0)
        .min(
            Comparator.comparing(Rule::disputed)
                .thenComparing(rule -> rule.size() * missing)
                .thenComparing(Rule::id))
        .flatMap(lost -> standIn(held, lost, lost.size() * missing));
  }

  /** Rules that hold whatever the answers and sections are. */
  private Stream<Rule> plain() {
    return rules.stream().filter(rule -> !rule.asks() && rule.groups().isEmpty());
  }

  private Optional<Remark> standIn(Setting held, Rule lost, double effect) {
    return plain()
        .filter(
            rule ->
                rule.end() == lost.end()
                    && rule.symptom() == lost.symptom()
                    && rule.role() != held.role())
        .flatMap(
            rule ->
                sheet.settings(rule.role()).stream()
                    .flatMap(setting -> moved(setting, rule, effect).stream()))
        .min(Comparator.comparing(each -> each.setting().work()))
        .map(each -> each);
  }

  private Optional<Remark.MakesUp> moved(Setting setting, Rule rule, double effect) {
    long doses = Math.round(effect / rule.size());
    Optional<Reading> from = reached.reading(setting.id()).filter(Reading::isKnown);
    if (doses == 0 || from.isEmpty() || Doses.dose(setting).isEmpty()) {
      return Optional.empty();
    }
    int held = (int) Math.max(-MOST_DOSES, Math.min(MOST_DOSES, doses));
    Reading to = Bounds.hold(sheet, setting, Doses.moved(setting, from.get(), held));
    return to.sameAs(from.get())
        ? Optional.empty()
        : Optional.of(
            new Remark.MakesUp(
                setting,
                from.get(),
                to,
                Remark.Basis.RULE,
                OptionalDouble.empty(),
                Optional.of(rule.symptom())));
  }
}
