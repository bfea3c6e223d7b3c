package rutbook.rebuild;

import rutbook.notebook.Role;

/**
 * The order in which settings go back, each resting on those before it: spring, fill, re-reference,
 * air, axle position, tyre pressure, preload by sag, tube above clamp, compression, rebound.
 */
public final class TradeOrder {
  /** Where adjusters are counted to closed again: after the fills, before what is ridden on. */
  public static final int RE_REFERENCE = 2;

  private TradeOrder() {}

  /** The place of a role in the order, from 0. */
  public static int rank(Role role) {
    return switch (role) {
      case FORK_SPRING, SHOCK_SPRING -> 0;
      case FORK_CARTRIDGE_OIL, FORK_OIL -> 1;
      case FORK_AIR -> 3;
      case AXLE_POSITION -> 4;
      case TYRE_FRONT, TYRE_REAR -> 5;
      case FORK_PRELOAD, SHOCK_PRELOAD -> 6;
      case TUBE_ABOVE_CLAMP -> 7;
      case FORK_COMPRESSION, FORK_HIGH_SPEED_COMPRESSION, SHOCK_LOW_SPEED, SHOCK_HIGH_SPEED -> 8;
      case FORK_REBOUND, SHOCK_REBOUND -> 9;
      case OTHER -> 10;
    };
  }
}
