package rutbook.report;

import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Length;

/** The paper that a card is printed on. */
public enum Paper {
  A4,
  LETTER;

  /** The one that lies in the printer of somebody who measures so. */
  public static Paper usual(Display display) {
    return display.unit(Dimension.LENGTH) == Length.INCH ? LETTER : A4;
  }

  String css() {
    return "@page { size: " + (this == A4 ? "A4" : "letter") + " portrait; }\n";
  }
}
