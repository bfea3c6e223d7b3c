package rutbook.cli;

import java.util.List;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rutbook.compare.Comparison;
import rutbook.compare.Subject;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.units.Display;
import rutbook.words.Phrases;

/**
 * The jobs of the notebook from a terminal. They only read and take no lock. Adding one is a nested
 * command and its name in the list of subcommands.
 */
@Command(
    name = "rutbook",
    mixinStandardHelpOptions = true,
    description = "A suspension notebook for off-road riders.",
    subcommands = {
      RutbookCommand.Log.class,
      RutbookCommand.Compare.class,
      RutbookCommand.Rebuild.class,
      RutbookCommand.Check.class
    })
public final class RutbookCommand implements Runnable {
  private final Terminal terminal;
  private final Function<String, Notebook> reader;
  private final Runnable otherwise;

  @Option(names = "--tour", description = "Print a tour of the sample notebook and end.")
  private boolean tour;

  private final Runnable tourOfSample;

  /**
   * @param reader opens a notebook by its file name, or throws a {@link Refusal}
   * @param tourOfSample prints the tour
   * @param otherwise what happens without a command: the window
   */
  public RutbookCommand(
      Terminal terminal,
      Function<String, Notebook> reader,
      Runnable tourOfSample,
      Runnable otherwise) {
    this.terminal = terminal;
    this.reader = reader;
    this.tourOfSample = tourOfSample;
    this.otherwise = otherwise;
  }

  @Override
  public void run() {
    (tour ? tourOfSample : otherwise).run();
  }

  /** Runs the command line; returns the exit code. */
  public int execute(Terminal errors, java.util.function.Consumer<Throwable> log, String... words) {
    CommandLine line = new CommandLine(this);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(
        (thrown, arguments) -> {
          errors.line(thrown.getMessage());
          return Exit.WRONG_USE;
        });
    line.setExecutionExceptionHandler(
        (thrown, command, result) -> {
          if (thrown instanceof Refusal refusal) {
            errors.line(refusal.getMessage());
            return refusal.exit();
          }
          log.accept(thrown);
          errors.line(
              Phrases.english(Display.METRIC)
                  .say("Cli", "unexpected", thrown.getClass().getSimpleName()));
          return Exit.UNEXPECTED;
        });
    return line.execute(words);
  }

  /** What every command on a notebook has. */
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

    OpenedNotebook opened() {
      Notebook notebook = parent.reader.apply(file);
      return OpenedNotebook.of(notebook, bike, display(notebook));
    }

    private Display display(Notebook notebook) {
      return switch (units) {
        case "" -> notebook.display();
        case "metric" -> Display.METRIC;
        case "us" -> Display.US;
        default ->
            throw Refusal.use(Phrases.english(Display.METRIC).say("Cli", "bad-units", units));
      };
    }

    Pages pages(OpenedNotebook opened) {
      return new Pages(opened, parent.terminal);
    }

    Terminal terminal() {
      return parent.terminal;
    }
  }

  @Command(name = "log", description = "Print what is on the bike and every session.")
  static final class Log extends OnNotebook {
    @Override
    public Integer call() {
      OpenedNotebook opened = opened();
      terminal().line(opened.bike().name());
      pages(opened).onTheBike();
      for (Entry.Session session : opened.timeline().sessions()) {
        terminal().blank();
        pages(opened).session(session);
      }
      return Exit.DONE;
    }
  }

  @Command(
      name = "compare",
      description =
          "Print what differs. A reference is now, baseline, a day (2026-05-03), a moto of it"
              + " (2026-05-03#2) or the best of a track (track:\"Name\").")
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
      pages(opened).comparison(Comparison.of(before, after));
      return Exit.DONE;
    }
  }

  @Command(
      name = "rebuild",
      description = "Print the plan of a rebuild and the return to baseline.")
  static final class Rebuild extends OnNotebook {
    @Option(names = "--fork", description = "The fork is stripped and refilled.")
    private boolean fork;

    @Option(names = "--shock", description = "The shock goes through a licensed shop.")
    private boolean shock;

    @Option(
        names = "--changed",
        split = ",",
        description = "What goes in new: oil, seals, spring, valving.")
    private List<String> changed = List.of();

    @Override
    public Integer call() {
      OpenedNotebook opened = opened();
      if (!fork && !shock) {
        throw Refusal.use(opened.say("what-rebuild"));
      }
      Scope scope = fork && shock ? Scope.BOTH : fork ? Scope.FORK : Scope.SHOCK;
      java.util.Set<Renewed> renewed = new java.util.LinkedHashSet<>();
      changed.forEach(word -> renewed.add(renewed(opened, word)));
      Plan plan =
          Planner.plan(
              PlanFrom.beginning(opened.timeline(), scope, renewed)
                  .orElseThrow(() -> Refusal.use(opened.say("no-baseline"))),
              Advisor.SILENT);
      pages(opened).plan(plan);
      terminal().blank();
      boolean shortfall = pages(opened).back(plan.back());
      if (shortfall) {
        terminal().line(opened.say("found-shortfall"));
      }
      return shortfall ? Exit.PROBLEM : Exit.DONE;
    }

    private static Renewed renewed(OpenedNotebook opened, String word) {
      for (Renewed each : Renewed.values()) {
        if (each.name().equalsIgnoreCase(word.strip())) {
          return each;
        }
      }
      throw Refusal.use(opened.say("bad-renewed", word));
    }
  }

  @Command(name = "check", description = "Print what wants attention; exit 1 when something does.")
  static final class Check extends OnNotebook {
    @Override
    public Integer call() {
      OpenedNotebook opened = opened();
      return pages(opened).check() ? Exit.PROBLEM : Exit.DONE;
    }
  }
}
