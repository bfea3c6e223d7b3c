package rutbook.app;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import rutbook.cli.Program;
import rutbook.cli.Refusal;
import rutbook.cli.Terminal;
import rutbook.cli.Tour;
import rutbook.file.Disk;
import rutbook.file.FileNames;
import rutbook.file.UserFolders;
import rutbook.json.JsonException;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;
import rutbook.ui.Window;
import rutbook.ui.fx.Toolkit;
import rutbook.words.FileWords;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** Opens the window, or prints the tour where there can be none. */
final class WithoutCommand implements Program {
  private final Disk disk;
  private final Phrases phrases;
  private final UserFolders folders;
  private final Terminal out;
  private final Function<String, Notebook> reader;
  private final Unforeseen unforeseen;

  WithoutCommand(
      Disk disk,
      Phrases phrases,
      UserFolders folders,
      Terminal out,
      Function<String, Notebook> reader,
      Unforeseen unforeseen) {
    this.disk = disk;
    this.phrases = phrases;
    this.folders = folders;
    this.out = out;
    this.reader = reader;
    this.unforeseen = unforeseen;
  }

  @Override
  public String version() {
    return Build.version();
  }

  @Override
  public void tour() {
    Tour.print(sample(), phrases, out);
  }

  @Override
  public void window(Optional<String> file) {
    Optional<Path> path = file.map(this::path);
    try {
      open(path, this::watch);
    } catch (Exception | Error noWindow) {
      unforeseen.log("no window", noWindow);
      file.ifPresentOrElse(
          name -> {
            throw Refusal.use(phrases.say("Cli", "no-window", name));
          },
          this::tour);
    }
  }

  /** What goes wrong in the open window is told in it, and the window goes on. */
  private void watch(Window window) {
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, thrown) ->
            unforeseen
                .note(thread.getName(), thrown)
                .ifPresent(sentence -> Toolkit.later(() -> window.tell(sentence))));
  }

  private Path path(String name) {
    return FileNames.path(name)
        .fold(
            Path::toAbsolutePath,
            fault -> {
              throw Refusal.file(new FileWords(phrases, ZoneId.systemDefault()).sentence(fault));
            });
  }

  @Override
  public void rehearse() {
    try {
      open(Optional.empty(), Rehearsal::begin);
    } catch (Exception noWindow) {
      throw new IllegalStateException(noWindow);
    }
  }

  /** The toolkit's own complaints go nowhere meanwhile: they are no sentences for a rider. */
  private void open(Optional<Path> file, Consumer<Window> opened) throws Exception {
    PrintStream before = System.err;
    System.setProperty("javafx.cachedir", folders.cache().resolve("javafx").toString());
    System.setErr(
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.US_ASCII));
    try {
      Path home = Path.of(System.getProperty("user.home", "."), "Rutbook");
      new WindowStart(disk, Clock.systemDefaultZone(), WithoutCommand::codec, phrases, folders)
          .run(new WindowStart.Wanted(file, this::sample, home, opened));
    } finally {
      System.setErr(before);
    }
  }

  private static Codec codec(Phrases spoken) {
    return new Codec(
        NotebookJson::read,
        NotebookJson::write,
        thrown ->
            thrown instanceof JsonException fault
                ? new JsonWords(spoken).sentence(fault)
                : spoken.say("App", "no-notebook"));
  }

  /** Beside the program where it was unpacked, or in the folder it is started from. */
  private Notebook sample() {
    Path home = Path.of(System.getProperty("rutbook.home", "."));
    return reader.apply(home.resolve("sample-notebooks").resolve("season.rutbook").toString());
  }
}
