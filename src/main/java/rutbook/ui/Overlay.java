package rutbook.ui;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Keys;

/** What stands over the page until it is answered: a question, trouble, the shortcut sheet. */
final class Overlay extends StackPane {
  private final Desk desk;
  private final VBox box = new VBox(14);
  private Node focusBefore;

  Overlay(Desk desk) {
    this.desk = desk;
    setId("overlay");
    getStyleClass().add("overlay");
    box.getStyleClass().addAll("card", "overlay-box");
    box.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    box.setStyle("-fx-padding: 1.6em;");
    getChildren().add(box);
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            hide();
            event.consume();
          }
        });
    setVisible(false);
  }

  /** A way to answer: what stands on the key, and what it does. */
  record Choice(String text, Runnable action) {}

  void show(Node content) {
    show(content, List.of());
  }

  void ask(String title, String text, String yes, Runnable doIt, String other, Runnable doOther) {
    List<Choice> choices = List.of(new Choice(other, doOther), new Choice(yes, doIt));
    show(told(title, text), choices, desk.text("close.stay"));
  }

  void tell(String title, String text, List<Choice> choices) {
    show(told(title, text), choices);
  }

  private Node told(String title, String text) {
    Region prose = Keys.prose(text);
    prose.setMaxWidth(520);
    prose.setPrefWidth(520);
    prose.setId("overlay-text");
    return new VBox(8, Keys.label(title, "page-title"), prose);
  }

  private void show(Node content, List<Choice> choices) {
    show(content, choices, desk.text("trouble.close"));
  }

  private void show(Node content, List<Choice> choices, String closing) {
    if (!isVisible()) {
      focusBefore = getScene() == null ? null : getScene().getFocusOwner();
    }
    Button close = Keys.mainKey("overlay-close", closing, this::hide);
    HBox row = new HBox(8);
    row.setAlignment(Pos.CENTER_RIGHT);
    for (Choice choice : choices) {
      row.getChildren()
          .add(
              Keys.key(
                  "overlay-choice-" + row.getChildren().size(),
                  choice.text(),
                  () -> {
                    hide();
                    choice.action().run();
                  }));
    }
    row.getChildren().add(close);
    box.getChildren().setAll(content, row);
    setVisible(true);
    close.requestFocus();
  }

  void hide() {
    setVisible(false);
    box.getChildren().clear();
    if (focusBefore != null) {
      focusBefore.requestFocus();
    }
  }
}
