package rutbook.notebook;

/** What goes in new with a rebuild. */
public enum Renewed {
  OIL,
  SEALS,
  SPRING,
  VALVING
}
