package rutbook.notebook;

/** A chosen reading is inside its limits; a found one is kept as it was found. */
public enum How {
  SET,
  FOUND
}
