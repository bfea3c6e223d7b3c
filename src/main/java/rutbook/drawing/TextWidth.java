package rutbook.drawing;

/**
 * How wide a text may come out at most, without asking a toolkit: letters of the window's condensed
 * face are narrower than this, so that what is kept apart by it never overlaps.
 */
public final class TextWidth {
  private static final double NARROW = 0.35;
  private static final double USUAL = 0.56;
  private static final double LARGE = 0.66;
  private static final double WIDE = 0.88;

  private TextWidth() {}

  /** In pixels, for a size in pixels. */
  public static double of(String text, double size) {
    return text.codePoints().mapToDouble(TextWidth::ems).sum() * size;
  }

  private static double ems(int letter) {
    if ("ijlft.,:;'|!·()[]{}² ".indexOf(letter) >= 0) {
      return NARROW;
    }
    if ("mwMW@%—…".indexOf(letter) >= 0) {
      return WIDE;
    }
    return Character.isUpperCase(letter) || "#&".indexOf(letter) >= 0 ? LARGE : USUAL;
  }
}
