package rutbook.ui.controls;

import java.util.function.Supplier;
import javafx.event.EventHandler;
import javafx.scene.control.Control;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/**
 * What is said beside the pointer. A tooltip is a window with a scene of its own: it is made when a
 * pointer first comes by, so that the first frame does not wait for twenty of them.
 */
public final class Hint implements EventHandler<MouseEvent> {
  private final Control control;
  private final Supplier<String> text;

  private Hint(Control control, Supplier<String> text) {
    this.control = control;
    this.text = text;
  }

  /**
   * @param text asked for every time the pointer comes by
   */
  public static void on(Control control, Supplier<String> text) {
    control.addEventHandler(MouseEvent.MOUSE_ENTERED, new Hint(control, text));
  }

  @Override
  public void handle(MouseEvent event) {
    if (control.getTooltip() == null) {
      control.setTooltip(new Tooltip());
    }
    control.getTooltip().setText(text.get());
  }
}
