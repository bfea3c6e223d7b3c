package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.Test;

class AutosaverTest {
  private static final Path FILE = Path.of("season.rut");
  private static final FileFault FULL = new FileFault.DiskFull(FILE, 9);
  private static final FileFault CHANGED =
      new FileFault.ChangedBehindOurBack(FILE, Instant.EPOCH, Instant.EPOCH);

  private final HandLater later = new HandLater();
  private final HandClock clock = new HandClock();
  private final List<String> written = new ArrayList<>();
  private final List<SaveState> told = new ArrayList<>();
  private Optional<FileFault> fault = Optional.empty();

  private Autosaver<String> saver() {
    return saver(Runnable::run);
  }

  private Autosaver<String> saver(Executor worker) {
    return new Autosaver<>(
        text -> text.getBytes(StandardCharsets.UTF_8),
        this::save,
        new Autosaver.Means(later, worker, clock),
        told::add);
  }

  private Outcome<Saved> save(byte[] bytes) {
    assertThat(Thread.currentThread().isInterrupted()).isFalse();
    if (fault.isPresent()) {
      return Outcome.refused(fault.get());
    }
    written.add(new String(bytes, StandardCharsets.UTF_8));
    return Outcome.done(new Saved(FILE, clock.instant(), Optional.empty()));
  }

  private SaveState.Saved saved() {
    return new SaveState.Saved(clock.instant(), Optional.empty());
  }

  private SaveState.Waiting waiting() {
    return new SaveState.Waiting(clock.instant(), false);
  }

  @Test
  void onlyTheNewestIsWrittenAfterASecondOfQuiet() {
    Autosaver<String> saver = saver();
    saver.changed("a");
    later.pass(Duration.ofMillis(900));
    saver.changed("b");
    later.pass(Duration.ofMillis(900));
    assertThat(written).isEmpty();
    assertThat(told).containsExactly(waiting());

    later.pass(Duration.ofMillis(100));

    assertThat(written).containsExactly("b");
    assertThat(told).containsExactly(waiting(), saved());
    assertThat(later.size()).isZero();
  }

  @Test
  void changesThatNeverStopAreSavedEveryTenSeconds() {
    Autosaver<String> saver = saver();
    for (int half = 1; half <= 50; half++) {
      saver.changed("" + half);
      later.pass(Duration.ofMillis(500));
    }

    assertThat(written).containsExactly("20", "40");
  }

  @Test
  void aFailedWriteIsTriedAgainUntilItIsOnDisk() {
    Autosaver<String> saver = saver();
    fault = Optional.of(FULL);
    saver.changed("a");
    later.pass(Duration.ofSeconds(1));
    assertThat(saver.state()).isEqualTo(new SaveState.Failed(FULL, clock.instant(), true));
    later.pass(Duration.ofMinutes(10));
    assertThat(written).isEmpty();

    fault = Optional.empty();
    later.pass(Duration.ofMinutes(1));

    assertThat(written).containsExactly("a");
    assertThat(saver.state()).isEqualTo(saved());
    assertThat(later.size()).isZero();
  }

  @Test
  void whileItFailsTheLightStaysAtFailedAndTheNewestIsKept() {
    Autosaver<String> saver = saver();
    fault = Optional.of(FULL);
    saver.changed("a");
    later.pass(Duration.ofSeconds(1));
    saver.changed("b");
    assertThat(saver.state()).isInstanceOf(SaveState.Failed.class);
    fault = Optional.empty();
    later.pass(Duration.ofSeconds(1));

    assertThat(written).containsExactly("b");
    assertThat(saver.state()).isEqualTo(saved());
  }

  @Test
  void aFileChangedBehindOurBackStopsItUntilTheRiderHasChosen() {
    Autosaver<String> saver = saver();
    fault = Optional.of(CHANGED);
    saver.changed("a");
    later.pass(Duration.ofSeconds(1));
    assertThat(saver.state()).isEqualTo(new SaveState.Failed(CHANGED, clock.instant(), false));
    fault = Optional.empty();
    saver.changed("b");
    later.pass(Duration.ofHours(1));
    assertThat(written).isEmpty();

    saver.goOnWith(this::save);

    assertThat(written).containsExactly("b");
    assertThat(saver.state()).isEqualTo(saved());
  }

  @Test
  void aRetryIsMadeAtOnce() {
    Autosaver<String> saver = saver();
    fault = Optional.of(FULL);
    saver.changed("a");
    later.pass(Duration.ofSeconds(1));
    fault = Optional.empty();

    saver.retry();

    assertThat(written).containsExactly("a");
  }

