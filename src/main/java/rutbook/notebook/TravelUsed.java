package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** How far an end went, read from the o-ring or the zip-tie. */
public record TravelUsed(Optional<Amount> front, Optional<Amount> rear) {
  public static final TravelUsed NOT_NOTED = new TravelUsed(Optional.empty(), Optional.empty());

  public TravelUsed {
    Checks.dimension("travel used", front, Dimension.LENGTH);
    Checks.dimension("travel used", rear, Dimension.LENGTH);
  }
}
