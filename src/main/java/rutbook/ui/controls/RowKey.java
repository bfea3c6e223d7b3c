package rutbook.ui.controls;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A row of a list that is touched as a whole; unlike a button it breaks its text into lines. */
public final class RowKey extends HBox {
  private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

  private Runnable action = () -> {};
  private boolean selected;

  public RowKey(String id) {
    setId(id);
    getStyleClass().add("list-row");
    setAlignment(Pos.CENTER_LEFT);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.TOGGLE_BUTTON);
    addEventHandler(MouseEvent.MOUSE_CLICKED, this::clicked);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  public void show(Node face, String said, Runnable whenTouched) {
    HBox.setHgrow(face, Priority.ALWAYS);
    getChildren().setAll(face);
    setAccessibleText(said);
    action = whenTouched;
  }

  public void select(boolean now) {
    selected = now;
    pseudoClassStateChanged(SELECTED, now);
    notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTED);
  }

  public boolean isSelected() {
    return selected;
  }

  /** As a touch would. */
  public void fire() {
    action.run();
  }

  private void clicked(MouseEvent event) {
    if (event.getButton() == MouseButton.PRIMARY) {
      requestFocus();
      fire();
    }
  }

  private void key(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
      fire();
      event.consume();
    }
  }

  @Override
  public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
    return attribute == AccessibleAttribute.SELECTED
        ? (Object) selected
        : super.queryAccessibleAttribute(attribute, parameters);
  }

  @Override
  public void executeAccessibleAction(AccessibleAction wanted, Object... parameters) {
    if (wanted == AccessibleAction.FIRE) {
      fire();
    } else {
      super.executeAccessibleAction(wanted, parameters);
    }
  }
}
