package rutbook.notebook;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** What the ground and the day were like, as far as noted. Roughness from 0 (smooth) to 5. */
public record Conditions(
    Optional<Ground> ground,
    Optional<Moisture> moisture,
    OptionalInt roughness,
    Optional<Amount> air,
    Set<Ready> ready) {
  public static final Conditions NOT_NOTED =
      new Conditions(
          Optional.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), Set.of());

  public Conditions {
    roughness.ifPresent(number -> Checks.range("roughness", number, 0, 5));
    Checks.dimension("air temperature", air, Dimension.TEMPERATURE);
    ready = Set.copyOf(ready);
  }
}
