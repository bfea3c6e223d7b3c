package rutbook.ui.fx;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Platform;

/**
 * Runs pure calls on captured values away from the window's thread; of several under one label only
 * the latest is shown.
 */
public final class Background {
  private final Executor worker;
  private final Executor window;
  private final Map<String, Long> latest = new HashMap<>();

  private Background(Executor worker, Executor window) {
    this.worker = worker;
    this.window = window;
  }

  /** With one worker of its own, which does not keep the program alive. */
  public static Background threaded() {
    ExecutorService worker =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread thread = new Thread(task, "background");
              thread.setDaemon(true);
              return thread;
            });
    return new Background(worker, Platform::runLater);
  }

  /** At once and on the same thread, for tests and pictures. */
  public static Background atOnce() {
    return new Background(Runnable::run, Runnable::run);
  }

  /** To be called on the window's thread, which also gets the answer. */
  public <T> void run(
      String label, Callable<T> call, Consumer<T> shown, Consumer<Exception> failed) {
    long turn = latest.merge(label, 1L, Long::sum);
    worker.execute(
        () -> {
          try {
            T answer = call.call();
            window.execute(() -> ifLatest(label, turn, () -> shown.accept(answer)));
          } catch (Exception fault) {
            window.execute(() -> ifLatest(label, turn, () -> failed.accept(fault)));
          }
        });
  }

  private void ifLatest(String label, long turn, Runnable show) {
    if (latest.get(label) == turn) {
      show.run();
    }
  }

  /** Once the present event is over. */
  public static void afterwards(Runnable action) {
    Platform.runLater(action);
  }
}
