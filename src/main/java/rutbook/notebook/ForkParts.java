package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * How the fork is built, as far as it is known; what is missing makes a calculation an estimate.
 */
public record ForkParts(
    ForkKind kind,
    Optional<Amount> travel,
    Optional<Amount> sealDiameter,
    Optional<Amount> tubeBore,
    Optional<Amount> cartridgeRod,
    Optional<Amount> springSteel,
    Optional<AirLeg> airLeg,
    String valving) {
  public ForkParts {
    Checks.positive("fork travel", travel, Dimension.LENGTH);
    Checks.positive("seal diameter", sealDiameter, Dimension.LENGTH);
    Checks.positive("tube bore", tubeBore, Dimension.LENGTH);
    Checks.positive("cartridge rod", cartridgeRod, Dimension.LENGTH);
    Checks.positive("spring steel", springSteel, Dimension.VOLUME);
    valving = Checks.note("valving", valving);
  }

  public static ForkParts of(ForkKind kind) {
    Optional<Amount> none = Optional.empty();
    return new ForkParts(kind, none, none, none, none, none, Optional.empty(), "");
  }
}
