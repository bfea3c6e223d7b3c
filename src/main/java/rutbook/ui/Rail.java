package rutbook.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.javafx.FontIcon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignD;
import org.kordamp.ikonli.materialdesign2.MaterialDesignR;
import org.kordamp.ikonli.materialdesign2.MaterialDesignU;
import rutbook.edit.History;
import rutbook.ui.controls.Hint;
import rutbook.ui.controls.Keys;

/** The rail at the left: the pages, undo and redo by name, the menu, and whether all is saved. */
final class Rail extends VBox {
  /** In a rail lower than this, undo and redo are their signs alone: no name is cut. */
  private static final double LOW_EM = 50;

  private final Desk desk;
  private final List<ToggleButton> pages = new ArrayList<>();
  private final Button undo;
  private final Button redo;
  private final Button light;
  private String more = "";

  Rail(Desk desk, Consumer<Place> go, FileMenu files) {
    this.desk = desk;
    setId("rail");
    getStyleClass().add("rail");
    for (Pages.OnRail each : Pages.RAIL) {
      ToggleButton page = new ToggleButton(desk.text("rail." + each.name()));
      styled(page, "rail-" + each.name(), each.icon(), "toggle-button");
      page.setUserData(each.name());
      page.setOnAction(event -> go.accept(each.place()));
      pages.add(page);
    }
    undo = tool("undo", MaterialDesignU.UNDO, this::undo);
    redo = tool("redo", MaterialDesignR.REDO, this::redo);
    Button menu = tool("menu", MaterialDesignD.DOTS_HORIZONTAL, () -> {});
    menu.setOnAction(event -> files.show(menu));
    menu.setAccessibleText(desk.text("menu"));
    light = Keys.key("save-light", "", files::settle);
    light.getStyleClass().setAll("button", "save-light");
    light.setMaxWidth(Double.MAX_VALUE);
    light.setWrapText(true);
    Hint.on(light, () -> more);
    Region gap = new Region();
    VBox.setVgrow(gap, Priority.ALWAYS);
    getChildren().addAll(pages);
    getChildren().addAll(gap, undo, redo, menu, light);
  }

  private Button tool(String id, Ikon icon, Runnable action) {
    Button tool = new Button();
    styled(tool, id, icon, "button");
    tool.getStyleClass().add("tool");
    Hint.on(tool, tool::getAccessibleText);
    tool.setOnAction(event -> action.run());
    return tool;
  }

  private static void styled(ButtonBase button, String id, Ikon icon, String kind) {
    button.setId(id);
    button.getStyleClass().setAll(kind, "rail-item");
    button.setGraphic(new FontIcon(icon));
    button.setMaxWidth(Double.MAX_VALUE);
  }

  /** The first icon brings the font of all of them. */
  static void loadIcons() {
    new FontIcon(MaterialDesignU.UNDO);
  }

  @Override
  protected void layoutChildren() {
    boolean low = getHeight() < LOW_EM * desk.em();
    pseudoClassStateChanged(PseudoClass.getPseudoClass("low"), low);
    super.layoutChildren();
  }

  void show(Place place) {
    String name = Pages.railName(place);
    pages.forEach(page -> page.setSelected(page.getUserData().equals(name)));
  }

  void show(History history) {
    name(undo, history.undoable(), "undo");
    name(redo, history.redoable(), "redo");
  }

  private void name(Button button, Optional<History.Step> step, String key) {
    String text =
        step.map(each -> desk.text(key + ".of", desk.words().edit(each.edit())))
            .orElseGet(() -> desk.text(key));
    button.setDisable(step.isEmpty());
    button.setText(desk.text(key));
    button.setAccessibleText(text);
  }

  void undo() {
    desk.editor().undo();
  }

  void redo() {
    desk.editor().redo();
  }

  void show(SaveLight.State state) {
    light.getStyleClass().remove("failed");
    if (state instanceof SaveLight.State.Saved saved) {
      light.setText(desk.text("saved.at", desk.words().time(saved.at())));
      more = light.getText();
    } else if (state instanceof SaveLight.State.Failed failed) {
      light.setText(desk.text("saved.failed"));
      more = desk.text("saved.failed.more", failed.sentence());
      light.getStyleClass().add("failed");
    } else {
      light.setText(desk.text("saved.waiting"));
      more = light.getText();
    }
    light.setAccessibleText(more);
    light.setFocusTraversable(state instanceof SaveLight.State.Failed);
  }
}
