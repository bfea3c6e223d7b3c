package rutbook.rebuild;

import java.util.Optional;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.units.Amount;

/** What a target lacks because today's limits hold it: wanted by the baseline, held at a limit. */
public record Shortfall(Setting setting, Optional<Side> leg, Amount wanted, Amount held) {
  public Shortfall {
    if (wanted.sameQuantity(held)) {
      throw new IllegalArgumentException("nothing is missing at " + wanted);
    }
  }

  /** How much is missing, without a sign, in the unit of the baseline. */
  public Amount missing() {
    Amount difference = wanted.minus(held);
    return difference.withValue(difference.value().abs());
  }

  /** Whether the baseline wants more than the limits allow. */
  public boolean wantedMore() {
    return wanted.compareQuantity(held) > 0;
  }

  /** What the held value is against the wanted one: softer, slower, lower. */
  public Sense sense() {
    return setting.sense(wanted, held).orElseThrow();
  }
}
