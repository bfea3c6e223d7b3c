package rutbook.bench;

import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Scene;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.stage.Stage;

/** The least there can be: a themed window with a table of ten thousand rows, and nothing else. */
public final class BareTable {
  private static final int ROWS = 10_000;
  private static final int COLUMNS = 5;

  private BareTable() {}

  public static void main(String[] arguments) {
    Platform.startup(BareTable::open);
  }

  private static void open() {
    Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
    TableView<Integer> table = new TableView<>();
    for (int i = 0; i < COLUMNS; i++) {
      int place = i;
      TableColumn<Integer, String> column = new TableColumn<>("Column " + i);
      column.setCellValueFactory(row -> new ReadOnlyStringWrapper(row.getValue() + " of " + place));
      table.getColumns().add(column);
    }
    for (int i = 0; i < ROWS; i++) {
      table.getItems().add(i);
    }
    Stage stage = new Stage();
    stage.setScene(new Scene(table, 1280, 800));
    stage.show();
    FirstFrame.tell();
  }
}
