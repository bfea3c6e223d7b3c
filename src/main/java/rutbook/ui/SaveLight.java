package rutbook.ui;

import java.time.LocalTime;
import java.util.Optional;
import java.util.function.Consumer;

/** Tells the window whether what it shows is on the disk. */
public interface SaveLight {
  /** How things stand. */
  sealed interface State {
    /**
     * @param noBackup in a sentence, why the version before could not be kept
     */
    record Saved(LocalTime at, Optional<String> noBackup) implements State {
      public Saved(LocalTime at) {
        this(at, Optional.empty());
      }
    }

    /**
     * @param slow in a sentence, that the disk takes longer than anyone expects
     */
    record Waiting(Optional<String> slow) implements State {}

    /** What happened and what to do, in a sentence. */
    record Failed(String sentence) implements State {}
  }

  State now();

  /** Tells of every change on the window's thread, until the returned action is run. */
  Runnable listen(Consumer<State> listener);
}
