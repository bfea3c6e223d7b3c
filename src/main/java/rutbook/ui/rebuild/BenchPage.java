package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.edit.Edit;
import rutbook.edit.RebuildEdit;
import rutbook.notebook.Entered;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Finding;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.words.BenchWords;
import rutbook.words.PlanWords;

/** The bench: one step of a rebuild fills the window, and large keys lead on and back. */
public final class BenchPage extends Page {
  private static final double WIDTH = 1100;

  private final EntryId id;
  private final Label progress = Keys.label("", "bench-line", "soft");
  private final HBox middle = new HBox(28);
  private final ScrollPane scroll = new ScrollPane(middle);
  private final HBox keys = new HBox(12);
  private final VBox skipping = new VBox();
  private Optional<StepId> current;
  private Plan plan;
  private BenchEntry entry;
  private Optional<FillPanel> fill = Optional.empty();
  private Button main;

  /**
   * @param at the step to begin at; without one, the first that is open
   */
  public BenchPage(Desk desk, EntryId id, Optional<StepId> at) {
    super(desk);
    this.id = id;
    this.current = at;
    setId("bench-page");
    setSpacing(12);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    progress.setId("bench-progress");
    HBox head =
        new HBox(
            12,
            progress,
            gap,
            Keys.key("bench-help", desk.text("shortcuts.help"), () -> desk.go(new Place.Help())),
            Keys.key("bench-plan", desk.text("bench.plan"), this::leave));
    head.setAlignment(Pos.CENTER_LEFT);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(0);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll, skipping, keys);
    widthProperty().addListener((width, before, now) -> size(now.doubleValue()));
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  @Override
  public boolean fillsWindow() {
    return true;
  }

  /** A larger window makes larger type: it is read from two metres. */
  private void size(double width) {
    double times = Math.max(1, Math.min(1.7, width / WIDTH));
    setStyle(String.format(java.util.Locale.ROOT, "-fx-font-size: %.2fem", times));
  }

  private void leave() {
    desk().go(new Place.Job(id));
  }

