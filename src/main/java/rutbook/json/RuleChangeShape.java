package rutbook.json;

import java.math.BigDecimal;
import rutbook.notebook.RuleChange;

/** The rider's own size for a rule. */
final class RuleChangeShape extends RecordShape<RuleChange> {
  {
    onOneLine();
  }

  private final Field<String> rule = required("rule", Texts.TEXT, RuleChange::rule);
  private final Field<BigDecimal> size = required("size", Numbers.DECIMAL, RuleChange::size);
  private final Field<String> reason = required("reason", Texts.TEXT, RuleChange::reason);

  @Override
  RuleChange make(Got got) {
    return new RuleChange(got.get(rule), got.get(size), got.get(reason));
  }
}
