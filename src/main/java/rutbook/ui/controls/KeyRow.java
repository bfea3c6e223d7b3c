package rutbook.ui.controls;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * Keys side by side of which one is chosen. They are one stop of the Tab key: arrows move along
 * them, and a typed character that stands for a key touches it.
 */
public final class KeyRow extends HBox {
  private final Map<String, ToggleButton> typed = new TreeMap<>();

  public KeyRow(String id, double gap) {
    super(gap);
    setId(id);
    setAlignment(Pos.CENTER_LEFT);
    addEventFilter(KeyEvent.KEY_PRESSED, this::moved);
    addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  /** Adds a key; the character that touches it, or an empty text for none. */
  public void add(ToggleButton key, String character) {
    if (!character.isEmpty()) {
      typed.put(character, key);
    }
    key.setFocusTraversable(getChildren().isEmpty());
    key.focusedProperty().addListener((focused, before, now) -> stop(key, now));
    key.selectedProperty().addListener((selected, before, now) -> stop(key, now));
    getChildren().add(key);
  }

  /** Shares the width out among the keys. */
  public void fill() {
    for (ToggleButton key : keys()) {
      key.setMaxWidth(Double.MAX_VALUE);
      key.setPrefWidth(0);
      setHgrow(key, Priority.ALWAYS);
    }
  }

  public List<ToggleButton> keys() {
    return getChildren().stream()
        .filter(ToggleButton.class::isInstance)
        .map(ToggleButton.class::cast)
        .toList();
  }

  /** Selects the key at a place and no other; none for an empty one. */
  public void choose(Optional<Integer> place) {
    List<ToggleButton> keys = keys();
    for (int i = 0; i < keys.size(); i++) {
      keys.get(i).setSelected(place.equals(Optional.of(i)));
    }
  }

  /** Where the Tab key stops in this row. */
  public Optional<ToggleButton> stop() {
    return keys().stream().filter(Node::isFocusTraversable).findFirst();
  }

  private void stop(ToggleButton key, boolean here) {
    if (here) {
      keys().forEach(each -> each.setFocusTraversable(each == key));
    }
  }

  private void moved(KeyEvent event) {
    List<ToggleButton> keys = keys();
    int at = keys.indexOf(event.getTarget());
    if (at < 0) {
      return;
    }
    KeyCode code = event.getCode();
    int to =
        switch (code) {
          case RIGHT -> Math.min(at + 1, keys.size() - 1);
          case LEFT -> Math.max(at - 1, 0);
          case HOME -> 0;
          case END -> keys.size() - 1;
          default -> -1;
        };
    if (to >= 0) {
      keys.get(to).requestFocus();
      event.consume();
    }
  }

  private void typed(KeyEvent event) {
    ToggleButton key = typed.get(event.getCharacter());
    if (key != null && !event.isShortcutDown()) {
      key.requestFocus();
      key.fire();
      event.consume();
    }
  }
}
