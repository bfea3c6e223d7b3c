package rutbook.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rutbook.compare.Choice;
import rutbook.json.NextAnswer;
import rutbook.json.RulesJson;
import rutbook.json.StartAnswer;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Track;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.Past;
import rutbook.reasoning.StartAtTrack;

/** The one setting to change next, from the terminal. */
@Command(
    name = "next",
    description =
        "Print the one setting to change next, why, how sure, and how to test it; or that nothing"
            + " has to be changed; exit 1 when a fault or a crash comes first.")
final class NextCommand extends OnNotebook {
  @Option(
      names = "--at",
      paramLabel = "REF",
      defaultValue = "now",
      description =
          "As it was after a session (2026-05-03) or a moto of it (2026-05-03#2); otherwise now.")
  private String at;

  @Option(
      names = "--start",
      paramLabel = "TRACK",
      defaultValue = "",
      description = "What to start with at a track instead, setting by setting.")
  private String start;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    if (!start.isEmpty()) {
      return start(opened);
    }
    NextChange next = NextChange.of(asOf(opened), opened.bike().id(), RulesJson.ofTheTrade());
    int exit = next.kind() == NextChange.Kind.STOP ? Exit.PROBLEM : Exit.DONE;
    return answer(
        opened, exit, NextAnswer.of(next), pages -> new NextPages(opened, terminal()).next(next));
  }

  private Integer start(OpenedNotebook opened) {
    Track track = new References(opened).track(start);
    StartAtTrack found =
        StartAtTrack.of(
            asOf(opened),
            opened.bike().id(),
            track,
            Conditions.NOT_NOTED,
            RulesJson.ofTheTrade().with(opened.notebook().ruleChanges()));
    return answer(
        opened,
        Exit.DONE,
        StartAnswer.of(track, found),
        pages -> new NextPages(opened, terminal()).start(track, found));
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
