package rutbook.rebuild;

import rutbook.notebook.Legs;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;
import rutbook.units.Dimension;
import rutbook.units.Length;

/** How far off still counts as there; common practice, no source, but for what the sheet says. */
public final class Tolerances {
  /** Between two measurements of the same sag. */
  public static final Amount SAG = Amount.of(2, Length.MILLIMETRE);

  private Tolerances() {}

  /** Counts are met exactly, fills within the difference of legs, the rest within a step. */
  public static Amount of(Setting setting) {
    Amount step = setting.scale().step();
    return switch (setting.role()) {
      case FORK_OIL, FORK_CARTRIDGE_OIL -> legs(setting.dimension(), step);
      case FORK_SPRING, SHOCK_SPRING -> step.withValue(java.math.BigDecimal.ZERO);
      case FORK_PRELOAD,
          FORK_AIR,
          TUBE_ABOVE_CLAMP,
          FORK_COMPRESSION,
          FORK_HIGH_SPEED_COMPRESSION,
          FORK_REBOUND,
          SHOCK_PRELOAD,
          SHOCK_LOW_SPEED,
          SHOCK_HIGH_SPEED,
          SHOCK_REBOUND,
          AXLE_POSITION,
          TYRE_FRONT,
          TYRE_REAR,
          OTHER ->
          setting.scale().isGrid() ? step.withValue(java.math.BigDecimal.ZERO) : step;
    };
  }

  /** How much two legs of a fill may differ. */
  public static Amount legs(Dimension dimension, Amount otherwise) {
    return dimension == Dimension.VOLUME
        ? Legs.FILL_VOLUME
        : dimension == Dimension.LENGTH ? Legs.FILL_LEVEL : otherwise;
  }

  /** How far a re-referenced total may be off: one click; a step of an adjuster without clicks. */
  public static Amount total(Setting setting) {
    return setting.dimension() == Dimension.CLICKS
        ? Amount.of(1, ClickUnit.CLICK)
        : setting.scale().step();
  }
}
