package rutbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rutbook.json.FindAnswer;
import rutbook.search.Hit;
import rutbook.search.Indexed;
import rutbook.search.Query;
import rutbook.search.Search;

/** Finds what was ridden and written in all notebooks of a folder. */
@Command(
    name = "find",
    mixinStandardHelpOptions = true,
    description =
        "Find sessions and other entries in all notebooks of a folder: by rider, bike, track, day"
            + " (2026-05-03), month (2026-05) and words of the notes. Every word must be there; what"
            + " stands in double quotes, as it stands. Exit 3 when a notebook cannot be read.")
final class FindCommand implements Callable<Integer> {
  @ParentCommand private RutbookCommand parent;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "The folder with the notebooks.")
  private String folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "TEXT",
      description = "What is looked for.")
  private List<String> text;

  @Option(
      names = "--most",
      defaultValue = "50",
      paramLabel = "COUNT",
      description = "So many are shown, the newest first; the rest is counted.")
  private int most;

  @Option(names = "--json", description = "Answer with one JSON object on standard output.")
  private boolean json;

  private final List<String> unread = new ArrayList<>();

  @Override
  public Integer call() {
    List<Indexed> shelf = shelf();
    Search search = Search.of(shelf, Query.of(String.join(" ", text)), Math.max(0, most));
    int exit = unread.isEmpty() ? Exit.DONE : Exit.NO_FILE;
    if (json) {
      FindAnswer answer = new FindAnswer(search, shelf.size(), unread);
      parent.terminal().json(answer.reply().text(exit, Optional.empty(), Optional.empty()));
    } else {
      lines(search, shelf.size());
    }
    return exit;
  }

  /** The notebooks that can be read; of the others why they cannot. */
  private List<Indexed> shelf() {
    List<Indexed> shelf = new ArrayList<>();
    for (RutbookCommand.Named notebook : parent.notebooksIn(folder)) {
      try {
        shelf.add(Indexed.of(notebook.name(), notebook.read().get()));
      } catch (Refusal refusal) {
        unread.add(refusal.getMessage());
      }
    }
    return shelf;
  }

  private void lines(Search search, int searched) {
    for (Hit hit : search.hits()) {
      parent.terminal().line(line(hit));
      hit.written().forEach(each -> parent.terminal().line(4, each));
    }
    parent
        .terminal()
        .line(parent.say("find.count", search.found(), search.hits().size(), searched));
    unread.forEach(why -> parent.terminal().line(parent.say("find.unread", why)));
  }

  private String line(Hit hit) {
    return hit.track().isEmpty()
        ? parent.say("find.entry", hit.day(), hit.bike(), hit.notebook())
        : parent.say(
            "find.session", hit.day(), hit.track(), hit.rider(), hit.bike(), hit.notebook());
  }
}
