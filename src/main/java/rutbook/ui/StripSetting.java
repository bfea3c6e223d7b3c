package rutbook.ui;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.notebook.Role;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.Hint;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerSentence;
import rutbook.ui.controls.RulerView;
import rutbook.units.Dimension;

/** One setting in the strip: what is on the bike, with its small ruler. A touch goes there. */
final class StripSetting extends Button {
  private final Desk desk;
  private final Label group = Keys.label("", "grid-head");
  private final Label name = Keys.label("", "name");
  private final Label value = Keys.label("", "value");
  private final RulerView ruler = new RulerView(1);
  private StripModel.Item shown;

  StripSetting(Desk desk) {
    this.desk = desk;
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox top = new HBox(name, gap, value);
    top.getStyleClass().add("top");
    name.setMinWidth(Region.USE_PREF_SIZE);
    value.setMinWidth(Region.USE_PREF_SIZE);
    ruler.setPrefWidth(0);
    VBox box = new VBox(group, top, ruler);
    box.getStyleClass().add("box");
    setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    setGraphic(box);
    getStyleClass().setAll("button", "strip-setting");
    setAccessibleRole(AccessibleRole.BUTTON);
    Hint.on(this, this::hint);
    setOnAction(event -> desk.go(new Place.OfSetting(shown.setting().id())));
    setMinWidth(USE_PREF_SIZE);
  }

  void show(Sheet sheet, StripModel.Item item) {
    if (item.equals(shown)) {
      return;
    }
    shown = item;
    setId("strip-" + item.setting().id());
    name.setText(shortName(item));
    value.setText(desk.settingWords().brief(item.reading()));
    mark(value, "turns", item.setting().dimension() == Dimension.TURNS);
    mark(this, "mismatch", item.reading().legsDiffer());
    ruler.show(item.ruler());
    setAccessibleText(
        RulerSentence.of(
            desk.words(), desk.settingWords(), sheet, item.setting(), item.reading(), List.of()));
  }

  private String hint() {
    return desk.text(
        "strip.setting",
        shown.setting().name(),
        desk.settingWords().reading(shown.setting(), shown.reading()));
  }

  private static void mark(javafx.scene.Node node, String style, boolean on) {
    node.getStyleClass().remove(style);
    if (on) {
      node.getStyleClass().add(style);
    }
  }

  /** The name of its group stands above the first of its settings, and nothing above the others. */
  void head(String text) {
    group.setText(text);
  }

  private String shortName(StripModel.Item item) {
    if (item.setting().role() == Role.OTHER) {
      return item.setting().name();
    }
    String name = desk.words().name(item.setting().role());
    return switch (item.setting().carrier()) {
      case LEFT -> desk.text("strip.left", name);
      case RIGHT -> desk.text("strip.right", name);
      case PAIR, SINGLE -> name;
    };
  }
}
