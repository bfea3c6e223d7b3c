package rutbook.ui;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.edit.History;

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
  private Page page;

  Shell(WindowServices services, Window window) {
    this.services = services;
    this.window = window;
    this.desk = new Desk(services, this::go);
    this.overlay = new Overlay(desk);
    this.files = new FileMenu(desk, services.files(), window, overlay, this::opened);
    this.rail = new Rail(desk, this::go, files);
    this.strip = new Strip(desk);
    setId("shell");
    frame.setLeft(rail);
    right.getStyleClass().add("desk");
    right.getChildren().add(strip);
    frame.setCenter(right);
    getChildren().addAll(frame, overlay);
    services.editor().listen(this::show);
    services.saveLight().listen(rail::show);
    rail.show(services.saveLight().now());
    show(services.editor().history());
    go(new Place.Log());
  }

  private void show(History history) {
    strip.show(history.present());
    rail.show(history);
  }

  void go(Place place) {
    Optional<Page> next = Pages.page(desk, place);
    if (next.isEmpty()) {
      overlay.show(new ShortcutSheet(desk));
      return;
    }
    page = next.get();
    boolean alone = page.fillsWindow();
    frame.setLeft(alone ? null : rail);
    right.getStyleClass().remove("alone");
    if (alone) {
      right.getStyleClass().add("alone");
    }
    strip.setVisible(!alone);
    strip.setManaged(!alone);
    VBox.setVgrow(page, Priority.ALWAYS);
    page.setMinHeight(0);
    if (right.getChildren().size() > 1) {
      right.getChildren().set(1, page);
    } else {
      right.getChildren().add(page);
    }
    rail.show(place);
    page.requestFocus();
  }

  private void opened() {
    window.title();
    go(new Place.Log());
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
    on(scene, KeyCode.Z, () -> rail.undo(), KeyCombination.SHORTCUT_DOWN);
    on(scene, KeyCode.Y, () -> rail.redo(), KeyCombination.SHORTCUT_DOWN);
    on(
        scene,
        KeyCode.Z,
        () -> rail.redo(),
        KeyCombination.SHORTCUT_DOWN,
        KeyCombination.SHIFT_DOWN);
    on(scene, KeyCode.O, files::open, KeyCombination.SHORTCUT_DOWN);
    on(scene, KeyCode.S, files::copy, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    on(scene, KeyCode.N, () -> onPage(Page::newThing), KeyCombination.SHORTCUT_DOWN);
    on(scene, KeyCode.F, () -> onPage(Page::search), KeyCombination.SHORTCUT_DOWN);
    on(scene, KeyCode.F1, () -> go(new Place.Shortcuts()));
    on(scene, KeyCode.L, () -> go(new Place.Log()), KeyCombination.SHORTCUT_DOWN);
    on(scene, KeyCode.PLUS, () -> larger(), KeyCombination.SHORTCUT_DOWN);
    on(scene, KeyCode.EQUALS, () -> larger(), KeyCombination.SHORTCUT_DOWN);
    on(
        scene,
        KeyCode.MINUS,
        () -> window.use(window.textSize().smaller()),
        KeyCombination.SHORTCUT_DOWN);
    on(
        scene,
        KeyCode.T,
        () -> window.use(window.theme().next()),
        KeyCombination.SHORTCUT_DOWN,
        KeyCombination.SHIFT_DOWN);
    KeyCode[] digits = {
      KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6
    };
    for (int i = 0; i < Math.min(digits.length, Pages.RAIL.size()); i++) {
      Place place = Pages.RAIL.get(i).place();
      on(scene, digits[i], () -> go(place), KeyCombination.SHORTCUT_DOWN);
    }
  }

  private void larger() {
    window.use(window.textSize().larger());
  }

  private void onPage(Consumer<Page> action) {
    action.accept(page);
  }

  private static void on(
      Scene scene, KeyCode code, Runnable action, KeyCombination.Modifier... modifiers) {
    scene.getAccelerators().put(new KeyCodeCombination(code, modifiers), action);
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
