package rutbook.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import rutbook.bench.FirstFrame;
import rutbook.file.RealDisk;
import rutbook.file.UserFolders;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;
import rutbook.units.Display;
import rutbook.words.Phrases;

/** The program's own window with a notebook from the disk, started to be measured. */
public final class StartedWindow {
  private StartedWindow() {}

  /** The file of the sample notebook, and a folder that may be written to. */
  public static void main(String[] arguments) throws Exception {
    Path file = Path.of(arguments[0]);
    Path folder = Path.of(arguments[1]);
    FirstFrame.tellWhenShown();
    start(folder)
        .run(
            new WindowStart.Wanted(
                Optional.empty(), () -> read(file), folder.resolve("home"), window -> {}));
  }

  static Notebook read(Path file) {
    try {
      return NotebookJson.read(Files.readAllBytes(file));
    } catch (IOException thrown) {
      throw new UncheckedIOException(thrown);
    }
  }

  /** The program as {@code Main} wires it, in folders of its own. */
  static WindowStart start(Path folder) {
    return new WindowStart(
        new RealDisk(System.getProperty("os.name")),
        Clock.systemDefaultZone(),
        phrases -> new Codec(NotebookJson::read, NotebookJson::write, Throwable::getMessage),
        Phrases.english(Display.METRIC),
        new UserFolders(folder.resolve("config"), folder.resolve("cache"), folder.resolve("log")));
  }

  /** Opens the program's window on its thread, for measurements that go on in it. */
  public static void open(Notebook notebook, Path folder) {
    start(folder).open(notebook, folder.resolve("home"));
  }
}