  private void key(KeyEvent event) {
    boolean typing =
        event.getTarget() instanceof TextField || event.getTarget() instanceof TextArea;
    switch (event.getCode()) {
      case ESCAPE -> leave();
      case PAGE_UP -> move(-1);
      case PAGE_DOWN -> move(1);
      case ENTER -> {
        if (typing && !main.isDisabled()) {
          main.fire();
        }
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<Plan> now =
        Jobs.job(notebook, id).flatMap(job -> Jobs.plan(notebook, job, desk().advisor(job.bike())));
    if (now.isEmpty()) {
      desk().go(new Place.Rebuild());
      return;
    }
    plan = now.get();
    if (current.flatMap(plan::step).isEmpty()) {
      current = plan.next().or(() -> Optional.of(last())).map(Step::id);
    }
    redraw();
  }

  private Step last() {
    return plan.steps().get(plan.steps().size() - 1);
  }

  private Step step() {
    return current.flatMap(plan::step).orElseThrow();
  }

  private void redraw() {
    Step step = step();
    BenchWords words = new BenchWords(desk().phrases());
    progress.setText(words.place(step.place()) + "  ·  " + words.progress(plan, step));
    entry = new BenchEntry(desk(), plan, step, this::typed);
    VBox right = new VBox(14, entry);
    fill =
        FillPanel.serves(plan, step)
            ? Optional.of(new FillPanel(desk(), plan, step))
            : Optional.empty();
    fill.ifPresent(right.getChildren()::add);
    plan.done(step.id())
        .ifPresent(
            done ->
                right
                    .getChildren()
                    .add(0, Keys.prose(words.entered(step, done, desk().zone()), "soft")));
    step.kind()
        .waitMinutes()
        .ifPresent(minutes -> right.getChildren().add(new BenchTimer(desk(), minutes)));
    if (fill.isEmpty()) {
      right.getChildren().addAll(BenchAside.of(desk(), id, plan, step));
    }
    BenchStep left = new BenchStep(desk(), plan, step);
    double read = entry.isCounting() ? 0.46 : 0.58;
    share(left, read);
    share(right, 1 - read);
    middle.getChildren().setAll(left, right);
    scroll.setVvalue(0);
    skipping.getChildren().clear();
    keys(step);
    Node first = entry.isCounting() ? entry : entry.firstField().orElse(main);
    rutbook.ui.fx.Background.afterwards(first::requestFocus);
  }

  private void share(Region column, double part) {
    column.setMinWidth(0);
    column.prefWidthProperty().bind(scroll.widthProperty().subtract(44).multiply(part));
    column.maxWidthProperty().bind(column.prefWidthProperty());
  }

  private void keys(Step step) {
    main = Keys.mainKey("bench-next", "", this::next);
    main.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(main, Priority.ALWAYS);
    Button back = Keys.key("bench-back", desk().text("bench.back"), () -> move(-1));
    back.setDisable(plan.steps().indexOf(step) == 0);
    Button cannot = Keys.key("bench-cannot", desk().text("bench.cannot"), this::askWhy);
    keys.getChildren().setAll(back, cannot);
    if (step.otherwise().isPresent() && plan.state(step) != Plan.State.WAITING) {
      keys.getChildren()
          .add(Keys.key("bench-again", desk().text("bench.again"), () -> beginAgain(step)));
    }
    if (differs(step)) {
      keys.getChildren()
          .add(
              Keys.key(
                  "bench-trust-notebook",
                  desk().text("bench.trust.notebook"),
                  () -> trustNotebook(step)));
    }
    keys.getChildren().add(main);
    keys.getChildren().forEach(key -> key.getStyleClass().add("bench"));
    typed();
  }

  /** What would be entered is another: the key says so, and what it does is shown. */
  private void typed() {
    nameMain();
    fill.ifPresent(panel -> panel.show(entry.entered()));
  }

  /** The main key says what a touch enters. */
  private void nameMain() {
    Step step = step();
    if (plan.state(step) == Plan.State.WAITING) {
      main.setText(desk().text("bench.first", new PlanWords(desk().phrases()).title(missing())));
      main.setDisable(false);
      return;
    }
    Optional<Entered> now = entry.entered();
    main.setDisable(now.isEmpty());
    BenchWords words = new BenchWords(desk().phrases());
    boolean found = !plan.findings(step.id()).isEmpty() && isAsEntered(step, now);
    if (found && plan.state(step) == Plan.State.DONE) {
      main.setText(desk().text(differs(step) ? "bench.trust.count" : "bench.leave.it"));
    } else if (isAsEntered(step, now)) {
      main.setText(desk().text("bench.next"));
    } else {
      main.setText(
          now.flatMap(Ask::reading)
              .map(reading -> desk().text("bench.next.value", words.reading(step, reading)))
              .orElseGet(() -> desk().text(entry.isTicked() ? "bench.done" : "bench.enter")));
    }
  }

  /** Whether what was counted is not what the notebook says: one of the two is to be trusted. */
  private boolean differs(Step step) {
    return plan.findings(step.id()).stream().anyMatch(Finding.CountDiffers.class::isInstance);
  }

  private boolean isAsEntered(Step step, Optional<Entered> now) {
    return now.isPresent() && plan.done(step.id()).map(StepDone::entered).equals(now);
  }

  private Step missing() {
    return plan.steps().stream()
        .filter(each -> step().after().contains(each.id()))
        .filter(each -> plan.done(each.id()).isEmpty() || plan.state(each) == Plan.State.AGAIN)
        .findFirst()
        .orElseGet(() -> plan.next().orElse(step()));
  }

  private void next() {
    Step step = step();
    if (plan.state(step) == Plan.State.WAITING) {
      go(missing().id());
      return;
    }
    Optional<Entered> now = entry.entered();
    if (isAsEntered(step, now) && plan.state(step) != Plan.State.AGAIN) {
      move(1);
      return;
    }
    now.ifPresent(
        entered -> {
          desk().make(new RebuildEdit.Enter(id, new StepDone(step.id(), desk().now(), entered)));
          if (plan.findings(step.id()).isEmpty()) {
            move(1);
          }
        });
  }

  private void move(int by) {
    int place = plan.steps().indexOf(step()) + by;
    if (place >= plan.steps().size()) {
      leave();
    } else if (place >= 0) {
      go(plan.steps().get(place).id());
    }
  }

  private void go(StepId to) {
    current = Optional.of(to);
    redraw();
  }

  private void askWhy() {
    skipping
        .getChildren()
        .setAll(new SkipReason(desk(), this::skip, () -> skipping.getChildren().clear()));
  }

  private void skip(String why) {
    StepId step = step().id();
    desk()
        .make(
            new RebuildEdit.Enter(id, new StepDone(step, desk().now(), new Entered.Skipped(why))));
    move(1);
  }

  /** What did not come out is done again, with all that rested on it. */
  private void beginAgain(Step step) {
    List<Edit> reopen =
        plan.reopenedBy(step.id()).stream()
            .filter(each -> plan.done(each).isPresent())
            .map(each -> (Edit) new RebuildEdit.Reopen(id, each))
            .toList();
    StepId from = step.otherwise().orElseThrow();
    if (!reopen.isEmpty()) {
      desk().make(new Edit.Together(reopen));
    }
    go(from);
  }

  private void trustNotebook(Step step) {
    step.goal()
        .noted()
        .ifPresent(
            noted -> {
              desk()
                  .make(
                      new RebuildEdit.Enter(
                          id, new StepDone(step.id(), desk().now(), new Entered.Counted(noted))));
              move(1);
            });
  }
}
