package rutbook.ui.coach;

import javafx.geometry.Insets;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is longer than the page: scrolled up and down only, with room for the bar beside it. */
final class Scrolling {
  private static final double BAR = 14;

  private Scrolling() {}

  /** The whole width below the head of a page. */
  static ScrollPane page(VBox content) {
    ScrollPane scroll = of(content);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  /**
   * One of several columns.
   *
   * @param share of the width, beside those of the others
   */
  static ScrollPane column(VBox content, int share) {
    ScrollPane scroll = of(content);
    scroll.setMinWidth(0);
    scroll.setPrefWidth(share * 10);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  private static ScrollPane of(VBox content) {
    content.setPadding(new Insets(0, BAR, 2, 0));
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(0);
    scroll.setFocusTraversable(false);
    return scroll;
  }
}
