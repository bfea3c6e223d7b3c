package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** The autosaver with the threads it has in the program. */
class AutosaverThreadsTest {
  private final HandClock clock = new HandClock();

  /** Real threads and a real disk in memory: many changes at once, and the last one is there. */
  @Test
  void theLastOfManyChangesFromManyThreadsIsOnTheDiskAfterClosing() throws Exception {
    ForgetfulDisk disk = new ForgetfulDisk(ForgetfulDisk.Quirk.NONE);
    Path file = ForgetfulDisk.FOLDER.resolve("season.rut");
    disk.put(file, Page.of(0));
    NotebookFile notebook =
        NotebookFile.open(disk, new DurableFile(disk), file, clock).result().orElseThrow().file();
    ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor();
    ExecutorService worker = Executors.newSingleThreadExecutor();
    ExecutorService editors = Executors.newFixedThreadPool(4);
    Later atOnce = (wait, task) -> Later.on(timer).after(wait.dividedBy(1000), task);
    Autosaver<Integer> saver =
        new Autosaver<>(
            Page::of, notebook::save, new Autosaver.Means(atOnce, worker, clock), state -> {});
    AtomicInteger last = new AtomicInteger();
    List<Future<?>> work = new ArrayList<>();
    for (int editor = 0; editor < 4; editor++) {
      work.add(
          editors.submit(
              () -> {
                for (int i = 0; i < 500; i++) {
                  synchronized (last) {
                    saver.changed(last.incrementAndGet());
                  }
                }
              }));
    }
    for (Future<?> each : work) {
      each.get();
    }
    saver.close();
    editors.shutdown();
    worker.shutdown();
    timer.shutdownNow();

    assertThat(saver.state()).isInstanceOf(SaveState.Saved.class);
    assertThat(disk.bytes(file)).isEqualTo(Page.of(2000));
  }
}
