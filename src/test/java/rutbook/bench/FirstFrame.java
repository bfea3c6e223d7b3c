package rutbook.bench;

import java.time.Duration;
import java.time.Instant;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.stage.Window;

/** Tells how long it took from the start of the process to the third frame, and ends. */
public final class FirstFrame {
  /** By the third frame the second one has been shown. */
  private static final int USABLE = 3;

  private FirstFrame() {}

  /** For a program that opens its window itself. */
  public static void tellWhenShown() {
    Window.getWindows()
        .addListener((ListChangeListener<Window>) change -> Platform.runLater(FirstFrame::tell));
  }

  /** To be called when the window has been asked to show. */
  public static void tell() {
    Instant born = ProcessHandle.current().info().startInstant().orElseThrow();
    new AnimationTimer() {
      private int frames;

      @Override
      public void handle(long now) {
        frames++;
        if (frames == USABLE) {
          long cpu = ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis();
          System.out.println(Duration.between(born, Instant.now()).toMillis() + " " + cpu);
          Runtime.getRuntime().halt(0);
        }
      }
    }.start();
  }
}
