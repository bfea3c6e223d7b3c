package rutbook.app;

import java.time.Clock;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import rutbook.file.SaveState;
import rutbook.ui.SaveLight;
import rutbook.words.FileWords;

/** The save light of the window, fed by the autosaver from whatever thread. */
final class DiskLight implements SaveLight {
  private final Clock clock;
  private final Executor window;
  private final FileWords words;
  private final List<Consumer<State>> listeners = new CopyOnWriteArrayList<>();
  private volatile State now;

  DiskLight(Clock clock, Executor window, FileWords words) {
    this.clock = clock;
    this.window = window;
    this.words = words;
    this.now = new State.Saved(LocalTime.now(clock));
  }

  /** Passes a state on to the window's thread. */
  void show(SaveState state) {
    window.execute(
        () -> {
          now = worded(state);
          listeners.forEach(listener -> listener.accept(now));
        });
  }

  /** There is no file at all to save to. */
  void nowhere(String sentence) {
    now = new State.Failed(sentence);
  }

  private State worded(SaveState state) {
    if (state instanceof SaveState.Saved saved) {
      LocalTime at = saved.at().atZone(clock.getZone()).toLocalTime();
      return new State.Saved(at, saved.noBackup().map(words::noBackup));
    }
    if (state instanceof SaveState.Failed failed) {
      return new State.Failed(words.sentence(failed.fault()));
    }
    boolean slow = ((SaveState.Waiting) state).slow();
    return new State.Waiting(slow ? Optional.of(words.slow()) : Optional.empty());
  }

  @Override
  public State now() {
    return now;
  }

  @Override
  public Runnable listen(Consumer<State> listener) {
    listeners.add(listener);
    return () -> listeners.remove(listener);
  }
}
