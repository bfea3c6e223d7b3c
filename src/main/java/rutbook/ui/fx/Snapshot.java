package rutbook.ui.fx;

import java.nio.IntBuffer;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.transform.Transform;

/**
 * A picture of nodes as numbers that need no toolkit any more.
 *
 * @param argb one number a pixel, not multiplied by its alpha, rows from the top
 */
public record Snapshot(int width, int height, IntBuffer argb) {
  /** Twice as fine as on screen, so that it can be printed. */
  private static final double SCALE = 2;

  /** What one side may have at most; a longer page is drawn less fine. */
  private static final double MOST = 8000;

  public Snapshot {
    if (width < 1 || height < 1 || argb.capacity() != width * height) {
      throw new IllegalArgumentException(width + " by " + height + ": " + argb.capacity());
    }
    argb = argb.asReadOnlyBuffer();
  }

  /**
   * A region that is in no window yet, in the theme and size of text of a window; it is given its
   * height. Called on the window's thread.
   *
   * @param width in pixels of the window
   */
  public static Snapshot of(Region content, Scene like, double width) {
    StackPane root = new StackPane(content);
    root.setStyle(like.getRoot().getStyle());
    Scene scene = new Scene(root);
    scene.getStylesheets().setAll(like.getStylesheets());
    content.setMinWidth(width);
    content.setMaxWidth(width);
    layOut(root);
    double height = content.prefHeight(width);
    root.resize(width, height);
    layOut(root);
    layOut(root);
    return taken(content, Math.min(SCALE, MOST / Math.max(width, height)));
  }

  private static void layOut(Parent root) {
    root.applyCss();
    root.layout();
  }

  private static Snapshot taken(Region content, double scale) {
    SnapshotParameters how = new SnapshotParameters();
    how.setTransform(Transform.scale(scale, scale));
    WritableImage image = content.snapshot(how, null);
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    return new Snapshot(width, height, IntBuffer.wrap(pixels));
  }
}
