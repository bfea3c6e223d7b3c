package rutbook.rebuild;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.units.Amount;

/**
 * Where something is to be put: a reading inside the limits that bind it (there are none for a
 * measured sag), how far off still counts as there, and what the limits keep from it.
 */
public record Target(
    Reading reading, Optional<Range> limits, Amount tolerance, List<Shortfall> shortfalls) {
  public Target {
    shortfalls = List.copyOf(shortfalls);
    if (tolerance.value().signum() < 0) {
      throw new IllegalArgumentException("tolerance below zero: " + tolerance);
    }
    if (limits.isPresent()) {
      for (Amount amount : reading.amounts()) {
        if (!limits.get().contains(amount)) {
          throw new IllegalArgumentException(
              "target outside its limits: "
                  + amount
                  + ", least "
                  + limits.get().least()
                  + ", most "
                  + limits.get().most());
        }
      }
    }
  }

  /** Whether an amount is as good as the wanted one. */
  public boolean reached(Amount wanted, Amount entered) {
    Amount off = entered.minus(wanted);
    return off.withValue(off.value().abs()).compareQuantity(tolerance) <= 0;
  }
}
