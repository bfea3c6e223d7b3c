package rutbook.ui.next;

import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.reasoning.NextChange;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;

/** What to do where no setting is to be changed: said, and a way to where it is done. */
final class Instead extends VBox {
  private final Desk desk;
  private final FlowPane ways = new FlowPane(8, 8);

  Instead(Desk desk, NextChange.Kind kind) {
    super(10);
    this.desk = desk;
    setId("next-instead");
    getStyleClass().add("wash");
    getChildren().add(Keys.prose(desk.text("next.instead." + kind.name())));
    switch (kind) {
      case NOTHING_RIDDEN -> way("log", "next.instead.log", new Place.Log());
      case STOP -> way("history", "next.instead.history", new Place.Bike(Place.BikePart.HISTORY));
      case LEAVE_ALONE -> way("baseline", "next.instead.baseline", new Place.Rebuild());
      case NO_SETTING_HELPS -> {
        way("shock", "next.instead.sag", new Place.Bike(Place.BikePart.SHOCK));
        way("fork", "next.instead.fork", new Place.Bike(Place.BikePart.FORK));
        way("service", "next.instead.service", new Place.Bike(Place.BikePart.SERVICE));
      }
      case CHANGE, TEST -> {}
    }
    if (!ways.getChildren().isEmpty()) {
      getChildren().add(ways);
    }
  }

  /** Whether there is anything to say instead of a change. */
  static boolean isFor(NextChange.Kind kind) {
    return kind != NextChange.Kind.CHANGE && kind != NextChange.Kind.TEST;
  }

  private void way(String id, String key, Place place) {
    ways.getChildren().add(Keys.key("instead-" + id, desk.text(key), () -> desk.go(place)));
  }
}
