package rutbook.ui.rebuild;

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
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.NotebookException;
import rutbook.notebook.StepId;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.words.BenchWords;
import rutbook.words.PlanWords;

/** The bench: one step of a rebuild fills the window, and large keys lead on and back. */
public final class BenchPage extends OneJob {
  private static final double WIDTH = 1024;

  private static final double HEIGHT = 640;

  private static final double MOST_TIMES = 2.2;

  /** What the main key says goes on to another line before the window grows. */
  private static final double LEAST_MAIN = 220;

  private final Label progress = Keys.label("", "bench-line", "soft", "condensed");
  private final HBox middle = new HBox(28);
  private final ScrollPane scroll = Scrolling.of(middle);
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
    super(desk, id);
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
            Keys.key("bench-plan", desk.text("bench.plan"), this::toThePlan));
    head.setAlignment(Pos.CENTER_LEFT);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll, skipping, keys);
    widthProperty().addListener((width, before, now) -> size());
    heightProperty().addListener((height, before, now) -> size());
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  @Override
  public boolean fillsWindow() {
    return true;
  }

  /** A larger window makes larger type: it is read from two metres. */
  private void size() {
    double room = Math.min(getWidth() / WIDTH, getHeight() / HEIGHT);
    double times = Math.max(1, Math.min(MOST_TIMES, room));
    setStyle(String.format(java.util.Locale.ROOT, "-fx-font-size: %.2fem", times));
  }

  private void key(KeyEvent event) {
    boolean typing =
        event.getTarget() instanceof TextField || event.getTarget() instanceof TextArea;
    switch (event.getCode()) {
      case ESCAPE -> toThePlan();
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
  void show(Entry.RebuildJob job, Plan now) {
    plan = now;
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
    BenchWords words = bench();
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
      right.getChildren().addAll(BenchAside.of(desk(), id(), plan, step));
    }
    BenchStep left = new BenchStep(desk(), plan, step);
    double read = entry.isCounting() ? 0.46 : step.kind() == StepKind.CONFIRM ? 0.38 : 0.58;
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
    main.setMinWidth(LEAST_MAIN);
    main.setPrefWidth(LEAST_MAIN);
    HBox.setHgrow(main, Priority.ALWAYS);
    Button back = Keys.key("bench-back", desk().text("bench.back"), () -> move(-1));
    back.setDisable(plan.steps().indexOf(step) == 0);
    Button cannot = Keys.key("bench-cannot", desk().text("bench.cannot"), this::askWhy);
    cannot.setDisable(!at().canSkip());
    keys.getChildren().setAll(back, cannot);
    if (at().canBeginAgain()) {
      keys.getChildren()
          .add(Keys.key("bench-again", desk().text("bench.again"), () -> beginAgain(step)));
    }
    if (at().countDiffers()) {
      keys.getChildren()
          .add(
              Keys.key(
                  "bench-trust-notebook",
                  desk().text("bench.trust.notebook"),
                  () -> take(at().trustNotebook(desk().now()), () -> move(1))));
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

  private AtStep at() {
    return new AtStep(id(), plan, step());
  }

  /** The main key says what a touch does. */
  private void nameMain() {
    Optional<Entered> now = entry.entered();
    AtStep.Main does = at().main(now);
    main.setDisable(does == AtStep.Main.NOTHING || does == AtStep.Main.ANOTHER);
    main.setText(
        switch (does) {
          case FIRST ->
              desk().text("bench.first", new PlanWords(desk().phrases()).title(at().missing()));
          case NOTHING -> desk().text("bench.enter");
          case ANOTHER -> desk().text("bench.another");
          case NEXT -> desk().text("bench.next");
          case LEAVE_IT -> desk().text("bench.leave.it");
          case TRUST_COUNT -> desk().text("bench.trust.count");
          case ENTER ->
              now.flatMap(Ask::reading)
                  .map(reading -> bench().reading(step(), reading))
                  .map(said -> desk().text("bench.next.value", said))
                  .orElseGet(() -> desk().text("bench.done"));
        });
  }

  private void next() {
    Optional<Entered> now = entry.entered();
    switch (at().main(now)) {
      case FIRST -> go(at().missing().id());
      case NEXT, LEAVE_IT, TRUST_COUNT -> move(1);
      case ENTER ->
          take(
              at().enter(now, desk().now()),
              () -> {
                if (plan.findings(step().id()).isEmpty()) {
                  move(1);
                }
              });
      case NOTHING, ANOTHER -> {}
    }
  }

  /** Makes an edit and goes on; what is refused is said, and nothing is lost. */
  private void take(Optional<Edit> edit, Runnable then) {
    Optional<NotebookException> refused = edit.flatMap(desk()::make);
    if (refused.isPresent()) {
      Label said = Keys.prose(desk().settingWords().refusal(refused.get()), "error");
      said.setId("bench-refused");
      skipping.getChildren().setAll(said);
    } else {
      then.run();
    }
  }

  private void move(int by) {
    Optional<Step> to = at().away(by);
    if (to.isPresent()) {
      go(to.get().id());
    } else if (by > 0) {
      toThePlan();
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
    try {
      take(Optional.of(at().skip(why, desk().now())), () -> move(1));
    } catch (NotebookException refused) {
      skipping.getChildren().add(Keys.prose(desk().settingWords().refusal(refused), "error"));
    }
  }

  private void beginAgain(Step step) {
    take(at().beginAgain(), () -> go(step.otherwise().orElseThrow()));
  }
}
