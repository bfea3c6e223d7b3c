package rutbook.ui.controls;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is longer than its place: scrolled up and down only, never cut at its side. */
public final class Scrolling {
  private static final double BAR = 14;

  private Scrolling() {}

  /** Scrolled with the wheel and by what has the focus in it; the pane itself is no stop of Tab. */
  public static ScrollPane of(Node content) {
    ScrollPane scroll = withStop(content);
    scroll.setFocusTraversable(false);
    return scroll;
  }

  /** What may hold nothing to touch: the pane is a stop of Tab, so that the keys scroll it. */
  public static ScrollPane withStop(Node content) {
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(0);
    return scroll;
  }

  /**
   * What stands over a page: never taller than the window, with room for what is around it.
   *
   * @param around pixels of the window's height that are not the content's
   */
  public static ScrollPane inWindow(Node content, double around) {
    ScrollPane scroll = withStop(content);
    scroll
        .sceneProperty()
        .addListener(
            (scene, before, now) -> {
              scroll.maxHeightProperty().unbind();
              if (now != null) {
                scroll.maxHeightProperty().bind(now.heightProperty().subtract(around));
              }
            });
    return scroll;
  }

  /** The whole width below the head of a page, with room for the bar beside what it holds. */
  public static ScrollPane page(VBox content) {
    ScrollPane scroll = besideTheBar(content);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  /**
   * One of several columns, with room for the bar beside what it holds.
   *
   * @param share of the width, beside those of the others
   */
  public static ScrollPane column(VBox content, int share) {
    ScrollPane scroll = besideTheBar(content);
    scroll.setMinWidth(0);
    scroll.setPrefWidth(share * 10);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  private static ScrollPane besideTheBar(VBox content) {
    content.setPadding(new Insets(0, BAR, 2, 0));
    return of(content);
  }
}
