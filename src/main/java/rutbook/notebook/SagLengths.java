package rutbook.notebook;

import java.util.List;
import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * The three measurements of the sag procedure: fully extended, settled from above, settled from
 * below.
 */
public record SagLengths(Amount extended, Amount pushedDown, Amount liftedUp) {
  public SagLengths {
    for (Amount length : List.of(extended, pushedDown, liftedUp)) {
      Checks.positive("sag length", Optional.of(length), Dimension.LENGTH);
    }
  }
}
