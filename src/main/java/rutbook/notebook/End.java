package rutbook.notebook;

/** An end of the bike, or the whole of it. */
public enum End {
  FRONT,
  REAR,
  WHOLE_BIKE
}
