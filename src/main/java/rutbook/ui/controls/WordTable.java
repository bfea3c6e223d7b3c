package rutbook.ui.controls;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import rutbook.words.Table;

/**
 * A table of words and values: names at the left, values at the right. Where it is too narrow for
 * its columns, each row stands as a name with its values below, so that nothing is cut.
 */
public final class WordTable extends VBox {
  private static final double GAP = 12;
  private static final double LEAST_NAME = 64;
  private static final double LEAST_HEAD = 46;
  private static final double MOST_WIDTH = 640;

  private final Table table;
  private final GridPane grid = new GridPane();
  private final VBox stacked = new VBox(6);
  private double needed;

  public WordTable(Table table) {
    this.table = table;
    getStyleClass().add("word-table");
    setMaxWidth(MOST_WIDTH);
    setMinWidth(LEAST_NAME);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.TEXT);
    setAccessibleText(
        table.rows().stream()
            .map(row -> row.get(0) + ": " + values(row, ", "))
            .collect(Collectors.joining(". ")));
    grid.setHgap(GAP);
    grid.setVgap(4);
    if (table.head().stream().anyMatch(name -> !name.isEmpty())) {
      addLine(table.head(), 0, "grid-head", "grid-head");
    }
    for (int i = 0; i < table.rows().size(); i++) {
      List<String> row = table.rows().get(i);
      addLine(row, i + 1, "condensed", "number");
      stacked
          .getChildren()
          .add(
              new VBox(
                  Keys.prose(row.get(0), "number"), Keys.prose(values(row, " · "), "condensed")));
    }
    getChildren().add(grid);
    widthProperty().addListener((width, before, now) -> fit(now.doubleValue()));
  }

  private void addLine(List<String> cells, int row, String nameStyle, String valueStyle) {
    for (int column = 0; column < cells.size(); column++) {
      Label cell = Keys.prose(cells.get(column), column == 0 ? nameStyle : valueStyle);
      if (column == 0) {
        cell.setMinWidth(LEAST_NAME);
        GridPane.setHgrow(cell, Priority.ALWAYS);
      } else {
        boolean head = row == 0;
        cell.setWrapText(head);
        cell.setMinWidth(Region.USE_PREF_SIZE);
        if (head) {
          cell.fontProperty().addListener((font, before, now) -> cell.setMinWidth(longest(cell)));
          cell.setMinWidth(longest(cell));
        }
        cell.setTextAlignment(TextAlignment.RIGHT);
        GridPane.setHalignment(cell, HPos.RIGHT);
      }
      GridPane.setValignment(cell, row == 0 ? VPos.BOTTOM : VPos.CENTER);
      grid.add(cell, column, row);
    }
  }

  /** A head breaks between its words and never within one. */
  private static double longest(Label head) {
    double most = LEAST_HEAD;
    for (String word : head.getText().split(" ")) {
      Text text = new Text(word);
      text.setFont(head.getFont());
      most = Math.max(most, Math.ceil(text.getLayoutBounds().getWidth()) + 1);
    }
    return most;
  }

  /** Columns where they fit; what they need is only known while they are shown. */
  private void fit(double width) {
    if (getChildren().contains(grid)) {
      needed = grid.minWidth(-1) + getInsets().getLeft() + getInsets().getRight();
    }
    Region wanted = needed > width ? stacked : grid;
    if (!getChildren().contains(wanted)) {
      getChildren().setAll(wanted);
    }
  }

  /** The values of a row, each after the name of its column. */
  private String values(List<String> row, String between) {
    return IntStream.range(1, row.size())
        .mapToObj(
            column -> {
              String head = table.head().get(column);
              return head.isEmpty() ? row.get(column) : head + " " + row.get(column);
            })
        .collect(Collectors.joining(between));
  }
}
