package rutbook.ui.compare;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.ui.Desk;
import rutbook.ui.SideChoice;
import rutbook.ui.SideOptions;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.Background;

/**
 * The list that a side is chosen from, with the search above it: Down goes from the search into the
 * list, Enter takes what is chosen there or else the first, Esc leaves things as they are.
 */
final class SideList extends VBox {
  private final TextField search = new TextField();
  private final ListView<SideChoice> list = new ListView<>();
  private final Label title = Keys.label("", "card-title");
  private final Label none;
  private SideOptions options;
  private Consumer<SideChoice> chosen = option -> {};
  private final Runnable left;

  /**
   * @param left is run when nothing is chosen
   */
  SideList(Desk desk, Runnable left) {
    super(8);
    this.left = left;
    setId("compare-list");
    search.setId("compare-search");
    search.setPromptText(desk.text("compare.search"));
    search.setAccessibleText(desk.text("compare.search"));
    search.getStyleClass().add("large-target");
    search.textProperty().addListener((text, before, now) -> narrow());
    none = Keys.prose(desk.text("compare.search.none"), "soft");
    none.managedProperty().bind(none.visibleProperty());
    list.setId("compare-options");
    list.setAccessibleText(desk.text("compare.sides"));
    list.setFixedCellSize(44);
    list.setCellFactory(view -> new Cell());
    list.setMinHeight(0);
    VBox.setVgrow(list, Priority.ALWAYS);
    HBox.setHgrow(search, Priority.ALWAYS);
    HBox top =
        new HBox(8, search, Keys.key("compare-list-leave", desk.text("compare.leave"), left));
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    getChildren().addAll(title, top, none, list);
  }

  /** Asks for a side; the search is empty and has the cursor. */
  void ask(String of, SideOptions all, SideChoice now, Consumer<SideChoice> then) {
    options = all;
    chosen = then;
    title.setText(of);
    search.clear();
    narrow();
    list.getSelectionModel().select(now);
    int first = Math.max(0, list.getItems().indexOf(now) - 2);
    Background.afterwards(() -> list.scrollTo(first));
    search.requestFocus();
  }

  private void narrow() {
    list.getItems().setAll(options.matching(search.getText()));
    none.setVisible(list.getItems().isEmpty());
  }

  private void key(KeyEvent event) {
    boolean inSearch = search.isFocused();
    if (event.getCode() == KeyCode.ESCAPE) {
      left.run();
      event.consume();
    } else if (event.getCode() == KeyCode.ENTER) {
      take();
      event.consume();
    } else if (inSearch && event.getCode() == KeyCode.DOWN && !list.getItems().isEmpty()) {
      list.requestFocus();
      list.getSelectionModel().selectFirst();
      list.scrollTo(0);
      event.consume();
    }
  }

  private void take() {
    SideChoice selected = list.getSelectionModel().getSelectedItem();
    if (search.isFocused() && !search.getText().isBlank()) {
      selected = list.getItems().isEmpty() ? null : list.getItems().get(0);
    }
    if (selected != null) {
      chosen.accept(selected);
    }
  }

  private final class Cell extends ListCell<SideChoice> {
    Cell() {
      addEventHandler(
          MouseEvent.MOUSE_CLICKED,
          event -> {
            if (getItem() != null) {
              chosen.accept(getItem());
            }
          });
    }

    @Override
    protected void updateItem(SideChoice option, boolean empty) {
      super.updateItem(option, empty);
      setText(empty || option == null ? "" : options.said(option));
    }
  }
}
