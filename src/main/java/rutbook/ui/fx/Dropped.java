package rutbook.ui.fx;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Files that are dragged from elsewhere and let go over the window. */
public final class Dropped {
  private Dropped() {}

  /** Hands on the first of the files that are dropped on the node. */
  public static void files(Node node, Consumer<Path> dropped) {
    node.addEventHandler(
        DragEvent.DRAG_OVER,
        event -> {
          if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
          }
        });
    node.addEventHandler(
        DragEvent.DRAG_DROPPED,
        event -> {
          List<Path> paths =
              event.getDragboard().getFiles().stream().map(java.io.File::toPath).toList();
          paths.stream().findFirst().ifPresent(dropped);
          event.setDropCompleted(!paths.isEmpty());
          event.consume();
        });
  }
}
