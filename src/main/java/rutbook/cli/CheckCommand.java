package rutbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import rutbook.compare.BikeCheck;
import rutbook.compare.Finding;
import rutbook.json.CheckAnswer;

/** What of the bike wants attention. */
@Command(name = "check", description = "Print what wants attention; exit 1 when something does.")
final class CheckCommand extends OnNotebook {
  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    List<Finding> findings = BikeCheck.of(opened.timeline());
    int exit = findings.stream().anyMatch(Finding::isProblem) ? Exit.PROBLEM : Exit.DONE;
    return answer(opened, exit, CheckAnswer.of(findings), pages -> pages.check(findings));
  }
}
