package rutbook.ui;

import java.time.LocalTime;
import java.util.function.Consumer;

/** Tells the window whether what it shows is on the disk. */
public interface SaveLight {
  /** How things stand. */
  sealed interface State {
    record Saved(LocalTime at) implements State {}

    record Waiting() implements State {}

    /** What happened and what to do, in a sentence. */
    record Failed(String sentence) implements State {}
  }

  State now();

  /** Tells of every change on the window's thread, until the returned action is run. */
  Runnable listen(Consumer<State> listener);
}
