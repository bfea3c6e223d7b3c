package rutbook.file;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import rutbook.edit.Editor;
import rutbook.edit.EntryEdit;
import rutbook.json.NotebookJson;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;

/**
 * A program of its own that edits a real notebook without pause, saved by the real autosaver on a
 * worker, until it is killed. Each edit writes its number into a note; the number is printed once
 * the save that holds it was reported as done.
 */
final class EditingChild {
  private EditingChild() {}

  public static void main(String[] args) throws InterruptedException {
    Disk disk = new RealDisk(System.getProperty("os.name"));
    Outcome<NotebookFile.Opened> outcome =
        NotebookFile.open(disk, new DurableFile(disk), Path.of(args[0]), Clock.systemUTC());
    NotebookFile.Opened opened = outcome.result().orElseThrow();
    Editor editor = new Editor(NotebookJson.read(opened.bytes()));
    ScheduledThreadPoolExecutor worker = new ScheduledThreadPoolExecutor(1);
    Autosaver<Notebook> saver =
        new Autosaver<>(
            NotebookJson::write,
            bytes -> told(opened.file().save(bytes), bytes),
            new Autosaver.Means(soon(worker), worker, Clock.systemUTC()),
            state -> {});
    editor.listen(history -> saver.changed(history.present()));
    System.out.println("open " + number(editor.present()));
    for (int number = number(editor.present()) + 1; ; number++) {
      EntryId first = editor.present().entries().get(0).id();
      editor.make(new EntryEdit.Note(first, String.valueOf(number)));
      Thread.sleep(number % 3);
    }
  }

  /** A hundredth of the usual quiet, so that many saves fit into a short life. */
  private static Later soon(ScheduledThreadPoolExecutor worker) {
    return (wait, task) -> {
      var waiting = worker.schedule(task, wait.toMillis() / 100, TimeUnit.MILLISECONDS);
      return () -> waiting.cancel(false);
    };
  }

  private static Outcome<Saved> told(Outcome<Saved> saved, byte[] bytes) {
    if (saved.result().isPresent()) {
      System.out.println(number(NotebookJson.read(bytes)));
    } else {
      System.out.println(saved.fault().orElseThrow());
    }
    return saved;
  }

  /** The number of the edit that a notebook holds; 0 before the first. */
  static int number(Notebook notebook) {
    return Optional.of(notebook.entries().get(0).head().note())
        .filter(note -> note.matches("\\d+"))
        .map(Integer::parseInt)
        .orElse(0);
  }
}
