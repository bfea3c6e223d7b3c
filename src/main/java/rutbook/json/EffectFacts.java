package rutbook.json;

import java.util.List;
import rutbook.compare.Comparison;
import rutbook.notebook.End;
import rutbook.notebook.Symptom;
import rutbook.reasoning.MoveEffect;
import rutbook.reasoning.MoveEffects;

/** What differences do, as it stands in the answer of {@code compare}: rules and motos apart. */
final class EffectFacts {
  private static final Facts<MoveEffect.ByRule> BY_RULE =
      Facts.line(MoveEffect.ByRule.class)
          .with("rule", Texts.TEXT, each -> each.rule().id())
          .with("end", Words.of(End.class), each -> each.rule().end())
          .with("symptom", Words.of(Symptom.class), each -> each.rule().symptom())
          .with("points", Numbers.FIGURE, MoveEffect.ByRule::points)
          .flag("disputed", each -> each.rule().disputed());

  private static final Facts<MoveEffect.ByMotos> BY_MOTOS =
      Facts.line(MoveEffect.ByMotos.class)
          .with("complaint", NextAnswer.COMPLAINT, MoveEffect.ByMotos::complaint)
          .with("better", Numbers.WHOLE, MoveEffect.ByMotos::better)
          .with("same", Numbers.WHOLE, MoveEffect.ByMotos::same)
          .with("worse", Numbers.WHOLE, MoveEffect.ByMotos::worse)
          .with("mixed", Numbers.WHOLE, MoveEffect.ByMotos::mixed);

  static final Facts<MoveEffect> EFFECT =
      Facts.of(MoveEffect.class)
          .with("setting", SettingFacts.SETTING, MoveEffect::setting)
          .with("doses", Numbers.FIGURE, MoveEffect::doses)
          .list("trade", BY_RULE, MoveEffect::trade)
          .list("own", BY_MOTOS, MoveEffect::own);

  private EffectFacts() {}

  /** Of every setting that differs and of which both sides are known. */
  static List<MoveEffect> of(Comparison sides, MoveEffects effects) {
    return sides.settings().differing().stream()
        .filter(row -> row.from().isPresent() && row.to().isPresent())
        .flatMap(
            row ->
                effects
                    .of(
                        row.setting(),
                        row.from().get().reading(),
                        row.to().get().reading(),
                        sides.felt())
                    .stream())
        .toList();
  }
}
