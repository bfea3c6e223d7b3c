package rutbook.ui;

import static javafx.scene.input.KeyCombination.SHIFT_DOWN;
import static javafx.scene.input.KeyCombination.SHORTCUT_DOWN;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** The keys of the whole window: the one list that both works and is told on the sheet. */
final class Shortcuts {
  /**
   * A key and what it does.
   *
   * @param combinations the one that is told first
   * @param key of the text that tells it
   */
  record Shortcut(List<KeyCombination> combinations, String key, Runnable action) {
    Shortcut {
      combinations = List.copyOf(combinations);
    }

    String keys() {
      return combinations.stream()
          .map(KeyCombination::getDisplayText)
          .collect(Collectors.joining(", "));
    }
  }

  private final List<Shortcut> all = new ArrayList<>();

  Shortcuts with(String key, Runnable action, KeyCombination... combinations) {
    all.add(new Shortcut(List.of(combinations), key, action));
    return this;
  }

  List<Shortcut> all() {
    return List.copyOf(all);
  }

  void in(Scene scene) {
    for (Shortcut shortcut : all) {
      for (KeyCombination combination : shortcut.combinations()) {
        scene.getAccelerators().put(combination, shortcut.action());
      }
    }
  }

  static KeyCombination control(KeyCode code) {
    return new KeyCodeCombination(code, SHORTCUT_DOWN);
  }

  static KeyCombination shifted(KeyCode code) {
    return new KeyCodeCombination(code, SHORTCUT_DOWN, SHIFT_DOWN);
  }

  static KeyCombination alone(KeyCode code) {
    return new KeyCodeCombination(code);
  }
}
