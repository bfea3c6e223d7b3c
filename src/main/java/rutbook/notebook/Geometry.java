package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** Steering geometry of the bike as far as it is known; lengths and the rake from vertical. */
public record Geometry(
    Optional<Amount> rake,
    Optional<Amount> forkOffset,
    Optional<Amount> frontRadius,
    Optional<Amount> rearRadius,
    Optional<Amount> wheelbase) {
  public Geometry {
    Checks.positive("rake", rake, Dimension.ANGLE);
    Checks.dimension("fork offset", forkOffset, Dimension.LENGTH);
    Checks.positive("front radius", frontRadius, Dimension.LENGTH);
    Checks.positive("rear radius", rearRadius, Dimension.LENGTH);
    Checks.positive("wheelbase", wheelbase, Dimension.LENGTH);
  }

  public static Geometry unknown() {
    Optional<Amount> none = Optional.empty();
    return new Geometry(none, none, none, none, none);
  }
}
