package rutbook.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Time that passes when a test says so. */
final class HandLater implements Later {
  private record Waiting(Duration at, long order, Runnable task) {}

  private final List<Waiting> waiting = new ArrayList<>();
  private Duration now = Duration.ZERO;
  private long orders;

  @Override
  public Pending after(Duration wait, Runnable task) {
    Waiting entry = new Waiting(now.plus(wait), orders++, task);
    waiting.add(entry);
    return () -> waiting.remove(entry);
  }

  /** Lets time pass and runs everything that falls due, in order. */
  void pass(Duration time) {
    Duration end = now.plus(time);
    while (true) {
      Waiting next =
          waiting.stream()
              .filter(entry -> entry.at().compareTo(end) <= 0)
              .min(Comparator.comparing(Waiting::at).thenComparing(Waiting::order))
              .orElse(null);
      if (next == null) {
        now = end;
        return;
      }
      waiting.remove(next);
      now = next.at();
      next.task().run();
    }
  }

  int size() {
    return waiting.size();
  }
}
