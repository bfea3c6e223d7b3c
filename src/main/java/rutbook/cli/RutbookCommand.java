package rutbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.units.Display;
import rutbook.words.FaultWords;
import rutbook.words.Phrases;

/**
 * The jobs of the notebook from a terminal. All but those with a {@link Pen} only read notebooks
 * and take no lock. Adding one is a class that extends {@link OnNotebook} and its name in the list
 * of subcommands.
 */
@Command(
    name = "rutbook",
    mixinStandardHelpOptions = true,
    description = "A suspension notebook for off-road riders.",
    footer = {
      "",
      "Every command on a notebook answers with one JSON object when given --json.",
      "Exit: 0 done, 1 a problem or shortfall was found, 2 wrong use,",
      "      3 the file cannot be read, 4 unexpected."
    },
    subcommands = {
      LogCommand.class,
      CompareCommand.class,
      HistoryCommand.class,
      FindCommand.class,
      NextCommand.class,
      CardCommand.class,
      HandOverCommand.class,
      TakeBackCommand.class,
      ImportCommand.class,
      RebuildCommand.class,
      CheckCommand.class,
      ForkCommand.class,
      OilCommand.class,
      SagCommand.class,
      SteeringCommand.class,
      GasCommand.class
    })
public final class RutbookCommand implements Runnable {
  static final String JSON = "--json";

  private final Terminal terminal;
  private final Function<String, Notebook> reader;
  private final Outbox outbox;
  private final Program program;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description =
          "A notebook or a setup file to open in the window; without one, the last notebook.")
  private String file;

  @Option(names = "--tour", description = "Print a tour of the sample notebook and end.")
  private boolean tour;

  @Option(names = "--rehearse", hidden = true)
  private boolean rehearsal;

  private Phrases phrases = Phrases.english(Display.METRIC);
  private Optional<Pen> pen = Optional.empty();
  private Function<String, List<Named>> folders = folder -> List.of();

  /**
   * A notebook of a folder.
   *
   * @param name of its file, without the folder
   * @param read opens it, or throws a {@link Refusal}
   */
  public record Named(String name, Supplier<Notebook> read) {}

  /**
   * @param reader opens a notebook by its file name, or throws a {@link Refusal}
   * @param outbox where files go that a command made
   * @param program what happens without a command
   */
  public RutbookCommand(
      Terminal terminal, Function<String, Notebook> reader, Outbox outbox, Program program) {
    this.terminal = terminal;
    this.reader = reader;
    this.outbox = outbox;
    this.program = program;
  }

  /** Speaks that language from now on, instead of English. */
  public RutbookCommand in(Phrases language) {
    this.phrases = language;
    return this;
  }

  /** Writes with that pen; without one, what writes into a notebook cannot be done. */
  public RutbookCommand with(Pen newPen) {
    this.pen = Optional.of(newPen);
    return this;
  }

  /** Looks for the notebooks of a folder with that; without it no folder has any. */
  public RutbookCommand lookingInto(Function<String, List<Named>> newFolders) {
    this.folders = newFolders;
    return this;
  }

  List<Named> notebooksIn(String folder) {
    return folders.apply(folder);
  }

  Notebook read(String name) {
    return reader.apply(name);
  }

  Terminal terminal() {
    return terminal;
  }

  Outbox outbox() {
    return outbox;
  }

  Pen pen() {
    return pen.orElseThrow();
  }

  Phrases phrases() {
    return phrases;
  }

  String say(String key, Object... facts) {
    return phrases.say("Cli", key, facts);
  }

  @Override
  public void run() {
    if (tour) {
      program.tour();
    } else if (rehearsal) {
      program.rehearse();
    } else {
      program.window(Optional.ofNullable(file).map(this::notebook));
    }
  }

  /** A word without a point or a folder is a command that was mistyped, not a notebook. */
  private String notebook(String name) {
    if (!name.matches(".*[./\\\\].*")) {
      throw Refusal.use(phrases.say("Cli", "no-command", name));
    }
    return name;
  }

  /** Runs the command line; returns the exit code. */
  public int execute(Terminal errors, Consumer<Throwable> log, String... words) {
    boolean json = List.of(words).contains(JSON);
    try {
      if (words.length == 0) {
        run(); // most starts: the window need not wait for all that the commands can be asked
        return Exit.DONE;
      }
      return line(errors, log, json).execute(words);
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError thrown) {
      return refused(refusal(thrown, log), errors, json);
    }
  }

  /** What is said of it; what nobody foresaw is written to the log too. */
  private Refusal refusal(Throwable thrown, Consumer<Throwable> log) {
    if (thrown instanceof Refusal refusal) {
      return refusal;
    }
    if (thrown instanceof NotebookException bound) {
      return Refusal.use(new FaultWords(phrases).sentence(bound));
    }
    log.accept(thrown);
    return unexpected(thrown);
  }

  private CommandLine line(Terminal errors, Consumer<Throwable> log, boolean json) {
    CommandLine line = new CommandLine(this);
    String version = phrases.say("Cli", "version", program.version());
    line.getCommandSpec().version(version);
    line.getSubcommands().values().forEach(each -> each.getCommandSpec().version(version));
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setOut(terminal.writer());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setResourceBundle(phrases.usage());
    line.setExpandAtFiles(false); // a file name may begin with @
    line.setParameterExceptionHandler(
        (thrown, arguments) -> refused(Refusal.use(thrown.getMessage()), errors, json));
    line.setExecutionExceptionHandler(
        (thrown, command, result) -> refused(refusal(thrown, log), errors, json));
    return line;
  }

  private Refusal unexpected(Throwable thrown) {
    String name = thrown.getClass().getSimpleName();
    return Refusal.unexpected(phrases.say("Cli", "unexpected", name));
  }

  private int refused(Refusal refusal, Terminal errors, boolean json) {
    if (json) {
      terminal.json(refusal.reply().text(refusal.exit(), Optional.empty(), Optional.empty()));
    } else {
      errors.line(refusal.getMessage());
    }
    return refusal.exit();
  }
}
