package rutbook.ui.controls;

import javafx.scene.layout.HBox;
import javafx.scene.shape.Rectangle;

/** Five small squares, as many filled as it was bad; gone is a word, never an empty row. */
public final class Severity extends HBox {
  private static final int MOST = 5;
  private static final double SIDE = 9;

  public Severity(int severity, String gone) {
    super(3);
    setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    setMinWidth(USE_PREF_SIZE);
    if (severity == 0) {
      getChildren().add(Keys.label(gone, "number", "blue"));
      return;
    }
    for (int i = 1; i <= MOST; i++) {
      Rectangle square = new Rectangle(SIDE, SIDE);
      square.setArcWidth(4);
      square.setArcHeight(4);
      square.getStyleClass().add(i <= severity ? "severity-on" : "severity-off");
      getChildren().add(square);
    }
  }
}
