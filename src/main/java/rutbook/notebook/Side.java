package rutbook.notebook;

/** A side of the bike as the rider sits. */
public enum Side {
  LEFT,
  RIGHT
}
