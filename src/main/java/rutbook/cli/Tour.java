package rutbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.compare.BikeCheck;
import rutbook.compare.Comparison;
import rutbook.compare.Subject;
import rutbook.json.RulesJson;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.NextChange;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.words.Phrases;

/** The main job once through, on one notebook, for whoever has no window at hand. */
public final class Tour {
  private final OpenedNotebook opened;
  private final Terminal terminal;
  private final Pages pages;

  private Tour(OpenedNotebook opened, Terminal terminal) {
    this.opened = opened;
    this.terminal = terminal;
    this.pages = new Pages(opened, terminal);
  }

  /** Prints the tour of the notebook's first bike. */
  public static void print(Notebook notebook, Phrases phrases, Terminal terminal) {
    OpenedNotebook opened =
        OpenedNotebook.of(notebook, notebook.bikes().get(0).name(), phrases.in(notebook.display()));
    new Tour(opened, terminal).print();
  }

  private void print() {
    Timeline timeline = opened.timeline();
    terminal.line(opened.say("tour"));
    terminal.line(opened.say("tour.caution"));
    terminal.heading(opened.say("tour.bike", opened.bike().name()));
    pages.onTheBike();
    terminal.heading(opened.say("tour.last"));
    timeline.latest(Entry.Session.class).ifPresent(pages::session);
    terminal.heading(opened.say("tour.next"));
    new NextPages(opened, terminal)
        .brief(NextChange.of(opened.notebook(), opened.bike().id(), RulesJson.ofTheTrade()));
    terminal.heading(opened.say("tour.tracks"));
    List<Subject> best =
        opened.notebook().shelf().tracks().stream()
            .flatMap((Track track) -> Subject.best(timeline, track).stream())
            .limit(2)
            .toList();
    if (best.size() == 2) {
      Comparison sides = Comparison.of(best.get(0), best.get(1));
      pages.comparison(sides, opened.effects(opened.effects(), sides));
    }
    terminal.heading(opened.say("tour.back"));
    Optional<OilId> oil = opened.notebook().shelf().oils().stream().map(Oil::id).findFirst();
    PlanFrom.beginning(timeline, Scope.FORK, Set.of(Renewed.OIL), oil)
        .map(from -> Planner.plan(from, opened.advisor()))
        .ifPresent(
            plan -> {
              pages.back(plan.back());
              pages.beforeTheRide(plan);
            });
    terminal.heading(opened.say("tour.check"));
    pages.check(BikeCheck.of(timeline));
    terminal.heading(opened.say("tour.window"));
  }
}
