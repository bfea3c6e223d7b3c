package rutbook.ui;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Keys;

/** What stands on a page while the notebook has no bike: why it is empty, and the way to one. */
public final class NoBike extends VBox {
  private static final double WIDEST_EM = 44;

  /**
   * @param text why the page needs a bike
   */
  public NoBike(Desk desk, String text) {
    super(10);
    Label prose = Keys.prose(text, "soft");
    prose.setMaxWidth(WIDEST_EM * desk.em());
    getChildren()
        .addAll(
            prose,
            Keys.mainKey(
                "make-bike",
                desk.text("log.empty.make"),
                () -> desk.go(new Place.Bike(Place.BikePart.SETTINGS))));
    setAlignment(Pos.TOP_LEFT);
    getStyleClass().add("wash");
    setId("no-bike");
    setMaxHeight(USE_PREF_SIZE);
  }
}
