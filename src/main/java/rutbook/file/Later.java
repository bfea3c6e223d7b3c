package rutbook.file;

import java.time.Duration;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Runs something after a while, on a thread of its own choice; by hand in tests. */
@FunctionalInterface
public interface Later {

  /** Something that has not run yet. */
  @FunctionalInterface
  interface Pending {
    /** Makes sure that it will not start; it may be running already. */
    void cancel();
  }

  /** With the clockwork of Java. */
  static Later on(ScheduledExecutorService service) {
    return (wait, task) -> {
      Future<?> future = service.schedule(task, wait.toMillis(), TimeUnit.MILLISECONDS);
      return () -> future.cancel(false);
    };
  }

  Pending after(Duration wait, Runnable task);
}
