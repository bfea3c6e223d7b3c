package rutbook.ui.bike;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Keys;

/** The faces of rows, headings, and what stands beside a list while nothing is chosen. */
final class Rows {
  private Rows() {}

  /** What it is, more about it below, and its value at the right. */
  static Node face(String what, String more, String value, String... valueStyles) {
    Label name = Keys.prose(what, "strong");
    VBox text = new VBox(1, name);
    if (!more.isBlank()) {
      text.getChildren().add(Keys.prose(more, "soft", "condensed"));
    }
    text.setMinWidth(0);
    text.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(text, Priority.ALWAYS);
    Label said = Keys.label(value, "number");
    said.getStyleClass().addAll(valueStyles);
    said.setMinWidth(Region.USE_PREF_SIZE);
    HBox face = new HBox(12, text, said);
    face.setAlignment(Pos.CENTER_LEFT);
    return face;
  }

  static Label heading(String text) {
    Label heading = Keys.label(text, "group-title");
    heading.setPadding(new javafx.geometry.Insets(8, 0, 2, 10));
    return heading;
  }

  /** Keys side by side, in as many rows as it takes. */
  static FlowPane keys(Node... keys) {
    return new FlowPane(8, 8, keys);
  }

  /** What stands beside the list: a wash with its title and lines. */
  static VBox aside(String title, Node... lines) {
    VBox box = new VBox(12, Keys.prose(title, "card-title"));
    box.getChildren().addAll(lines);
    box.getStyleClass().add("wash");
    box.setMaxHeight(Region.USE_PREF_SIZE);
    return box;
  }
}
