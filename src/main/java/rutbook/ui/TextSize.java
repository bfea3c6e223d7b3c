package rutbook.ui;

/** How large text is; everything measured in text grows with it. */
public enum TextSize {
  SMALL(90),
  NORMAL(100),
  LARGE(115),
  LARGEST(135);

  private static final double BASE_PIXELS = 14;

  private final int percent;

  TextSize(int percent) {
    this.percent = percent;
  }

  public int percent() {
    return percent;
  }

  /** The size nearest to so many percent. */
  public static TextSize nearest(int percent) {
    TextSize nearest = NORMAL;
    for (TextSize size : values()) {
      if (Math.abs(size.percent - percent) < Math.abs(nearest.percent - percent)) {
        nearest = size;
      }
    }
    return nearest;
  }

  double pixels(Theme theme) {
    return BASE_PIXELS * percent / 100 * theme.enlarged();
  }

  TextSize larger() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }

  TextSize smaller() {
    return values()[Math.max(ordinal() - 1, 0)];
  }
}
