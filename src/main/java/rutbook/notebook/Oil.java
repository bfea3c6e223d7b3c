package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * An oil on the shelf with its kinematic viscosities at 40 and 100 °C where the data sheet gives
 * them. "W" labels are no standard and are only part of the name.
 */
public record Oil(OilId id, String name, Optional<Amount> kv40, Optional<Amount> kv100) {
  public Oil {
    name = Checks.name("oil", name);
    Checks.positive("viscosity", kv40, Dimension.KINEMATIC_VISCOSITY);
    Checks.positive("viscosity", kv100, Dimension.KINEMATIC_VISCOSITY);
    if (kv40.isPresent() && kv100.isPresent() && kv40.get().compareQuantity(kv100.get()) <= 0) {
      throw new NotebookException(Fault.LIMITS_CROSSED, kv100.get(), kv40.get());
    }
  }
}
