package rutbook.notebook;

/** What a setting does on the bike; rules speak of roles, never of names. */
public enum Role {
  FORK_SPRING(End.FRONT),
  FORK_PRELOAD(End.FRONT),
  FORK_AIR(End.FRONT),
  FORK_OIL(End.FRONT),
  FORK_CARTRIDGE_OIL(End.FRONT),
  TUBE_ABOVE_CLAMP(End.FRONT),
  FORK_COMPRESSION(End.FRONT),
  FORK_HIGH_SPEED_COMPRESSION(End.FRONT),
  FORK_REBOUND(End.FRONT),
  SHOCK_SPRING(End.REAR),
  SHOCK_PRELOAD(End.REAR),
  SHOCK_LOW_SPEED(End.REAR),
  SHOCK_HIGH_SPEED(End.REAR),
  SHOCK_REBOUND(End.REAR),
  AXLE_POSITION(End.REAR),
  TYRE_FRONT(End.FRONT),
  TYRE_REAR(End.REAR),
  OTHER(End.WHOLE_BIKE);

  private final End end;

  Role(End end) {
    this.end = end;
  }

  public End end() {
    return end;
  }

  /** Whether it is a damping adjuster. */
  public boolean isClicker() {
    return switch (this) {
      case FORK_COMPRESSION,
          FORK_HIGH_SPEED_COMPRESSION,
          FORK_REBOUND,
          SHOCK_LOW_SPEED,
          SHOCK_HIGH_SPEED,
          SHOCK_REBOUND ->
          true;
      case FORK_SPRING,
          FORK_PRELOAD,
          FORK_AIR,
          FORK_OIL,
          FORK_CARTRIDGE_OIL,
          TUBE_ABOVE_CLAMP,
          SHOCK_SPRING,
          SHOCK_PRELOAD,
          AXLE_POSITION,
          TYRE_FRONT,
          TYRE_REAR,
          OTHER ->
          false;
    };
  }
}
