package rutbook.ui;

import javafx.scene.layout.VBox;
import rutbook.notebook.Notebook;

/**
 * One page of the window. It follows the notebook while it is on screen, and not a moment longer.
 */
public abstract class Page extends VBox {
  private final Desk desk;
  private Runnable stopListening = () -> {};

  protected Page(Desk desk) {
    this.desk = desk;
    getStyleClass().add("page");
    sceneProperty()
        .addListener(
            (scene, before, now) -> {
              stopListening.run();
              stopListening = () -> {};
              if (now != null) {
                stopListening = desk.editor().listen(history -> show(history.present()));
                show(desk.notebook());
              }
            });
  }

  protected final Desk desk() {
    return desk;
  }

  /** Shows the notebook as it is now. Called when the page comes on screen and after every edit. */
  protected abstract void show(Notebook notebook);

  /** Whether it takes the whole window, without rail and strip. */
  public boolean fillsWindow() {
    return false;
  }

  /** What Ctrl+N makes on this page, if anything. */
  protected void newThing() {}

  /** Puts the cursor where this page is searched, if it is. */
  protected void search() {}

  /** Saves a picture of what this page shows, if it has one. */
  protected void picture() {}
}
