package rutbook.ui.log;

import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;

/** A link of the chain: what was changed before a moto, and in which sense. */
final class ChainLink extends HBox {
  /** All that a link shows; equal ones look alike. */
  record Face(SessionModel.Ride ride, boolean low) {
    int moves() {
      return low ? 1 : 2;
    }
  }

  private final Desk desk;
  private final Face face;

  ChainLink(Desk desk, Face face, Runnable choose) {
    this.desk = desk;
    this.face = face;
    setAlignment(Pos.CENTER);
    Button link = new Button();
    link.getStyleClass().setAll("button", "chain-link");
    if (face.low()) {
      link.getStyleClass().add("low");
    }
    link.setId("link-" + face.ride().number());
    link.setGraphic(text());
    link.setMinWidth(Region.USE_PREF_SIZE);
    link.setOnAction(event -> choose.run());
    link.setAccessibleText(spoken());
    setMinWidth(USE_PREF_SIZE);
    getChildren().addAll(Chain.bar(), link, Chain.bar());
  }

  Face face() {
    return face;
  }

  private VBox text() {
    VBox text = new VBox(face.low() ? 0 : 1);
    text.setAlignment(Pos.CENTER);
    List<SessionModel.Moved> moved = face.ride().moved();
    if (moved.isEmpty()) {
      text.getChildren().add(Keys.label(desk.text("link.same"), "condensed", "soft"));
      return text;
    }
    List<SessionModel.Moved> first = moved.subList(0, Math.min(face.moves(), moved.size()));
    for (SessionModel.Moved each : first) {
      text.getChildren()
          .addAll(
              Keys.label(each.setting().name(), "condensed"),
              Keys.label(
                  desk.settingWords().move(each.setting(), each.from(), each.to()), "strong"),
              sense(each, each == first.get(first.size() - 1)));
    }
    return text;
  }

  /** The last line also says how many changes have no room. */
  private HBox sense(SessionModel.Moved each, boolean last) {
    HBox line =
        new HBox(
            6,
            Keys.label(
                desk.settingWords().sense(each.setting(), each.from(), each.to()), "condensed"));
    line.setAlignment(Pos.CENTER);
    int more = face.ride().moved().size() - face.moves();
    if (last && more > 0) {
      line.getChildren().add(Keys.label(desk.text("link.more", more), "condensed", "soft"));
    }
    return line;
  }

  private String spoken() {
    List<SessionModel.Moved> moved = face.ride().moved();
    return moved.isEmpty()
        ? desk.text("link.same")
        : moved.stream()
            .map(
                each ->
                    each.setting().name()
                        + " "
                        + desk.settingWords().change(each.setting(), each.from(), each.to()))
            .collect(Collectors.joining(". "));
  }
}
