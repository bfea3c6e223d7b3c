package rutbook.notebook;

/** Something that happened to the bike besides riding and adjusting. */
public enum EventKind {
  CRASH,
  PART_CHANGED,
  FAULT_SEEN,
  CHECKED_SOUND
}
