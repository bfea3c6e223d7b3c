package rutbook.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rutbook.json.Reply;
import rutbook.notebook.Notebook;
import rutbook.units.Display;

/** What every command on a notebook has. */
@Command(mixinStandardHelpOptions = true)
abstract class OnNotebook implements Callable<Integer> {
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
      names = RutbookCommand.JSON,
      description =
          "Answer with one JSON object on standard output, also when it is a refusal: amounts"
              + " have a value and a unit, as written in the notebook or as --units says.")
  private boolean json;

  OpenedNotebook opened() {
    Notebook notebook = parent.read(file);
    return OpenedNotebook.of(notebook, bike, parent.phrases().in(display(notebook)));
  }

  private Display display(Notebook notebook) {
    return switch (units) {
      case "" -> notebook.display();
      case "metric" -> Display.METRIC;
      case "us" -> Display.US;
      default -> throw Refusal.use(parent.say("bad-units", units));
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
      lines.accept(new Pages(opened, parent.terminal()));
    }
    return exit;
  }

  Terminal terminal() {
    return parent.terminal();
  }

  Outbox outbox() {
    return parent.outbox();
  }

  Pen pen() {
    return parent.pen();
  }

  /** The notebook's name as it was typed. */
  String file() {
    return file;
  }
}
