package rutbook.notebook;

/** Where the count or measure of a setting starts. */
public enum Datum {
  OUT_FROM_CLOSED,
  IN_FROM_OPEN,
  FROM_MARK,
  ABSOLUTE
}
