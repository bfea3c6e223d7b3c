package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Setting;

/**
 * What is known of one setting and one complaint, in severity points per dose towards more of the
 * setting.
 *
 * @param rule the rule that speaks of it, if there is one
 * @param byRule what the rules say, 0 where they are silent
 * @param estimate after the rider's own motos
 * @param sd how sure the estimate is
 * @param own share that the rider's own motos have in it: 0 all rule, 1 all own
 * @param trials the rider's own motos that speak of it, oldest first
 * @param alike settings that moved so much together with this one that the motos cannot tell them
 *     apart yet; never named beside three clean trials or more
 */
public record LedgerRow(
    Complaint complaint,
    Setting setting,
    Optional<Rule> rule,
    double byRule,
    double estimate,
    double sd,
    double own,
    List<Trial> trials,
    List<Setting> alike) {
  /** From here on a setting is known by itself. */
  static final int MANY_CLEAN = 3;

  public LedgerRow {
    trials = List.copyOf(trials);
    alike = List.copyOf(alike);
  }

  public long cleanTrials() {
    return trials.stream().filter(Trial::clean).count();
  }

  public long mixedTrials() {
    return trials.size() - cleanTrials();
  }

  /** Whether it is likelier than 90 % that a dose does what the estimate says, in sign. */
  public boolean isSure() {
    return Math.abs(estimate) > 1.2816 * sd;
  }
}
