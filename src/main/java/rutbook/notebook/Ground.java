package rutbook.notebook;

/** What a track is made of. */
public enum Ground {
  SAND,
  LOAM,
  LOAM_OVER_HARD,
  CLAY,
  HARD_PACK,
  STONES,
  ROCKS_AND_ROOTS,
  GRASS,
  MIXED
}
