package rutbook.ui;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;

/** All keys on one sheet: those of the window, and those of what is on a page. */
final class ShortcutSheet extends VBox {
  private static final double ROOM_AROUND = 190;

  private static final List<String> ON_A_PAGE =
      List.of("tab", "row", "severity", "trust", "ruler", "typed", "count", "entry", "escape");

  ShortcutSheet(Desk desk, Shortcuts shortcuts) {
    super(12);
    setId("shortcut-sheet");
    GridPane window = grid();
    for (Shortcuts.Shortcut each : shortcuts.all()) {
      row(window, each.keys(), desk.text(each.key()));
    }
    GridPane page = grid();
    for (String each : ON_A_PAGE) {
      row(page, desk.text("shortcuts.keys." + each), desk.text("shortcuts.does." + each));
    }
    HBox both =
        new HBox(
            28,
            new VBox(6, Keys.label(desk.text("shortcuts.window"), "group-title"), window),
            new VBox(6, Keys.label(desk.text("shortcuts.page"), "group-title"), page));
    ScrollPane scroll = Scrolling.inWindow(both, ROOM_AROUND);
    scroll.setId("shortcut-keys");
    getChildren().addAll(Keys.label(desk.text("shortcuts.title"), "page-title"), scroll);
  }

  private static GridPane grid() {
    GridPane grid = new GridPane();
    grid.setHgap(16);
    grid.setVgap(5);
    return grid;
  }

  private static void row(GridPane grid, String keys, String text) {
    int row = grid.getRowCount();
    Label named = Keys.label(keys, "shortcut");
    named.setMinWidth(USE_PREF_SIZE);
    grid.add(named, 0, row);
    grid.add(Keys.prose(text), 1, row);
  }
}
