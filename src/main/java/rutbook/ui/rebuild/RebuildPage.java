package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Outcome;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.NoBike;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.ui.fx.InView;
import rutbook.words.BenchWords;
import rutbook.words.PlanWords;

/** Rebuilds under way and done, what falls due, and the way back to the baseline. */
public final class RebuildPage extends Page {
  private final Button start;
  private final StackPane form = new StackPane();
  private final VBox body = new VBox(12);
  private boolean askMeter;

  public RebuildPage(Desk desk) {
    super(desk);
    setId("rebuild-page");
    setSpacing(12);
    start = Keys.mainKey("rebuild-new", desk.text("rebuild.new"), this::newThing);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head = new HBox(10, Keys.label(desk.text("rebuild.title"), "page-title"), gap, start);
    head.setAlignment(Pos.CENTER_LEFT);
    form.setManaged(false);
    ScrollPane scroll = Scrolling.of(new VBox(12, form, body));
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll);
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<Bike> bike = desk().bike();
    start.setVisible(bike.isPresent());
    body.getChildren().clear();
    if (bike.isEmpty()) {
      closeForm();
      body.getChildren().add(new NoBike(desk(), desk().text("rebuild.nobike")));
      return;
    }
    for (Entry.RebuildJob job : Jobs.open(notebook, bike.get().id())) {
      Jobs.plan(notebook, job, desk().advisor(job.bike()))
          .ifPresent(plan -> body.getChildren().add(open(job, plan)));
    }
    ServiceCard services = new ServiceCard(desk(), bike.get(), this::meter);
    WayBack back = new WayBack(desk(), bike.get());
    HBox columns = new HBox(12, half(services), half(back));
    columns.setFillHeight(false);
    body.getChildren().add(columns);
    List<Entry.RebuildJob> ended = Jobs.ended(notebook, bike.get().id());
    if (!ended.isEmpty()) {
      body.getChildren().add(past(ended));
    }
    if (askMeter) {
      askMeter = false;
      meter();
    }
  }

  private void toTheBike() {
    desk().go(new Place.Bike(Place.BikePart.SETTINGS));
  }

  private static Region half(Region card) {
    card.setMinWidth(0);
    card.setPrefWidth(100);
    card.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(card, Priority.ALWAYS);
    return card;
  }

  private Node open(Entry.RebuildJob job, Plan plan) {
    BenchWords words = new BenchWords(desk().phrases());
    Optional<Step> next = plan.next();
    String where =
        next.map(step -> words.progress(plan, step)).orElseGet(() -> words.through(plan));
    VBox text =
        new VBox(
            2,
            Keys.prose(where, "card-title"),
            Keys.prose(
                desk().words().day(job.day())
                    + " · "
                    + words.renewed(job.job())
                    + (job.outcome() == Outcome.AT_THE_SHOP
                        ? " · " + words.outcome(job.outcome())
                        : ""),
                "soft"));
    next.ifPresent(
        step ->
            text.getChildren()
                .add(
                    Keys.prose(
                        desk().text("rebuild.next", new PlanWords(desk().phrases()).title(step)))));
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    HBox row =
        new HBox(
            10,
            text,
            Keys.key(
                "rebuild-plan",
                desk().text("rebuild.plan"),
                () -> desk().go(new Place.Job(job.id()))),
            Keys.mainKey(
                "rebuild-bench",
                desk().text("rebuild.bench"),
                () -> desk().go(new Place.Bench(job.id(), Optional.empty()))));
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().addAll("card", "chosen");
    return row;
  }

  private Node past(List<Entry.RebuildJob> ended) {
    BenchWords words = new BenchWords(desk().phrases());
    VBox box = new VBox(6, Keys.label(desk().text("rebuild.past"), "card-title"));
    box.getStyleClass().add("card");
    for (Entry.RebuildJob job : ended) {
      Region gap = new Region();
      HBox.setHgrow(gap, Priority.ALWAYS);
      HBox row =
          new HBox(
              10,
              Keys.label(desk().words().day(job.day()) + " " + job.day().getYear(), "number"),
              Keys.label(words.job(job.job()), "strong"),
              Keys.label(words.renewed(job.job()), "soft"),
              Keys.label(words.outcome(job.outcome())),
              gap,
              Keys.key(
                  "rebuild-see-" + job.id(),
                  desk().text("rebuild.see"),
                  () -> desk().go(new Place.Job(job.id()))));
      row.setAlignment(Pos.CENTER_LEFT);
      box.getChildren().add(row);
    }
    return box;
  }

  @Override
  protected void newThing() {
    desk().bike().ifPresentOrElse(this::newJob, this::toTheBike);
  }

  private void newJob(Bike bike) {
    NewJob job = new NewJob(desk(), bike, this::closeForm);
    open(job);
    job.focusFirst();
  }

  /** With the form of a changed meter open. */
  public RebuildPage atMeter() {
    askMeter = true;
    return this;
  }

  private void meter() {
    desk().bike().ifPresent(bike -> open(new MeterForm(desk(), bike, this::closeForm)));
  }

  private void open(Node shown) {
    form.getChildren().setAll(shown);
    form.setManaged(true);
    InView.bring(shown);
  }

  private void closeForm() {
    form.getChildren().clear();
    form.setManaged(false);
    start.requestFocus();
  }
}
