package rutbook.ui.controls;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javafx.geometry.Pos;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * Keys side by side of which one is chosen. They are one stop of the Tab key, and a typed character
 * that stands for a key touches it.
 */
public final class KeyRow extends HBox {
  private final Map<String, ToggleButton> typed = new TreeMap<>();

  public KeyRow(String id, double gap) {
    super(gap);
    setId(id);
    setAlignment(Pos.CENTER_LEFT);
    OneStop.of(this);
    addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  /** Adds a key; the character that touches it, or an empty text for none. */
  public void add(ToggleButton key, String character) {
    if (!character.isEmpty()) {
      typed.put(character, key);
    }
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

  private void typed(KeyEvent event) {
    ToggleButton key = typed.get(event.getCharacter());
    if (key != null && !event.isShortcutDown()) {
      key.requestFocus();
      key.fire();
      event.consume();
    }
  }
}
