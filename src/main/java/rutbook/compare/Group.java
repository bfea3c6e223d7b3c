package rutbook.compare;

import rutbook.notebook.Role;

/** The part of the bike under which a setting is listed. */
public enum Group {
  FORK,
  SHOCK,
  CHASSIS,
  TYRES;

  public static Group of(Role role) {
    return switch (role) {
      case FORK_SPRING,
          FORK_PRELOAD,
          FORK_AIR,
          FORK_OIL,
          FORK_CARTRIDGE_OIL,
          FORK_COMPRESSION,
          FORK_HIGH_SPEED_COMPRESSION,
          FORK_REBOUND ->
          FORK;
      case SHOCK_SPRING, SHOCK_PRELOAD, SHOCK_LOW_SPEED, SHOCK_HIGH_SPEED, SHOCK_REBOUND -> SHOCK;
      case TUBE_ABOVE_CLAMP, AXLE_POSITION, OTHER -> CHASSIS;
      case TYRE_FRONT, TYRE_REAR -> TYRES;
    };
  }
}
