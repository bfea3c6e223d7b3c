package rutbook.file;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Saves the newest value after a moment of quiet, on a worker, and says how things stand. A fault
 * that may pass is tried again; one that needs the rider waits for {@link #retry}.
 *
 * @param <T> an immutable value
 */
public final class Autosaver<T> implements AutoCloseable {
  /** Quiet before a save. */
  public static final Duration QUIET = Duration.ofSeconds(1);

  /** Longest that a change waits while others keep coming. */
  public static final Duration LONGEST = Duration.ofSeconds(10);

  /** After so long the disk is called slow. */
  public static final Duration SLOW = Duration.ofSeconds(5);

  private static final long NONE = 0;
  private static final Duration FIRST_RETRY = Duration.ofSeconds(2);
  private static final Duration LAST_RETRY = Duration.ofMinutes(1);

  /** Where the bytes go. */
  @FunctionalInterface
  public interface Target {
    Outcome<Saved> save(byte[] bytes);
  }

  /**
   * What the autosaver works with.
   *
   * @param later for waiting; its thread is never kept busy
   * @param worker for writing
   * @param clock for telling when, never for waiting
   */
  public record Means(Later later, Executor worker, Clock clock) {}

  /** A value and the number of the change that made it. */
  private record Change<T>(T value, long number, Instant since) {}

  private final Function<? super T, byte[]> writer;
  private final Means means;
  private final Consumer<SaveState> told;
  private final Object writing = new Object();

  private Target target;
  private SaveState state;
  private Optional<Change<T>> unsaved = Optional.empty();
  private long changes;
  private long underWay = NONE;
  private Later.Pending quiet = () -> {};
  private Later.Pending deadline = () -> {};
  private boolean deadlineIsSet;
  private Duration nextRetry = FIRST_RETRY;
  private boolean stopped;
  private boolean closed;

  /**
   * @param writer makes the bytes, on the worker; an exception from it is a failed save
   * @param told is called with every new state while the autosaver is held, from any thread: it may
   *     only pass the state on
   */
  public Autosaver(
      Function<? super T, byte[]> writer, Target target, Means means, Consumer<SaveState> told) {
    this.writer = writer;
    this.target = target;
    this.means = means;
    this.told = told;
    this.state = new SaveState.Saved(means.clock().instant(), Optional.empty());
  }

  public synchronized SaveState state() {
    return state;
  }

  /** The value is now this one; only the newest is ever written. */
  public synchronized void changed(T next) {
    if (closed) {
      throw new IllegalStateException("changed after it was closed");
    }
    boolean already = unsaved.filter(it -> it.number() != underWay).isPresent();
    Instant since = already ? unsaved.get().since() : means.clock().instant();
    unsaved = Optional.of(new Change<>(next, ++changes, since));
    if (stopped) {
      return;
    }
    if (state instanceof SaveState.Saved) {
      tell(new SaveState.Waiting(since, false));
    }
    quiet.cancel();
    quiet = means.later().after(QUIET, this::startWriting);
    if (!deadlineIsSet) {
      deadlineIsSet = true;
      deadline = means.later().after(LONGEST, this::startWriting);
    }
  }

  /** Tries again now, after the rider did something about a fault. */
  public void retry() {
    synchronized (this) {
      stopped = false;
      nextRetry = FIRST_RETRY;
      unsaved.ifPresent(change -> tell(new SaveState.Waiting(change.since(), false)));
    }
    startWriting();
  }

  /** From now on saves there, and tries at once: the rider chose another file. */
  public void goOnWith(Target other) {
    synchronized (this) {
      target = other;
    }
    retry();
  }

  /**
   * Saves what is not yet saved, on this thread, waiting for a save that is under way.
   *
   * @return {@link SaveState.Saved}, or {@link SaveState.Failed} and the window should ask
   */
  public SaveState flush() {
    writeNewest();
    return state();
  }

  /** Flushes; afterwards nothing is written any more, saved or not. */
  @Override
  public void close() {
    flush();
    abandon();
  }

  /** Ends without saving: the rider gave up the changes. */
  public synchronized void abandon() {
    closed = true;
    unsaved = Optional.empty();
    cancelWaits();
  }

  private void startWriting() {
    means.worker().execute(this::writeNewest);
  }

  private void writeNewest() {
    synchronized (writing) {
      Change<T> change;
      Target to;
      synchronized (this) {
        if (unsaved.isEmpty()) {
          return;
        }
        change = unsaved.get();
        to = target;
        underWay = change.number();
        cancelWaits();
      }
      Later.Pending slow = means.later().after(SLOW, () -> isSlow(change));
      Outcome<Saved> outcome = write(change.value(), to);
      slow.cancel();
      written(change, outcome);
    }
  }

  /** A thread's interruption must not cut a save short, so it is put off until afterwards. */
  private Outcome<Saved> write(T value, Target to) {
    boolean interrupted = Thread.interrupted();
    try {
      return to.save(writer.apply(value));
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError thrown) {
      return Outcome.refused(new FileFault.NotMade(thrown.toString()));
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private synchronized void isSlow(Change<T> change) {
    if (underWay == change.number() && state instanceof SaveState.Waiting waiting) {
      tell(new SaveState.Waiting(waiting.since(), true));
    }
  }

  private synchronized void written(Change<T> change, Outcome<Saved> outcome) {
    if (closed) {
      return;
    }
    underWay = NONE;
    if (outcome.fault().isPresent()) {
      failed(outcome.fault().get());
      return;
    }
    Saved saved = outcome.result().orElseThrow();
    stopped = false;
    nextRetry = FIRST_RETRY;
    if (unsaved.filter(it -> it.number() == change.number()).isPresent()) {
      unsaved = Optional.empty();
      cancelWaits();
      tell(new SaveState.Saved(saved.at(), saved.backup()));
    } else {
      tell(new SaveState.Waiting(unsaved.map(Change::since).orElse(saved.at()), false));
    }
  }

  private void failed(FileFault fault) {
    cancelWaits();
    stopped = !fault.mayPass();
    if (!stopped) {
      quiet = means.later().after(nextRetry, this::startWriting);
      Duration doubled = nextRetry.multipliedBy(2);
      nextRetry = doubled.compareTo(LAST_RETRY) > 0 ? LAST_RETRY : doubled;
    }
    tell(new SaveState.Failed(fault, means.clock().instant(), !stopped));
  }

  private void cancelWaits() {
    quiet.cancel();
    deadline.cancel();
    deadlineIsSet = false;
  }

  private void tell(SaveState next) {
    if (!next.equals(state)) {
      state = next;
      told.accept(next);
    }
  }
}
