package rutbook.ui.rebuild;

import javafx.geometry.Pos;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;

/** A row that is touched like a key and whose text breaks into lines. */
final class StepRow extends HBox {
  private final Runnable action;

  StepRow(Node sign, Node text, Runnable action) {
    super(6, sign, text);
    this.action = action;
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("step-row");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setOnMouseClicked(event -> action.run());
    setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
            action.run();
            event.consume();
          }
        });
  }

  @Override
  public void executeAccessibleAction(AccessibleAction wanted, Object... parameters) {
    if (wanted == AccessibleAction.FIRE) {
      action.run();
    } else {
      super.executeAccessibleAction(wanted, parameters);
    }
  }
}
