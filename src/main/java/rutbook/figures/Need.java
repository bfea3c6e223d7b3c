package rutbook.figures;

import java.util.Optional;
import rutbook.notebook.Side;

/** What a figure cannot do without: which quantity, of which leg, and what is wrong with it. */
public record Need(Quantity quantity, Optional<Side> leg, Why why) {
  /** What stands in the way. */
  public enum Why {
    /** The bike's sheet (or the shelf) does not say. */
    NOT_ON_THE_SHEET,
    /** No entry says, or only that it is unknown. */
    NOT_NOTED,
    /** It is written in another kind of unit than the figure can use. */
    OTHER_MEASURE,
    /** The number written is one that no bike has. */
    BEYOND_ANY_BIKE,
    /** Nothing is left of it: the oil fills the chamber before the end of the stroke. */
    NONE_LEFT
  }

  static Need of(Quantity quantity, Why why) {
    return new Need(quantity, Optional.empty(), why);
  }
}
