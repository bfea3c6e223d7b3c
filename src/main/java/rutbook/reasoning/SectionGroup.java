package rutbook.reasoning;

import rutbook.notebook.Section;

/** Sections where a bike asks the same of its suspension; evidence is pooled within one. */
public enum SectionGroup {
  CHOP,
  BRAKING,
  CORNER,
  EXIT,
  WHOOPS,
  LANDING,
  STRAIGHT;

  public static SectionGroup of(Section section) {
    return switch (section) {
      case SQUARE_EDGES, ROCKS_AND_ROOTS -> CHOP;
      case BRAKING_BUMPS, CORNER_ENTRY, DOWNHILL -> BRAKING;
      case MID_CORNER, RUTS -> CORNER;
      case CORNER_EXIT, ACCELERATION_BUMPS -> EXIT;
      case WHOOPS, ROLLERS -> WHOOPS;
      case JUMP_FACE, LANDING, G_OUT -> LANDING;
      case STRAIGHT, SAND -> STRAIGHT;
    };
  }
}
