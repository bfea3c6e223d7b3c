package rutbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.stage.Window;

/**
 * Tells how long it took from the start of the process to the third frame and, a moment later, the
 * most memory the process had; then it ends.
 */
public final class FirstFrame {
  /** The property with the moment at which the process was asked for, in ms since the epoch. */
  static final String BORN = "rutbook.bench.born";

  /** By the third frame the second one has been shown. */
  private static final int USABLE = 3;

  private static final javafx.util.Duration SETTLED = javafx.util.Duration.seconds(2);

  private FirstFrame() {}

  /** For a program that opens its window itself. */
  public static void tellWhenShown() {
    Window.getWindows()
        .addListener((ListChangeListener<Window>) change -> Platform.runLater(FirstFrame::tell));
  }

  /** To be called when the window has been asked to show. */
  public static void tell() {
    Instant born = Instant.ofEpochMilli(Long.getLong(BORN));
    new AnimationTimer() {
      private int frames;

      @Override
      public void handle(long now) {
        frames++;
        if (frames == USABLE) {
          stop();
          long cpu = ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis();
          long millis = Duration.between(born, Instant.now()).toMillis();
          PauseTransition settling = new PauseTransition(SETTLED);
          settling.setOnFinished(event -> end(millis, cpu));
          settling.play();
        }
      }
    }.start();
  }

  private static void end(long millis, long cpu) {
    System.out.println("started " + millis + " " + cpu + " " + mostMemory());
    Runtime.getRuntime().halt(0);
  }

  /** In KiB, as Linux knows it; 0 elsewhere. */
  private static long mostMemory() {
    try (Stream<String> lines = Files.lines(Path.of("/proc/self/status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .map(line -> line.replaceAll("\\D", ""))
          .mapToLong(Long::parseLong)
          .findFirst()
          .orElse(0);
    } catch (IOException notLinux) {
      return 0;
    }
  }
}
