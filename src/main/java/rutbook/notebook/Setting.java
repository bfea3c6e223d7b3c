package rutbook.notebook;

import java.math.BigDecimal;
import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** A thing on the bike that can be set. */
public record Setting(
    SettingId id, String name, Role role, Carrier carrier, Scale scale, Work work) {
  public Setting {
    name = Checks.name("setting", name);
  }

  /** Two clicks, half a turn: within this distance of a stop a clicker is near its stop. */
  public static final int NEAR_CLICKS = 2;

  public Dimension dimension() {
    return scale.step().dimension();
  }

  /** The distance at which an adjuster counts as near its stop: two steps of its grid. */
  public Amount nearStop() {
    return scale.step().withValue(scale.step().value().multiply(BigDecimal.valueOf(NEAR_CLICKS)));
  }

  /** The sense of going from one amount to another; empty when they are the same. */
  public Optional<Sense> sense(Amount from, Amount to) {
    int order = to.compareQuantity(from);
    if (order == 0) {
      return Optional.empty();
    }
    return Optional.of(order > 0 ? scale.greater() : scale.greater().opposite());
  }
}
