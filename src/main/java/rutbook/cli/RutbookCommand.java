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
import picocli.CommandLine.ParentCommand;
import rutbook.compare.BikeCheck;
import rutbook.compare.Finding;
import rutbook.compare.FullComparison;
import rutbook.compare.Subject;
import rutbook.json.CheckAnswer;
import rutbook.json.CompareAnswer;
import rutbook.json.LogAnswer;
import rutbook.json.Reply;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.reasoning.MoveEffects;
import rutbook.units.Display;
import rutbook.words.FaultWords;
import rutbook.words.Phrases;

/**
 * The jobs of the notebook from a terminal. All but those with a {@link Pen} only read notebooks
 * and take no lock. Adding one is a nested command and its name in the list of subcommands.
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
      RutbookCommand.Log.class,
      RutbookCommand.Compare.class,
      HistoryCommand.class,
      FindCommand.class,
      NextCommand.class,
      CardCommand.class,
      HandOverCommand.class,
      TakeBackCommand.class,
      ImportCommand.class,
      RebuildCommand.class,
      RutbookCommand.Check.class,
      ForkCommand.class,
      OilCommand.class,
      SagCommand.class,
      SteeringCommand.class,
      GasCommand.class
    })
public final class RutbookCommand implements Runnable {
  private static final String JSON = "--json";

  private final Terminal terminal;
  private final Function<String, Notebook> reader;
  private final Outbox outbox;
  private final Program program;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "A notebook to open in the window; without one, the notebook of last time.")
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

  Terminal terminal() {
    return terminal;
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

  /** What every command on a notebook has. */
  @Command(mixinStandardHelpOptions = true)
  abstract static class OnNotebook implements java.util.concurrent.Callable<Integer> {
    @ParentCommand private RutbookCommand parent;

    @Parameters(index = "0", paramLabel = "FILE", description = "The notebook.")
    private String file;

    @Option(names = "--bike", defaultValue = "", description = "Which bike, by name.")
    private String bike;

    @Option(
        names = "--units",
        defaultValue = "",
        description = "metric or us; otherwise the notebook's own choice.")
    private String units;

    @Option(
        names = JSON,
        description =
            "Answer with one JSON object on standard output, also when it is a refusal: amounts"
                + " have a value and a unit, as written in the notebook or as --units says.")
    private boolean json;

    OpenedNotebook opened() {
      Notebook notebook = parent.reader.apply(file);
      return OpenedNotebook.of(notebook, bike, parent.phrases.in(display(notebook)));
    }

    private Display display(Notebook notebook) {
      return switch (units) {
        case "" -> notebook.display();
        case "metric" -> Display.METRIC;
        case "us" -> Display.US;
        default -> throw Refusal.use(parent.phrases.say("Cli", "bad-units", units));
      };
    }

    /**
     * Gives the answer of a command: as JSON when that was asked for, as lines otherwise.
     *
     * @return the exit code that was given
     */
    int answer(OpenedNotebook opened, int exit, Reply reply, Consumer<Pages> lines) {
      if (json) {
        Optional<Display> asked =
            units.isEmpty() ? Optional.empty() : Optional.of(display(opened.notebook()));
        terminal().json(reply.text(exit, Optional.of(opened.bike()), asked));
      } else {
        lines.accept(new Pages(opened, parent.terminal));
      }
      return exit;
    }

    Terminal terminal() {
      return parent.terminal;
    }

    Outbox outbox() {
      return parent.outbox;
    }

    Pen pen() {
      return parent.pen.orElseThrow();
    }

    /** The notebook's name as it was typed. */
    String file() {
      return file;
    }
  }

  @Command(name = "log", description = "Print what is on the bike and every session.")
  static final class Log extends OnNotebook {
    @Override
    public Integer call() {
      OpenedNotebook opened = opened();
      Reply reply = LogAnswer.of(opened.notebook(), opened.timeline());
      return answer(opened, Exit.DONE, reply, pages -> lines(opened, pages));
    }

    private void lines(OpenedNotebook opened, Pages pages) {
      terminal().line(opened.bike().name());
      pages.onTheBike();
      for (Entry.Session session : opened.timeline().sessions()) {
        terminal().blank();
        pages.session(session);
      }
    }
  }

  @Command(
      name = "compare",
      description =
          "Print what differs. A reference is now, baseline, a day (2026-05-03), a moto of it"
              + " (2026-05-03#2), the best of a track (track:\"Name\"), the start there"
              + " (start:\"Name\"), advice (advice:2026-05-03) or what was handed over"
              + " (handed:2026-05-03). Of two tracks all sessions are compared too.")
  static final class Compare extends OnNotebook {
    @Parameters(index = "1", paramLabel = "FROM")
    private String from;

    @Parameters(index = "2", paramLabel = "TO")
    private String to;

    @Override
    public Integer call() {
      OpenedNotebook opened = opened();
      References references = new References(opened);
      Subject before = references.subject(from);
      Subject after = references.subject(to);
      FullComparison comparison =
          FullComparison.of(opened.notebook().shelf(), opened.timeline(), before, after);
      MoveEffects effects = opened.effects();
      return answer(
          opened,
          Exit.DONE,
          CompareAnswer.of(comparison, effects),
          pages -> lines(opened, comparison, effects, pages));
    }

    private void lines(
        OpenedNotebook opened, FullComparison comparison, MoveEffects effects, Pages pages) {
      pages.comparison(comparison.sides(), opened.effects(effects, comparison.sides()));
      new ComparedPages(opened, terminal()).more(comparison);
    }
  }

  @Command(name = "check", description = "Print what wants attention; exit 1 when something does.")
  static final class Check extends OnNotebook {
    @Override
    public Integer call() {
      OpenedNotebook opened = opened();
      List<Finding> findings = BikeCheck.of(opened.timeline());
      int exit = findings.stream().anyMatch(Finding::isProblem) ? Exit.PROBLEM : Exit.DONE;
      return answer(opened, exit, CheckAnswer.of(findings), pages -> pages.check(findings));
    }
  }
}
