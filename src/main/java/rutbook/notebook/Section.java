package rutbook.notebook;

/** Where on a lap it happened. */
public enum Section {
  STRAIGHT,
  BRAKING_BUMPS,
  SQUARE_EDGES,
  CORNER_ENTRY,
  MID_CORNER,
  RUTS,
  CORNER_EXIT,
  ACCELERATION_BUMPS,
  WHOOPS,
  ROLLERS,
  JUMP_FACE,
  LANDING,
  G_OUT,
  DOWNHILL,
  ROCKS_AND_ROOTS,
  SAND
}
