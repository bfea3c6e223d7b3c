package rutbook.ui;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;

/** How the window looks: by day, by night, in the sun. */
public enum Theme {
  LIGHT("light.css", 1),
  DARK("dark.css", 1),
  /** Black on white, heavy, one size up. */
  SUN("sun.css", 8 / 7.0);

  private final String sheet;
  private final double enlarged;

  Theme(String sheet, double enlarged) {
    this.sheet = sheet;
    this.enlarged = enlarged;
  }

  String sheet() {
    return Theme.class.getResource(sheet).toExternalForm();
  }

  /** The sheet under ours that styles every control. */
  String base() {
    return this == DARK
        ? new PrimerDark().getUserAgentStylesheet()
        : new PrimerLight().getUserAgentStylesheet();
  }

  double enlarged() {
    return enlarged;
  }

  Theme next() {
    return values()[(ordinal() + 1) % values().length];
  }
}
