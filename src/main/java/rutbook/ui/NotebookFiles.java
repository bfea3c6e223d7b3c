package rutbook.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rutbook.notebook.Notebook;

/**
 * What the window asks of the files. Calls return at once; answers come on the window's thread. The
 * program, not the window, knows the disk.
 */
public interface NotebookFiles {
  /** How an attempt went. */
  sealed interface Answer {
    /** The notebook is open from this path; {@code notice} is something worth telling, or empty. */
    record Opened(Notebook notebook, Path path, String notice) implements Answer {}

    /** Done, and nothing else is shown. */
    record Done() implements Answer {}

    /** What happened, what is safe, and what can be done about it. */
    record Refused(String sentence, List<Way> ways) implements Answer {
      public Refused {
        ways = List.copyOf(ways);
      }
    }
  }

  /** A way out that the rider can choose, such as opening a backup; it answers like the first. */
  record Way(String label, Consumer<Consumer<Answer>> take) {}

  /** Where the present notebook lives; empty for one that never was on the disk. */
  Optional<Path> current();

  /** A folder that is there, for the dialog to begin in. */
  Optional<Path> folder();

  boolean isThere(Path path);

  /** The latest first. */
  List<Path> recent();

  /** Whether the open notebook is the sample that a first run is given to look around in. */
  boolean isSample();

  /** What is worth telling once the window is there: what of last time could not be opened. */
  List<Answer> atStart();

  void open(Path path, Consumer<Answer> answer);

  /** A new, empty notebook at the path. */
  void startNew(Path path, Consumer<Answer> answer);

  /** A copy beside; the open notebook stays the open one. */
  void copyTo(Path path, Consumer<Answer> answer);

  /**
   * Before the window closes: saves what is not saved. Empty when all is on the disk, or the
   * sentence that says what is not.
   */
  void beforeClosing(Consumer<Optional<String>> answer);

  /** What can be done about a save that failed; done at once where nothing did. */
  void settle(Consumer<Answer> answer);
}
