package rutbook.ui.fx;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.util.Duration;

/**
 * Runs pure calls on captured values away from the window's thread; of several under one label only
 * the latest is shown. What takes longer than a moment is told as busy.
 */
public final class Background {
  /** So long nobody has to be told that something is going on. */
  public static final Duration MOMENT = Duration.millis(300);

  private final Executor worker;
  private final Executor window;
  private final Waiting waiting;
  private final Map<String, Long> latest = new ConcurrentHashMap<>();
  private final Set<String> slow = new HashSet<>();
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();

  /** Runs an action on the window's thread after a while, unless the returned one is run first. */
  @FunctionalInterface
  public interface Waiting {
    Runnable after(Duration length, Runnable action);
  }

  /**
   * @param worker runs the calls, one after the other
   * @param window runs what is shown
   */
  public Background(Executor worker, Executor window, Waiting waiting) {
    this.worker = worker;
    this.window = window;
    this.waiting = waiting;
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
    return new Background(worker, Platform::runLater, Background::pause);
  }

  private static Runnable pause(Duration length, Runnable action) {
    PauseTransition pause = new PauseTransition(length);
    pause.setOnFinished(event -> action.run());
    pause.play();
    return pause::stop;
  }

  /** At once and on the same thread, for tests and pictures. */
  public static Background atOnce() {
    return new Background(Runnable::run, Runnable::run, (length, action) -> () -> {});
  }

  /** Whether something has been going on for longer than a moment; on the window's thread. */
  public ReadOnlyBooleanProperty busy() {
    return busy.getReadOnlyProperty();
  }

  /** To be called on the window's thread, which also gets the answer. */
  public <T> void run(
      String label, Callable<T> call, Consumer<T> shown, Consumer<Exception> failed) {
    long turn = latest.merge(label, 1L, Long::sum);
    String run = label + "#" + turn;
    Runnable inTime = waiting.after(MOMENT, () -> isSlow(run, true));
    worker.execute(
        () -> {
          Runnable answer = answer(label, turn, call, shown, failed);
          window.execute(
              () -> {
                inTime.run();
                isSlow(run, false);
                answer.run();
              });
        });
  }

  /** What is overtaken before it began is not even called. */
  private <T> Runnable answer(
      String label, long turn, Callable<T> call, Consumer<T> shown, Consumer<Exception> failed) {
    if (latest.get(label) != turn) {
      return () -> {};
    }
    try {
      T answer = call.call();
      return () -> ifLatest(label, turn, () -> shown.accept(answer));
    } catch (Exception fault) {
      return () -> ifLatest(label, turn, () -> failed.accept(fault));
    }
  }

  private void ifLatest(String label, long turn, Runnable show) {
    if (latest.get(label) == turn) {
      show.run();
    }
  }

  private void isSlow(String run, boolean now) {
    if (now) {
      slow.add(run);
    } else {
      slow.remove(run);
    }
    busy.set(!slow.isEmpty());
  }

  /** Once the present event is over. */
  public static void afterwards(Runnable action) {
    Platform.runLater(action);
  }
}
