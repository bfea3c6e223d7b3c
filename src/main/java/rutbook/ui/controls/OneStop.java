package rutbook.ui.controls;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;

/**
 * Makes the keys of a pane one stop of the Tab key: the arrows move among them, so that twenty keys
 * do not take twenty presses to pass.
 */
public final class OneStop {
  private final Pane pane;

  private OneStop(Pane pane) {
    this.pane = pane;
  }

  /** The keys are those that are the pane's children now and later. */
  public static void of(Pane pane) {
    OneStop stop = new OneStop(pane);
    pane.getChildren().addListener((ListChangeListener<Node>) change -> stop.settle());
    pane.addEventFilter(KeyEvent.KEY_PRESSED, stop::pressed);
    pane.focusWithinProperty().addListener((within, before, now) -> stop.settle());
    stop.settle();
  }

  private List<ButtonBase> keys() {
    return pane.getChildren().stream()
        .filter(node -> node instanceof ButtonBase && node.isVisible() && !node.isDisabled())
        .map(ButtonBase.class::cast)
        .toList();
  }

  /** The stop is where the focus is, or where it was last, or the first. */
  private void settle() {
    List<ButtonBase> keys = keys();
    Optional<ButtonBase> stop =
        keys.stream()
            .filter(Node::isFocused)
            .findFirst()
            .or(
                () ->
                    keys.stream().filter(key -> key.getProperties().containsKey(this)).findFirst())
            .or(() -> keys.stream().findFirst());
    for (ButtonBase key : keys) {
      boolean here = stop.filter(it -> it == key).isPresent();
      key.setFocusTraversable(here);
      if (here) {
        key.getProperties().put(this, true);
      } else {
        key.getProperties().remove(this);
      }
    }
  }

  private void pressed(KeyEvent event) {
    List<ButtonBase> keys = keys();
    int at = keys.indexOf(event.getTarget());
    if (at < 0 || event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    next(keys, at, event.getCode())
        .ifPresent(
            key -> {
              key.requestFocus();
              settle();
              event.consume();
            });
  }

  private static Optional<ButtonBase> next(List<ButtonBase> keys, int at, KeyCode code) {
    return switch (code) {
      case RIGHT -> Optional.of(keys.get(Math.min(at + 1, keys.size() - 1)));
      case LEFT -> Optional.of(keys.get(Math.max(at - 1, 0)));
      case HOME -> Optional.of(keys.get(0));
      case END -> Optional.of(keys.get(keys.size() - 1));
      case DOWN -> below(keys, keys.get(at), 1);
      case UP -> below(keys, keys.get(at), -1);
      default -> Optional.empty();
    };
  }

  /** The nearest key in the row below, or above for -1. */
  private static Optional<ButtonBase> below(List<ButtonBase> keys, ButtonBase from, int sign) {
    Bounds here = from.getBoundsInParent();
    return keys.stream()
        .filter(key -> sign * (key.getBoundsInParent().getMinY() - here.getMinY()) > 1)
        .min(
            Comparator.comparingDouble(
                    (ButtonBase key) -> sign * (key.getBoundsInParent().getMinY() - here.getMinY()))
                .thenComparingDouble(
                    key -> Math.abs(key.getBoundsInParent().getCenterX() - here.getCenterX())));
  }
}
