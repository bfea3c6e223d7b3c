package rutbook.ui.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.rebuild.Place;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.controls.Keys;
import rutbook.words.BenchWords;

/** A page about one rebuild: it follows the job, and leaves when there is none any more. */
abstract class OneJob extends Page {
  private final EntryId id;

  OneJob(Desk desk, EntryId id) {
    super(desk);
    this.id = id;
  }

  final EntryId id() {
    return id;
  }

  @Override
  protected final void show(Notebook notebook) {
    Optional<Entry.RebuildJob> job = Jobs.job(notebook, id);
    Optional<Plan> plan =
        job.flatMap(each -> Jobs.plan(notebook, each, desk().advisor(each.bike())));
    if (plan.isEmpty()) {
      desk().go(new rutbook.ui.Place.Rebuild());
    } else {
      show(job.get(), plan.get());
    }
  }

  /** Shows the job as it stands now. */
  abstract void show(Entry.RebuildJob job, Plan plan);

  final BenchWords bench() {
    return new BenchWords(desk().phrases());
  }

  final void toThePlan() {
    desk().go(new rutbook.ui.Place.Job(id));
  }

  /** A row for every step, in working order, under the place where it is done. */
  final void list(VBox steps, Plan plan, Function<Step, Node> row) {
    List<Node> rows = new ArrayList<>();
    Optional<Place> place = Optional.empty();
    for (Step step : plan.steps()) {
      if (!place.equals(Optional.of(step.place()))) {
        place = Optional.of(step.place());
        Label head = Keys.label(bench().place(step.place()), "group-title");
        head.setPadding(new Insets(8, 0, 2, 0));
        rows.add(head);
      }
      rows.add(row.apply(step));
    }
    steps.getChildren().setAll(rows);
  }
}
