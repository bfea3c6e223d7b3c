package rutbook.ui;

import static rutbook.ui.Shortcuts.alone;
import static rutbook.ui.Shortcuts.control;
import static rutbook.ui.Shortcuts.shifted;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.edit.History;
import rutbook.ui.controls.Hint;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.Dropped;

/** Rail, strip and one page; knows where the window is and takes it elsewhere. */
final class Shell extends StackPane {
  private final WindowServices services;
  private final Window window;
  private final Desk desk;
  private final Rail rail;
  private final Strip strip;
  private final BorderPane frame = new BorderPane();
  private final VBox right = new VBox(10);
  private final Overlay overlay;
  private final FileMenu files;
  private final Notices notices;
  private final Shortcuts shortcuts;
  private final Button help;
  private final HBox top;
  private Page page;
  private Place place = new Place.Log();

  /** The Log stays as it was left: its search, its place. */
  private Optional<Page> log = Optional.empty();

  Shell(WindowServices services, Window window) {
    this.services = services;
    this.window = window;
    this.desk = new Desk(services, this::go);
    this.overlay = new Overlay(desk);
    this.files = new FileMenu(desk, services.files(), window, overlay, this::opened);
    this.rail = new Rail(desk, this::go, files);
    this.strip = new Strip(desk);
    this.notices = new Notices(desk, services.files(), files);
    this.shortcuts = shortcuts();
    setId("shell");
    addEventFilter(KeyEvent.KEY_PRESSED, Shell::enterTouches);
    addEventFilter(KeyEvent.KEY_PRESSED, Shell::tabLeavesAText);
    frame.setLeft(rail);
    right.getStyleClass().add("desk");
    help = Keys.key("help", "?", () -> go(new Place.Help()));
    help.getStyleClass().add("help-key");
    help.setMaxHeight(Double.MAX_VALUE);
    help.setAccessibleText(desk.text("shortcuts.help"));
    Hint.on(help, help::getAccessibleText);
    HBox.setHgrow(strip, Priority.ALWAYS);
    top = new HBox(8, strip, help);
    top.setMinHeight(USE_PREF_SIZE);
    right.getChildren().addAll(top, notices);
    frame.setCenter(right);
    getChildren().addAll(frame, overlay);
    Dropped.files(this, files::open);
    services.editor().listen(this::show);
    services.saveLight().listen(this::show);
    show(services.saveLight().now());
    show(services.editor().history());
    go(new Place.Log());
  }

  private void show(SaveLight.State state) {
    rail.show(state);
    notices.show(state);
  }

  private void show(History history) {
    strip.show(history.present());
    rail.show(history);
  }

  void go(Place to) {
    Optional<Page> next = to instanceof Place.Log && log.isPresent() ? log : Pages.page(desk, to);
    if (next.isEmpty()) {
      overlay.show(
          to instanceof Place.Help
              ? new HelpSheet(desk, Pages.helpName(place))
              : new ShortcutSheet(desk, shortcuts));
      return;
    }
    place = to;
    page = next.get();
    if (place instanceof Place.Log) {
      log = Optional.of(page);
    }
    boolean alone = page.fillsWindow();
    frame.setLeft(alone ? null : rail);
    right.getStyleClass().remove("alone");
    if (alone) {
      right.getStyleClass().add("alone");
    }
    top.setVisible(!alone);
    top.setManaged(!alone);
    VBox.setVgrow(page, Priority.ALWAYS);
    page.setMinHeight(0);
    right.getChildren().setAll(top, notices, page);
    rail.show(place);
    page.requestFocus();
  }

  private void opened() {
    window.title();
    notices.redraw();
    log = Optional.empty();
    go(new Place.Log());
  }

  /** Tells what happened before there was a window to tell it; what was asked for comes last. */
  void tellOfTheStart() {
    List<NotebookFiles.Answer> answers = new ArrayList<>(services.files().atStart());
    Collections.reverse(answers);
    answers.forEach(files::told);
  }

  void open(Path path) {
    files.open(path);
  }

  void tell(String sentence) {
    overlay.tell(desk.text("trouble.title"), sentence, List.of());
  }

  /** The toolkit's keys know Space alone; whoever presses Enter on one means the same. */
  private static void enterTouches(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER
        && event.getTarget() instanceof ButtonBase key
        && !key.isDisabled()) {
      key.fire();
      event.consume();
    }
  }

  /** A note is words: Tab goes on from it, as from everything else, and types nothing. */
  private static void tabLeavesAText(KeyEvent event) {
    if (event.getCode() == KeyCode.TAB
        && event.getTarget() instanceof TextArea text
        && !event.isControlDown()) {
      event.consume();
      boolean back = event.isShiftDown();
      text.fireEvent(
          new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, back, true, false, false));
    }
  }

  /** Asks before anything is lost. */
  void close(Runnable end) {
    services
        .files()
        .beforeClosing(
            trouble -> {
              if (trouble.isEmpty()) {
                end.run();
              } else {
                overlay.ask(
                    desk.text("close.title"),
                    desk.text("close.question", trouble.get()),
                    desk.text("close.anyway"),
                    end,
                    desk.text("close.copy"),
                    files::copy);
              }
            });
  }

  void keys(Scene scene) {
    shortcuts.in(scene);
  }

  private Shortcuts shortcuts() {
    Shortcuts keys =
        new Shortcuts()
            .with("shortcuts.undo", rail::undo, control(KeyCode.Z))
            .with("shortcuts.redo", rail::redo, control(KeyCode.Y), shifted(KeyCode.Z))
            .with("shortcuts.new", () -> page.newThing(), control(KeyCode.N))
            .with("shortcuts.search", () -> page.search(), control(KeyCode.F))
            .with("shortcuts.picture", () -> page.picture(), shifted(KeyCode.P))
            .with("shortcuts.open", files::open, control(KeyCode.O))
            .with("shortcuts.copy", files::copy, shifted(KeyCode.S))
            .with("shortcuts.back", () -> go(new Place.Log()), control(KeyCode.L))
            .with("shortcuts.larger", this::larger, control(KeyCode.PLUS), control(KeyCode.EQUALS))
            .with("shortcuts.smaller", this::smaller, control(KeyCode.MINUS))
            .with("shortcuts.theme", () -> window.use(window.theme().next()), shifted(KeyCode.T))
            .with("shortcuts.help", () -> go(new Place.Help()), alone(KeyCode.F1))
            .with("shortcuts.sheet", () -> go(new Place.Shortcuts()), control(KeyCode.F1));
    for (int i = 0; i < Pages.RAIL.size(); i++) {
      Pages.OnRail each = Pages.RAIL.get(i);
      KeyCode digit = KeyCode.getKeyCode(Integer.toString(i + 1));
      keys.with("rail." + each.name(), () -> go(each.place()), control(digit));
    }
    return keys;
  }

  private void larger() {
    window.use(window.textSize().larger());
  }

  private void smaller() {
    window.use(window.textSize().smaller());
  }

  /** Text is so large now: everything measured in it is laid out again. */
  void em(double pixels) {
    desk.em(pixels);
    strip.requestLayout();
    page.requestLayout();
  }

  Node page() {
    return page;
  }
}
