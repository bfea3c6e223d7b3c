package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.edit.Editor;
import rutbook.edit.RandomEdits;
import rutbook.json.NotebookJson;
import rutbook.notebook.Dice;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Notebooks;

/**
 * Random edits of every kind through the real editor and autosaver onto a real disk, with undo,
 * redo and restarts at random: what is opened again is what was left, and no memory leaks.
 */
class EditingSoakTest {
  private static final int MOST_ENTRIES = 80;

  @TempDir Path folder;

  @Test
  void sixHundredRandomEditsAreAllThereAfterEveryRestart() throws IOException {
    Life life = new Life(folder.resolve("season.rutbook"), 20261127);
    life.live(600);
    assertThat(life.restarts).isGreaterThan(2);
    assertThat(life.taken).isGreaterThan(200);
  }

  @Test
  @Tag("long")
  void twentyThousandRandomEditsKeepTheHeapSteady() throws IOException {
    Life life = new Life(folder.resolve("season.rutbook"), 1);
    life.live(1_000); // classes are loaded and code is compiled by then
    double[] heap = new double[20];
    for (int i = 0; i < heap.length; i++) {
      life.live(1_500);
      life.startAgain(Notebooks.of(i, 10)); // so that what is held is of one size
      heap[i] = usedMebibytes();
    }
    System.out.printf(
        "%d edits taken, %d refused, %d undone, %d restarts, %d saves; MiB used: %s%n",
        life.taken, life.refused, life.undone, life.restarts, life.saves, Arrays.toString(heap));
    assertThat(life.taken).isGreaterThan(20_000);
    double first = Arrays.stream(heap, 0, 5).average().orElseThrow();
    double last = Arrays.stream(heap, 15, 20).average().orElseThrow();
    assertThat(last / first).as("heap at the end to that at the start").isLessThan(1.15);
  }

  private static double usedMebibytes() {
    Runtime runtime = Runtime.getRuntime();
    double least = Double.MAX_VALUE;
    for (int i = 0; i < 4; i++) {
      System.gc();
      least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
    }
    return Math.round(least / (1 << 20) * 10) / 10.0;
  }

  /** One rider at one notebook. */
  private static final class Life {
    private final Path path;
    private final Dice dice;
    private final Random random;
    private final Disk disk = new RealDisk(System.getProperty("os.name"));
    private final HandClock clock = new HandClock();
    private HandLater later = new HandLater();
    private NotebookFile file;
    private Autosaver<Notebook> saver;
    private Editor editor;
    private int taken;
    private int refused;
    private int undone;
    private int restarts;
    private int saves;

    Life(Path path, long seed) throws IOException {
      this.path = Files.write(path, NotebookJson.write(Notebooks.of(seed, 10)));
      this.random = new Random(seed);
      this.dice = new Dice(random);
      open();
    }

    private void open() {
      NotebookFile.Opened opened =
          NotebookFile.open(disk, new DurableFile(disk), path, clock).result().orElseThrow();
      file = opened.file();
      later = new HandLater();
      saver =
          new Autosaver<>(
              NotebookJson::write,
              this::save,
              new Autosaver.Means(later, Runnable::run, clock),
              state -> {});
      editor = new Editor(NotebookJson.read(opened.bytes()));
      editor.listen(history -> saver.changed(history.present()));
    }

    private Outcome<Saved> save(byte[] bytes) {
      saves++;
      return file.save(bytes);
    }

    void live(int events) {
      for (int i = 0; i < events; i++) {
        int which = random.nextInt(100);
        if (which < 80) {
          edit();
        } else if (which < 90) {
          undone++;
          editor.undo();
        } else if (which < 94) {
          editor.redo();
        } else if (which < 96) {
          editor.closeStep();
        } else if (which < 98) {
          later.pass(Duration.ofMillis(random.nextInt(12_000)));
          clock.move(Duration.ofSeconds(random.nextInt(900)));
        } else {
          restart();
        }
      }
    }

    private void edit() {
      Notebook now = editor.present();
      boolean ridden = now.entries().stream().anyMatch(Entry.Session.class::isInstance);
      if (!ridden || now.entries().size() > MOST_ENTRIES) {
        editor.open(Notebooks.of(random.nextLong(), 10));
        return;
      }
      try {
        editor.make(new RandomEdits(dice, now).any());
        taken++;
      } catch (NotebookException bound) {
        refused++;
        assertThat(editor.present()).isSameAs(now);
      }
    }

    private void restart() {
      restarts++;
      assertThat(saver.flush()).isInstanceOf(SaveState.Saved.class);
      saver.close();
      file.close();
      Notebook before = editor.present();
      open();
      assertThat(editor.present()).isEqualTo(before);
    }

    void startAgain(Notebook notebook) {
      editor.open(notebook);
      restart();
    }
  }
}
