package rutbook.notebook;

/** What a greater number does; the opposite is what a smaller one does. */
public enum Sense {
  SOFTER,
  FIRMER,
  FASTER,
  SLOWER,
  HIGHER,
  LOWER;

  public Sense opposite() {
    return switch (this) {
      case SOFTER -> FIRMER;
      case FIRMER -> SOFTER;
      case FASTER -> SLOWER;
      case SLOWER -> FASTER;
      case HIGHER -> LOWER;
      case LOWER -> HIGHER;
    };
  }
}
