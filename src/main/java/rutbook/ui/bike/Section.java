package rutbook.ui.bike;

import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One side of the bike that can be looked at and changed. */
abstract class Section extends VBox {
  private final BikeDesk desk;

  Section(BikeDesk desk, String name) {
    super(10);
    this.desk = desk;
    setId("bike-" + name);
    setMinHeight(0);
    VBox.setVgrow(this, Priority.ALWAYS);
  }

  final BikeDesk desk() {
    return desk;
  }

  /** Shows the bike as it is now. */
  abstract void show(BikeModel model);

  /** What Ctrl+N makes here, if anything. */
  void newThing() {}
}
