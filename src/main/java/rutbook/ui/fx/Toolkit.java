package rutbook.ui.fx;

import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;

/** Starts JavaFX without a class that extends Application, and ends with the window. */
public final class Toolkit {
  private Toolkit() {}

  /**
   * Starts the toolkit and runs the action on its thread.
   *
   * @throws RuntimeException or an Error when there is no display, no library, no JavaFX
   */
  public static void start(Runnable action) {
    Platform.startup(action);
  }

  /** Runs on the window's thread, after what it is doing now. */
  public static void later(Runnable action) {
    Platform.runLater(action);
  }

  /** Ends the toolkit; it cannot be started again. */
  public static void end() {
    Platform.exit();
  }

  /** A latch that opens when the window is gone: until then the program goes on. */
  public static CountDownLatch untilClosed(javafx.stage.Window window) {
    CountDownLatch closed = new CountDownLatch(1);
    window.setOnHidden(event -> closed.countDown());
    return closed;
  }
}
