package rutbook.ui.fx;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls what was just shown into sight. */
public final class InView {
  private InView() {}

  /** Once it is laid out, moves the pane around the node as little as shows all of it. */
  public static void bring(Node node) {
    Background.afterwards(() -> move(node));
  }

  private static void move(Node node) {
    Node above = node.getParent();
    while (above != null && !(above instanceof ScrollPane)) {
      above = above.getParent();
    }
    if (!(above instanceof ScrollPane pane) || pane.getContent() == null) {
      return;
    }
    pane.getContent().applyCss();
    pane.layout();
    Node content = pane.getContent();
    Bounds place = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
    double view = pane.getViewportBounds().getHeight();
    double beyond = content.getLayoutBounds().getHeight() - view;
    if (beyond <= 0 || place == null) {
      return;
    }
    double top = pane.getVvalue() * beyond;
    if (place.getMaxY() > top + view) {
      pane.setVvalue(Math.min(1, (place.getMaxY() - view) / beyond));
    } else if (place.getMinY() < top) {
      pane.setVvalue(Math.max(0, place.getMinY() / beyond));
    }
  }
}
