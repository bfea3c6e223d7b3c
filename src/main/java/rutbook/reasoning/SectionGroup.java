package rutbook.reasoning;

import rutbook.notebook.Section;
import rutbook.notebook.Symptom;

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

  /** Where a symptom is felt first, as the trade's charts place it (common practice, no source). */
  static SectionGroup where(Symptom symptom) {
    return switch (symptom) {
      case HARSH, DEFLECTS, KICKS, BEATS_ARMS -> CHOP;
      case DIVES, POGOS, TUCKS, NOSE_HEAVY -> BRAKING;
      case PUSHES -> CORNER;
      case SQUATS, NO_DRIVE -> EXIT;
      case PACKS, WALLOWS, SWAPS, BOUNCY -> WHOOPS;
      case BOTTOMS -> LANDING;
      case HEADSHAKE, WANDERS -> STRAIGHT;
    };
  }
}
