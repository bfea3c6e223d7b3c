package rutbook.ui.controls;

import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import rutbook.words.Table;

/** A table of words and values: names at the left, values at the right, nothing cut. */
public final class WordTable extends GridPane {
  private static final double GAP = 14;
  private static final double MOST_WIDTH = 640;

  public WordTable(Table table) {
    getStyleClass().add("word-table");
    setHgap(GAP);
    setVgap(4);
    setMaxWidth(MOST_WIDTH);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.TEXT);
    setAccessibleText(said(table));
    boolean headed = table.head().stream().anyMatch(name -> !name.isEmpty());
    if (headed) {
      addLine(table.head(), 0, "grid-head", "grid-head");
    }
    for (int i = 0; i < table.rows().size(); i++) {
      addLine(table.rows().get(i), i + 1, "condensed", "number");
    }
  }

  private void addLine(List<String> cells, int row, String nameStyle, String valueStyle) {
    for (int column = 0; column < cells.size(); column++) {
      boolean name = column == 0;
      Label cell = Keys.prose(cells.get(column), name ? nameStyle : valueStyle);
      if (name) {
        setHgrow(cell, Priority.ALWAYS);
      } else {
        cell.setWrapText(false);
        cell.setMinWidth(Region.USE_PREF_SIZE);
        setHalignment(cell, HPos.RIGHT);
      }
      add(cell, column, row);
    }
  }

  /** Row by row, each value after the name of its column. */
  private static String said(Table table) {
    StringBuilder said = new StringBuilder();
    for (List<String> row : table.rows()) {
      said.append(row.get(0)).append(": ");
      for (int i = 1; i < row.size(); i++) {
        String head = table.head().get(i);
        said.append(head.isEmpty() ? "" : head + " ").append(row.get(i));
        said.append(i + 1 < row.size() ? ", " : ". ");
      }
    }
    return said.toString().strip();
  }
}
