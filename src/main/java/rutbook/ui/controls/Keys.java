package rutbook.ui.controls;

import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;

/** Buttons and labels in the window's styles: everything that is touched is a key. */
public final class Keys {
  private Keys() {}

  public static Button key(String id, String text, Runnable action) {
    Button button = new Button(text);
    return prepared(button, id, action);
  }

  /** The one thing to do next on a page. */
  public static Button mainKey(String id, String text, Runnable action) {
    Button button = key(id, text, action);
    button.getStyleClass().add("main");
    return button;
  }

  public static Button smallKey(String id, String text, Runnable action) {
    Button button = key(id, text, action);
    button.getStyleClass().add("small");
    return button;
  }

  /** A key that stays down; the action runs on every touch, the state is set by who shows it. */
  public static ToggleButton choice(String id, String text, Runnable action) {
    return prepared(new ToggleButton(text), id, action);
  }

  private static <B extends ButtonBase> B prepared(B button, String id, Runnable action) {
    button.setId(id);
    button
        .getStyleClass()
        .setAll(button instanceof ToggleButton ? "toggle-button" : "button", "key");
    button.setOnAction(event -> action.run());
    button.setMinWidth(ButtonBase.USE_PREF_SIZE);
    return button;
  }

  public static Label label(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** A label that breaks into lines instead of being cut. */
  public static Label prose(String text, String... styles) {
    Label label = label(text, styles);
    label.setWrapText(true);
    label.setMinHeight(Label.USE_PREF_SIZE);
    return label;
  }
}
