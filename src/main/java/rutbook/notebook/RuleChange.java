package rutbook.notebook;

import java.math.BigDecimal;

/** The rider's own size for a rule of the trade, in severity points per dose, with the reason. */
public record RuleChange(String rule, BigDecimal size, String reason) {
  public RuleChange {
    rule = Checks.name("rule", rule);
    Checks.decimal("size", size, -5, 5);
    reason = Checks.name("reason", reason);
  }
}
