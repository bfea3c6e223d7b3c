package rutbook.cli;

import java.time.ZoneOffset;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rutbook.json.RebuildAnswer;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Shelf;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.ShopSheet;
import rutbook.report.Card;
import rutbook.report.Cards;

/** The plan of a rebuild and the return to baseline, printed or left as a sheet of paper. */
@Command(name = "rebuild", description = "Print the plan of a rebuild and the return to baseline.")
final class RebuildCommand extends OnNotebook {
  @Option(names = "--fork", description = "The fork is stripped and refilled.")
  private boolean fork;

  @Option(names = "--shock", description = "The shock goes through a licensed shop.")
  private boolean shock;

  @Option(
      names = "--changed",
      split = ",",
      description = "What goes in new: oil, seals, spring, valving.")
  private List<String> changed = List.of();

  @Option(
      names = "--to",
      defaultValue = "",
      paramLabel = "NAME",
      description =
          "Leave a work sheet with boxes to write in, as .html, .pdf or .txt; for the shock"
              + " alone, the sheet that goes to the shop with it.")
  private String to;

  @Mixin private CardFile file;

  @Option(names = "--oil", defaultValue = "", description = "Which oil goes in, by its name.")
  private String oil;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    if (!fork && !shock) {
      throw Refusal.use(opened.say("what-rebuild"));
    }
    Scope scope = fork && shock ? Scope.BOTH : fork ? Scope.FORK : Scope.SHOCK;
    Set<Renewed> renewed = new LinkedHashSet<>();
    changed.forEach(word -> renewed.add(renewed(opened, word)));
    PlanFrom from =
        PlanFrom.beginning(opened.timeline(), scope, renewed, opened.oil(oil))
            .map(each -> each.pouring(each.job().oil().flatMap(opened.notebook().shelf()::oil)))
            .orElseThrow(() -> Refusal.use(opened.say("no-baseline")));
    Plan plan = Planner.plan(from, opened.advisor());
    if (!to.isEmpty()) {
      outbox().put(to, sheet(opened, from, plan), file.mayReplace());
    }
    int exit = plan.back().shortfalls().isEmpty() ? Exit.DONE : Exit.PROBLEM;
    return answer(opened, exit, RebuildAnswer.of(plan), pages -> lines(opened, plan, pages));
  }

  /** The shop sheet of a shock alone, the work sheet of everything else. */
  private byte[] sheet(OpenedNotebook opened, PlanFrom from, Plan plan) {
    Shelf shelf = opened.notebook().shelf();
    Cards cards = new Cards(shelf, opened.timeline(), opened.phrases());
    Card card =
        fork
            ? cards.workSheet(plan, ZoneOffset.UTC) // nothing is entered yet: no time is said
            : cards.shopSheet(ShopSheet.of(shelf, opened.timeline(), from), from.sheet());
    return file.bytes(opened, card, CardFile.form(opened, to));
  }

  private void lines(OpenedNotebook opened, Plan plan, Pages pages) {
    pages.plan(plan);
    terminal().blank();
    pages.back(plan.back());
    if (!plan.back().shortfalls().isEmpty()) {
      terminal().line(opened.say("found-shortfall"));
    }
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
