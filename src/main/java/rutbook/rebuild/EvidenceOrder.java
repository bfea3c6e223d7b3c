package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.reasoning.Doses;
import rutbook.reasoning.Ledger;

/**
 * Fills, springs and heights in trade order; then the clickers, those first whose way back is
 * expected to be felt most by the rules and the rider's own motos.
 */
public record EvidenceOrder(Ledger ledger) implements ReturnOrder {
  @Override
  public List<SettingReturn> order(List<SettingReturn> settings) {
    List<SettingReturn> ordered = new ArrayList<>();
    List<SettingReturn> clickers = new ArrayList<>();
    for (SettingReturn each : settings) {
      (each.setting().role().isClicker() ? clickers : ordered).add(each);
    }
    clickers.sort(Comparator.comparingDouble(each -> -felt(each)));
    ordered.addAll(clickers);
    return ordered;
  }

  /** Severity points that the way back is expected to move, over all complaints. */
  private double felt(SettingReturn item) {
    Optional<Double> from = Doses.of(item.setting(), item.now());
    Optional<Double> to = Doses.of(item.setting(), item.target().reading());
    if (from.isEmpty() || to.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double doses = Math.abs(to.get() - from.get());
    return ledger.rows().stream()
        .filter(row -> row.setting().id().equals(item.setting().id()))
        .mapToDouble(row -> Math.abs(row.estimate()) * doses)
        .sum();
  }
}
