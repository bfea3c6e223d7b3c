package rutbook.rebuild;

import java.util.Optional;
import rutbook.notebook.ServiceKind;
import rutbook.units.Amount;
import rutbook.units.Duration;

/**
 * Intervals to start a sheet with until the service manual's are entered: common practice for moto,
 * not a manufacturer's word, and to be marked as such.
 */
public final class Intervals {
  private Intervals() {}

  /** Running hours between two services of a kind; empty where there is no common practice. */
  public static Optional<Amount> commonPractice(ServiceKind kind) {
    return switch (kind) {
      case FORK_OIL, FORK_SEALS, LINKAGE -> hours(30);
      case SHOCK_OIL -> hours(40);
      case HEAD_BEARINGS -> hours(50);
      case OTHER -> Optional.empty();
    };
  }

  private static Optional<Amount> hours(long number) {
    return Optional.of(Amount.of(number, Duration.HOUR));
  }
}
