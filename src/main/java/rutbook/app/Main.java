package rutbook.app;

import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import rutbook.cli.RutbookCommand;
import rutbook.cli.Terminal;
import rutbook.file.RealDisk;
import rutbook.file.UserFolders;
import rutbook.units.Display;
import rutbook.words.Language;
import rutbook.words.Phrases;

/** Reads the command line, makes the objects and starts them. */
public final class Main {
  private final RealDisk disk = new RealDisk(System.getProperty("os.name"));
  private final Phrases phrases =
      new Phrases(Language.of(Locale.getDefault(Locale.Category.DISPLAY)), Display.METRIC);
  private final CommandFiles files = new CommandFiles(disk, Clock.systemDefaultZone(), phrases);
  private final Terminal out = new Terminal(inItsCharset(System.out), charset());
  private final Terminal errors = new Terminal(inItsCharset(System.err), charset());
  private final Unforeseen unforeseen =
      new Unforeseen(disk, folders(), Clock.systemDefaultZone(), phrases);

  Main() {}

  public static void main(String[] arguments) {
    System.exit(new Main().run(arguments));
  }

  int run(String... arguments) {
    RutbookCommand command =
        new RutbookCommand(
                out,
                files::read,
                files,
                new WithoutCommand(disk, phrases, folders(), out, files::read, unforeseen))
            .in(phrases)
            .with(files)
            .lookingInto(files::notebooksIn);
    return command.execute(
        errors,
        thrown ->
            unforeseen.note("command line", thrown).ifPresent(sentence -> errors.line(sentence)),
        arguments);
  }

  /** In bytes of the terminal's own character set, whatever the default is. */
  private static PrintStream inItsCharset(PrintStream bytes) {
    return new PrintStream(bytes, true, charset());
  }

  private static Charset charset() {
    String name = System.getProperty("native.encoding", "UTF-8");
    return Charset.isSupported(name) ? Charset.forName(name) : Charset.defaultCharset();
  }

  private static UserFolders folders() {
    return UserFolders.of(
        new UserFolders.Surroundings(
            System.getProperty("os.name"),
            System.getenv(),
            System.getProperty("user.home", ""),
            Path.of(System.getProperty("java.io.tmpdir"))));
  }
}
