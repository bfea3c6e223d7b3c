package rutbook.cli;

import picocli.CommandLine.Command;
import rutbook.json.LogAnswer;
import rutbook.json.Reply;
import rutbook.notebook.Entry;

/** What is on the bike, and every session. */
@Command(name = "log", description = "Print what is on the bike and every session.")
final class LogCommand extends OnNotebook {
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
