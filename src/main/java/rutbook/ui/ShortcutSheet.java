package rutbook.ui;

import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Keys;

/** All keys on one sheet. */
final class ShortcutSheet extends VBox {
  private static final String[][] ROWS = {
    {"Ctrl+1 … 6", "shortcuts.pages"},
    {"Ctrl+L", "shortcuts.back"},
    {"Ctrl+N", "shortcuts.new.session"},
    {"Ctrl+F", "shortcuts.search"},
    {"Ctrl+Z", "shortcuts.undo"},
    {"Ctrl+Y", "shortcuts.redo"},
    {"Ctrl+O", "shortcuts.open"},
    {"Ctrl+Shift+S", "shortcuts.copy"},
    {"Ctrl++  Ctrl+−", "shortcuts.text"},
    {"Ctrl+Shift+T", "shortcuts.theme"},
    {"← →", "shortcuts.step"},
    {"Page Up, Page Down", "shortcuts.steps"},
    {"Home, End", "shortcuts.ends"},
    {"0 … 5", "shortcuts.severity"},
    {"F1", "shortcuts.sheet"}
  };

  ShortcutSheet(Desk desk) {
    super(12);
    setId("shortcut-sheet");
    GridPane grid = new GridPane();
    grid.setHgap(24);
    grid.setVgap(7);
    for (int i = 0; i < ROWS.length; i++) {
      grid.add(Keys.label(ROWS[i][0], "shortcut"), 0, i);
      grid.add(Keys.label(desk.text(ROWS[i][1])), 1, i);
    }
    getChildren().addAll(Keys.label(desk.text("shortcuts.title"), "page-title"), grid);
  }
}
