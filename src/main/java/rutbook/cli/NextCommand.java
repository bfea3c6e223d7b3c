package rutbook.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rutbook.compare.Choice;
import rutbook.json.NextAnswer;
import rutbook.json.RulesJson;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.Past;

/** The one setting to change next, from the terminal. */
@Command(
    name = "next",
    description =
        "Print the one setting to change next, why, how sure, and how to test it; or that nothing"
            + " has to be changed; exit 1 when a fault or a crash comes first.")
final class NextCommand extends RutbookCommand.OnNotebook {
  @Option(
      names = "--at",
      paramLabel = "REF",
      defaultValue = "now",
      description =
          "As it was after a session (2026-05-03) or a moto of it (2026-05-03#2); otherwise now.")
  private String at;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    NextChange next = NextChange.of(asOf(opened), opened.bike().id(), RulesJson.ofTheTrade());
    int exit = next.kind() == NextChange.Kind.STOP ? Exit.PROBLEM : Exit.DONE;
    return answer(
        opened, exit, NextAnswer.of(next), pages -> new NextPages(opened, terminal()).next(next));
  }

  private Notebook asOf(OpenedNotebook opened) {
    Choice choice = new References(opened).subject(at).choice();
    if (choice instanceof Choice.OfSession it) {
      return upTo(opened, it.session(), it.session().motos().size());
    } else if (choice instanceof Choice.OfMoto it) {
      return upTo(opened, it.session(), it.moto() + 1);
    } else if (choice instanceof Choice.BestOf it) {
      return upTo(opened, it.session(), it.moto() + 1);
    } else if (choice instanceof Choice.OfBaseline) {
      throw Refusal.use(opened.say("next.no-ride", at));
    }
    return opened.notebook();
  }

  private static Notebook upTo(OpenedNotebook opened, Entry.Session session, int motos) {
    return Past.upTo(opened.notebook(), session, motos);
  }
}
