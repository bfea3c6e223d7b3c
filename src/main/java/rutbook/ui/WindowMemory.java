package rutbook.ui;

import java.util.Optional;
import rutbook.words.Language;

/** Keeps how the rider likes the window, from one start to the next. */
public interface WindowMemory {
  /**
   * The window as it was left.
   *
   * @param language chosen by the rider; empty for the system's
   * @param textPercent size of the text, of the usual
   */
  record Look(Theme theme, Optional<Language> language, int textPercent, Optional<Bounds> bounds) {
    public static final Look FIRST = new Look(Theme.LIGHT, Optional.empty(), 100, Optional.empty());

    Look with(Theme newTheme) {
      return new Look(newTheme, language, textPercent, bounds);
    }

    Look with(Language chosen) {
      return new Look(theme, Optional.of(chosen), textPercent, bounds);
    }

    Look with(TextSize size) {
      return new Look(theme, language, size.percent(), bounds);
    }

    Look with(Bounds newBounds) {
      return new Look(theme, language, textPercent, Optional.of(newBounds));
    }
  }

  /** Place and size on the screen; when maximised, those to go back to. */
  record Bounds(double x, double y, double width, double height, boolean maximised) {}

  Look remembered();

  void remember(Look look);
}
