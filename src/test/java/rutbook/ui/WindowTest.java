package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import rutbook.edit.Editor;
import rutbook.notebook.Notebook;

/** A window to test in, with a count of the touches it took. */
public abstract class WindowTest extends ApplicationTest {
  protected static final LocalDate TODAY = LocalDate.of(2026, 5, 16);

  protected Stage stage;
  protected Editor editor;
  protected Window window;
  protected int touches;

  @Override
  public void start(Stage first) {
    stage = first;
    Optional<Notebook> notebook = notebook();
    notebook.ifPresent(this::open);
  }

  /** What the window opens with; empty for tests that open it themselves. */
  protected abstract Optional<Notebook> notebook();

  protected void open(Notebook notebook) {
    editor = new Editor(notebook);
    window = Window.start(stage, StandIns.services(editor, TODAY, look(1280, 800)));
  }

  protected static WindowMemory.Look look(double width, double height) {
    return new WindowMemory.Look(
        Theme.LIGHT,
        Optional.empty(),
        100,
        Optional.of(new WindowMemory.Bounds(0, 0, width, height, false)));
  }

  protected Scene scene() {
    return stage.getScene();
  }

  protected void go(Place place) {
    interact(() -> window.go(place));
    settle();
  }

  /** Lays out what was just changed. */
  protected void settle() {
    WaitForAsyncUtils.waitForFxEvents();
    interact(
        () -> {
          scene().getRoot().applyCss();
          scene().getRoot().layout();
        });
  }

  protected Node node(String id) {
    Node node = scene().lookup("#" + id);
    assertThat(node).as("#" + id).isNotNull();
    return node;
  }

  /** Touches a key that can be seen and touched. */
  protected void touch(String id) {
    Node node = node(id);
    assertThat(node.isDisabled()).as("#" + id + " is disabled").isFalse();
    for (Node above = node; above != null; above = above.getParent()) {
      assertThat(above.isVisible()).as("#" + id + " is out of sight").isTrue();
    }
    touches++;
    interact(((ButtonBase) node)::fire);
    settle();
  }

  protected String text(String id) {
    return ((Labeled) node(id)).getText();
  }

  /** Types into a field and presses Enter. */
  protected void type(String id, String text) {
    interact(
        () -> {
          TextField field = (TextField) node(id);
          field.requestFocus();
          field.setText(text);
          field.fireEvent(new javafx.event.ActionEvent());
        });
    settle();
  }

  /** A key pressed where the node is, and let go. */
  protected void press(Node node, KeyCode code) {
    interact(
        () -> {
          node.fireEvent(key(KeyEvent.KEY_PRESSED, code));
          node.fireEvent(key(KeyEvent.KEY_RELEASED, code));
        });
    settle();
  }

  private static KeyEvent key(javafx.event.EventType<KeyEvent> type, KeyCode code) {
    return new KeyEvent(type, "", "", code, false, false, false, false);
  }

  protected boolean isInSight(String id) {
    Node node = node(id);
    Bounds place = node.localToScene(node.getLayoutBounds());
    return place.getMinY() >= 0
        && place.getMaxY() <= scene().getHeight()
        && place.getMinX() >= 0
        && place.getMaxX() <= scene().getWidth();
  }
}
