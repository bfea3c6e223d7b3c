package rutbook.notebook;

/** What the bike did, in the words of the trade. */
public enum Symptom {
  HARSH,
  BOTTOMS,
  DIVES,
  PACKS,
  POGOS,
  TUCKS,
  PUSHES,
  HEADSHAKE,
  DEFLECTS,
  KICKS,
  WALLOWS,
  SQUATS,
  NO_DRIVE,
  SWAPS,
  BOUNCY,
  NOSE_HEAVY,
  BEATS_ARMS,
  WANDERS
}