  @Test
  void closingWritesWhatIsWaiting() {
    Autosaver<String> saver = saver();
    saver.changed("a");
    saver.close();

    assertThat(written).containsExactly("a");
    assertThat(saver.state()).isEqualTo(saved());
    assertThat(later.size()).isZero();
    assertThatThrownBy(() -> saver.changed("b")).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void aFlushThatFailsSaysSoAndTheValueIsStillThere() {
    Autosaver<String> saver = saver();
    fault = Optional.of(FULL);
    saver.changed("a");
    assertThat(saver.flush()).isEqualTo(new SaveState.Failed(FULL, clock.instant(), true));
    fault = Optional.empty();
    assertThat(saver.flush()).isEqualTo(saved());
    assertThat(written).containsExactly("a");
  }

  @Test
  void abandonedChangesAreNotWritten() {
    Autosaver<String> saver = saver();
    saver.changed("a");
    saver.abandon();
    later.pass(Duration.ofMinutes(1));

    assertThat(written).isEmpty();
    assertThat(later.size()).isZero();
  }

  @Test
  void nothingToSaveIsNotSaved() {
    Autosaver<String> saver = saver();
    assertThat(saver.flush()).isEqualTo(saved());
    saver.retry();
    saver.close();
    assertThat(written).isEmpty();
    assertThat(told).isEmpty();
  }

  @Test
  void aChangeMadeWhileTheWorkerIsWritingIsWrittenToo() {
    List<String> during = new ArrayList<>();
    List<Autosaver<String>> saver = new ArrayList<>();
    saver.add(
        new Autosaver<>(
            text -> text.getBytes(StandardCharsets.UTF_8),
            bytes -> {
              if (during.isEmpty()) {
                during.add("once");
                clock.move(Duration.ofSeconds(3));
                saver.get(0).changed("b");
              }
              return save(bytes);
            },
            new Autosaver.Means(later, Runnable::run, clock),
            told::add));
    saver.get(0).changed("a");
    later.pass(Duration.ofSeconds(1));
    assertThat(written).containsExactly("a");
    assertThat(saver.get(0).state()).isEqualTo(waiting());
    later.pass(Duration.ofSeconds(1));

    assertThat(written).containsExactly("a", "b");
    assertThat(saver.get(0).state()).isEqualTo(saved());
  }

  @Test
  void aSlowDiskIsSaidToBeSlowWhileItIsBusy() {
    Autosaver<String> saver =
        new Autosaver<>(
            text -> text.getBytes(StandardCharsets.UTF_8),
            bytes -> {
              later.pass(Autosaver.SLOW);
              return save(bytes);
            },
            new Autosaver.Means(later, Runnable::run, clock),
            told::add);
    saver.changed("a");
    later.pass(Duration.ofSeconds(1));

    assertThat(told)
        .containsExactly(waiting(), new SaveState.Waiting(clock.instant(), true), saved());
  }

  @Test
  void aBusyWorkerWritesOnceForAllThatCameMeanwhile() {
    Deque<Runnable> queue = new ArrayDeque<>();
    Autosaver<String> saver = saver(queue::add);
    saver.changed("a");
    later.pass(Duration.ofSeconds(1));
    saver.changed("b");
    later.pass(Duration.ofSeconds(1));
    queue.forEach(Runnable::run);

    assertThat(queue).hasSize(2);
    assertThat(written).containsExactly("b");
  }

  @Test
  void aValueThatCannotBeMadeIntoBytesIsAFaultAndNotTheEnd() {
    Autosaver<String> saver =
        new Autosaver<>(
            text -> {
              if (text.equals("bad")) {
                throw new IllegalArgumentException("no words for this");
              }
              return text.getBytes(StandardCharsets.UTF_8);
            },
            this::save,
            new Autosaver.Means(later, Runnable::run, clock),
            told::add);
    saver.changed("bad");
    later.pass(Duration.ofSeconds(1));
    FileFault notMade =
        new FileFault.NotMade("java.lang.IllegalArgumentException: no words for this");
    assertThat(saver.state()).isEqualTo(new SaveState.Failed(notMade, clock.instant(), true));

    saver.changed("good");
    later.pass(Duration.ofSeconds(1));

    assertThat(written).containsExactly("good");
  }

  @Test
  void aClockThatJumpsBackDelaysNothing() {
    Autosaver<String> saver = saver();
    saver.changed("a");
    clock.move(Duration.ofDays(-400));
    saver.changed("b");
    later.pass(Duration.ofSeconds(1));

    assertThat(written).containsExactly("b");
    assertThat(saver.state()).isEqualTo(saved());
  }

  @Test
  void anInterruptedThreadStillSavesAndStaysInterrupted() {
    Autosaver<String> saver = saver();
    saver.changed("a");
    Thread.currentThread().interrupt();
    SaveState state = saver.flush();

    assertThat(Thread.interrupted()).isTrue();
    assertThat(state).isEqualTo(saved());
  }
}
