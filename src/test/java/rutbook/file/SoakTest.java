package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.PowerCut;
import rutbook.file.ForgetfulDisk.Quirk;

/** A long life of one notebook in which everything happens, in any order, again and again. */
class SoakTest {
  private static final Path FILE = ForgetfulDisk.FOLDER.resolve("season.rut");
  private static final List<String> STEPS =
      List.of("draft", "write", "force", "move", "forceFolder", "makeFolder", "read", "stat");

  @Test
  void nothingSavedIsLostInTwoThousandEvents() {
    Life life = new Life(20260503);
    life.live(2_000);
    assertThat(life.saves).isGreaterThan(200);
    assertThat(life.cuts).isGreaterThan(10);
    assertThat(life.foreign).isGreaterThan(10);
  }

  @Test
  @Tag("long")
  void nothingSavedIsLostInFiftyThousandEventsOfEachOfTenLives() {
    for (int seed = 1; seed <= 10; seed++) {
      new Life(seed).live(50_000);
    }
  }

  /** The rider, the disk and the weather. */
  private static final class Life {
    private final Random random;
    private final HandClock clock = new HandClock();
    private ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
    private HandLater later = new HandLater();
    private NotebookFile file;
    private Autosaver<Integer> saver;
    private int newest = 1;

    /** The greatest number of which the program was told that it is on the disk. */
    private int safe = 1;

    private int saves;
    private int cuts;
    private int foreign;

    Life(long seed) {
      random = new Random(seed);
      disk.put(FILE, Page.of(1));
      open();
    }

    private void open() {
      disk.trouble(step -> Optional.empty());
      NotebookFile.Opened opened =
          NotebookFile.open(disk, new DurableFile(disk), FILE, clock).result().orElseThrow();
      newest = Page.number(opened.bytes()).orElseThrow();
      assertThat(newest).isGreaterThanOrEqualTo(safe);
      file = opened.file();
      later = new HandLater();
      saver =
          new Autosaver<>(
              Page::of, this::save, new Autosaver.Means(later, Runnable::run, clock), state -> {});
    }

    private Outcome<Saved> save(byte[] bytes) {
      Outcome<Saved> outcome = file.save(bytes);
      if (outcome.result().isPresent()) {
        saves++;
        safe = Page.number(bytes).orElseThrow();
        assertThat(disk.bytes(FILE)).isEqualTo(bytes);
      }
      return outcome;
    }

    void live(int events) {
      for (int i = 0; i < events; i++) {
        try {
          event(random.nextInt(100));
        } catch (PowerCut gone) {
          powerIsBack();
        }
      }
      saver.abandon();
    }

    private void event(int which) {
      if (which < 50) {
        saver.changed(++newest);
      } else if (which < 80) {
        later.pass(Duration.ofMillis(random.nextInt(2_500)));
        clock.move(Duration.ofSeconds(random.nextInt(400)));
      } else if (which < 84) {
        String failing = STEPS.get(random.nextInt(STEPS.size()));
        disk.trouble(step -> step.equals(failing) ? trouble() : Optional.empty());
      } else if (which < 90) {
        disk.trouble(step -> Optional.empty());
      } else if (which < 92) {
        clock.move(Duration.ofDays(random.nextInt(60) - 30));
      } else if (which < 94) {
        restart();
      } else if (which < 96) {
        somebodyElseWrites();
      } else {
        disk.cutAt(disk.steps().size() + 1 + random.nextInt(40));
      }
    }

    private Optional<IOException> trouble() {
      return random.nextBoolean()
          ? Optional.of(new FaultException(new FileFault.DiskFull(FILE, 9)))
          : Optional.of(new IOException("Input/output error"));
    }

    private void restart() {
      disk.trouble(step -> Optional.empty());
      saver.retry();
      assertThat(saver.flush()).isInstanceOf(SaveState.Saved.class);
      saver.close();
      file.close();
      int before = newest;
      open();
      assertThat(newest).isEqualTo(before);
    }

    private void somebodyElseWrites() {
      foreign++;
      disk.trouble(step -> Optional.empty());
      int theirs = newest + 1_000;
      disk.put(FILE, Page.of(theirs));
      saver.changed(++newest);
      SaveState state = saver.flush();
      assertThat(state)
          .isInstanceOfSatisfying(
              SaveState.Failed.class,
              failed ->
                  assertThat(failed.fault()).isInstanceOf(FileFault.ChangedBehindOurBack.class));
      assertThat(disk.bytes(FILE)).isEqualTo(Page.of(theirs));
      saver.abandon();
      file.close();
      open();
      assertThat(newest).isEqualTo(theirs);
    }

    private void powerIsBack() {
      cuts++;
      List<ForgetfulDisk> left = disk.afterPowerCut();
      disk = left.get(random.nextInt(left.size()));
      open();
    }
  }
}
