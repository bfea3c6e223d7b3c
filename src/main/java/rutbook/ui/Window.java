package rutbook.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import rutbook.notebook.Notebook;
import rutbook.ui.fx.Background;
import rutbook.ui.fx.Fonts;
import rutbook.words.Language;

/** The window: a stage with the shell in it, the themes, and its place on the screen. */
public final class Window {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;
  private static final double LEAST_WIDTH = 900;
  private static final double LEAST_HEIGHT = 560;

  private final Stage stage;
  private final WindowServices services;
  private final Shell shell;
  private final Scene scene;
  private WindowMemory.Look look;
  private WindowMemory.Bounds normal = new WindowMemory.Bounds(0, 0, WIDTH, HEIGHT, false);

  private Window(Stage stage, WindowServices services) {
    this.stage = stage;
    this.services = services;
    this.look = services.memory().remembered();
    this.shell = new Shell(services, this);
    this.scene = new Scene(shell, WIDTH, HEIGHT);
  }

  /** What every window needs whatever is in it, so that a notebook can be read meanwhile. */
  public static void prepare(WindowMemory memory) {
    Fonts.load();
    Application.setUserAgentStylesheet(memory.remembered().theme().base());
    Rail.loadIcons();
  }

  /** Builds the window and shows it, on the window's thread. */
  public static Window start(Stage stage, WindowServices services) {
    prepare(services.memory());
    Window window = new Window(stage, services);
    window.open();
    return window;
  }

  private void open() {
    applyLook();
    stage.setScene(scene);
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    place();
    shell.keys(scene);
    stage.setOnCloseRequest(
        event -> {
          event.consume();
          close();
        });
    title();
    stage.show();
    follow();
    shell.tellOfTheStart();
  }

  /** As it was left, where a screen still shows that place. */
  private void place() {
    Optional<WindowMemory.Bounds> bounds = look.bounds().filter(Window::isOnAScreen);
    bounds.ifPresent(
        known -> {
          stage.setX(known.x());
          stage.setY(known.y());
          stage.setWidth(known.width());
          stage.setHeight(known.height());
          stage.setMaximized(known.maximised());
        });
  }

  /** Remembers place and size to go back to, which a maximised window does not have any more. */
  private void follow() {
    for (ReadOnlyDoubleProperty each :
        List.of(
            stage.xProperty(), stage.yProperty(), stage.widthProperty(), stage.heightProperty())) {
      each.addListener((place, before, now) -> Background.afterwards(this::note));
    }
    note();
  }

  private void note() {
    if (!stage.isMaximized() && !stage.isIconified() && stage.isShowing()) {
      normal =
          new WindowMemory.Bounds(
              stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), false);
    }
  }

  private static boolean isOnAScreen(WindowMemory.Bounds bounds) {
    Rectangle2D window =
        new Rectangle2D(
            bounds.x(), bounds.y(), Math.max(1, bounds.width()), Math.max(1, bounds.height()));
    return Screen.getScreens().stream()
        .anyMatch(screen -> screen.getVisualBounds().intersects(window));
  }

  private void end() {
    look =
        look.with(
            new WindowMemory.Bounds(
                normal.x(), normal.y(), normal.width(), normal.height(), stage.isMaximized()));
    services.memory().remember(look);
    stage.hide();
  }

  void title() {
    String name =
        services.files().current().map(path -> path.getFileName().toString()).orElse("Rutbook");
    stage.setTitle(name.equals("Rutbook") ? name : name + " – Rutbook");
  }

  Stage stage() {
    return stage;
  }

  public Theme theme() {
    return look.theme();
  }

  public TextSize textSize() {
    return TextSize.nearest(look.textPercent());
  }

  public void use(Theme theme) {
    look = look.with(theme);
    applyLook();
    services.memory().remember(look);
  }

  public void use(TextSize size) {
    look = look.with(size);
    applyLook();
    services.memory().remember(look);
  }

  /** From the next start on: what stands in the window now was worded already. */
  public void use(Language language) {
    look = look.with(language);
    services.memory().remember(look);
  }

  Optional<Language> language() {
    return look.language();
  }

  /** Where the window is now: for tests and pictures. */
  public void go(Place place) {
    shell.go(place);
  }

  /** Closes the window, unless something would be lost: then it asks. */
  public void close() {
    shell.close(this::end);
  }

  /** Opens a notebook, or a setup file that somebody sent. */
  public void openFile(Path path) {
    shell.open(path);
  }

  /** Tells something in the window that nobody asked for. */
  public void tell(String sentence) {
    shell.tell(sentence);
  }

  /** The notebook as it is now. */
  public Notebook notebook() {
    return services.editor().present();
  }

  private void applyLook() {
    Application.setUserAgentStylesheet(theme().base());
    String common = Window.class.getResource("rutbook.css").toExternalForm();
    scene.getStylesheets().setAll(common, theme().sheet());
    long pixels = Math.round(textSize().pixels(theme()));
    shell.em(pixels);
    scene.getRoot().setStyle("-fx-font-size: " + pixels + "px;");
  }
}
