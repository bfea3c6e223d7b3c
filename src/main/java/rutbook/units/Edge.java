package rutbook.units;

import java.math.RoundingMode;

/** Which side of an amount is forbidden, so that rounding it for another unit stays allowed. */
public enum Edge {
  /** No limit: rounded to the nearest. */
  NONE(RoundingMode.HALF_EVEN),
  /** The least allowed: rounded up. */
  LEAST(RoundingMode.CEILING),
  /** The most allowed: rounded down. */
  MOST(RoundingMode.FLOOR);

  private final RoundingMode rounding;

  Edge(RoundingMode rounding) {
    this.rounding = rounding;
  }

  RoundingMode rounding() {
    return rounding;
  }
}
