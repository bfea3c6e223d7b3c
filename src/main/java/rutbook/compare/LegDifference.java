package rutbook.compare;

import java.util.Optional;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.units.Amount;

/**
 * One value of a setting before and after.
 *
 * @param leg empty when the setting is not in both legs
 * @param by after minus before, when both are known, in the unit of the one after
 * @param sense what going there does; empty when both are the same or one is not known
 */
public record LegDifference(
    Optional<Side> leg, Value from, Value to, Optional<Amount> by, Optional<Sense> sense) {

  static LegDifference of(Setting setting, Optional<Side> leg, Value from, Value to) {
    if (from.known().isEmpty() || to.known().isEmpty()) {
      return new LegDifference(leg, from, to, Optional.empty(), Optional.empty());
    }
    Amount before = from.known().get();
    Amount after = to.known().get();
    return new LegDifference(
        leg, from, to, Optional.of(after.minus(before)), setting.sense(before, after));
  }

  /** Whether nothing moved: the same quantity, or not known on either side. */
  public boolean isSame() {
    return by.isPresent() ? sense.isEmpty() : from.known().isEmpty() && to.known().isEmpty();
  }
}
