package rutbook.ui;

import java.util.Optional;

/** Keeps how the rider likes the window, from one start to the next. */
public interface WindowMemory {
  /**
   * The window as it was left.
   *
   * @param textPercent size of the text, of the usual
   */
  record Look(Theme theme, int textPercent, Optional<Bounds> bounds) {
    public static final Look FIRST = new Look(Theme.LIGHT, 100, Optional.empty());

    Look with(Theme newTheme) {
      return new Look(newTheme, textPercent, bounds);
    }

    Look with(TextSize size) {
      return new Look(theme, size.percent(), bounds);
    }

    Look with(Bounds newBounds) {
      return new Look(theme, textPercent, Optional.of(newBounds));
    }
  }

  /** Place and size on the screen; when maximised, those to go back to. */
  record Bounds(double x, double y, double width, double height, boolean maximised) {}

  Look remembered();

  void remember(Look look);
}
