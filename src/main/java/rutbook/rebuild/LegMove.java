package rutbook.rebuild;

import java.util.Optional;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.units.Amount;

/**
 * What one leg, or the one place, of a setting has to do: from where it is known to be, to where.
 */
public record LegMove(Setting setting, Optional<Side> leg, Optional<Amount> from, Amount to) {
  /** How far, with its sign, in the unit of the target; empty when the start is unknown. */
  public Optional<Amount> change() {
    return from.map(to::minus);
  }

  /** What the move does; empty when nothing moves or the start is unknown. */
  public Optional<Sense> sense() {
    return from.flatMap(start -> setting.sense(start, to));
  }

  public boolean moves() {
    return from.isEmpty() || !from.get().sameQuantity(to);
  }
}
