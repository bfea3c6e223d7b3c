package rutbook.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rutbook.compare.FullComparison;
import rutbook.compare.Subject;
import rutbook.json.CompareAnswer;
import rutbook.reasoning.MoveEffects;

/** What differs between two setups, and of two tracks all their sessions. */
@Command(
    name = "compare",
    description =
        "Print what differs. A reference is now, baseline, a day (2026-05-03), a moto of it"
            + " (2026-05-03#2), the best of a track (track:\"Name\"), the start there"
            + " (start:\"Name\"), advice (advice:2026-05-03) or what was handed over"
            + " (handed:2026-05-03). Of two tracks all sessions are compared too.")
final class CompareCommand extends OnNotebook {
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
