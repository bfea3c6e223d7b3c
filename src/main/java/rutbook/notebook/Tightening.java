package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** A line of the torque table with the place it was read at: the service manual rules. */
public record Tightening(Fastener fastener, String name, Amount amount, String source) {
  public Tightening {
    name = Checks.name("fastener", name);
    Checks.positive("torque", Optional.of(amount), Dimension.TORQUE);
    source = Checks.name("source", source);
  }
}
