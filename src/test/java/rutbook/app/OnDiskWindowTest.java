package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import rutbook.file.RealDisk;
import rutbook.file.UserFolders;
import rutbook.json.NotebookJson;
import rutbook.json.SetupJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Shared;
import rutbook.samples.Samples;
import rutbook.share.SetupFiles;
import rutbook.ui.WindowTest;
import rutbook.ui.log.LogRow;
import rutbook.units.Display;
import rutbook.words.Phrases;

/** The program as it is wired, on a real disk: what is entered is there the next time. */
class OnDiskWindowTest extends WindowTest {
  @TempDir Path folder;

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.empty();
  }

  private Path home() {
    return folder.resolve("home");
  }

  private static Notebook sample() {
    return Bench.notebook()
        .with(
            Bench.session(
                "s-1",
                TODAY,
                Bench.HOLLOW,
                Bench.setup(),
                List.of(Bench.moto("m-1", List.of(), List.of()))));
  }

  private void startTheProgram() {
    startTheProgram(Optional.empty());
  }

  private void startTheProgram(Optional<Path> named) {
    Codec codec = new Codec(NotebookJson::read, NotebookJson::write, Throwable::getMessage);
    UserFolders folders =
        new UserFolders(folder.resolve("config"), folder.resolve("cache"), folder.resolve("log"));
    WindowStart start =
        new WindowStart(
            new RealDisk(System.getProperty("os.name")),
            Clock.systemDefaultZone(),
            phrases -> codec,
            Phrases.english(Display.METRIC),
            folders);
    List<Window> before = List.copyOf(Window.getWindows());
    interact(() -> start.open(named, sample(), home()));
    stage =
        Window.getWindows().stream()
            .filter(each -> !before.contains(each))
            .map(Stage.class::cast)
            .findFirst()
            .orElseThrow();
    settle();
  }

  private void close() {
    interact(
        () -> Event.fireEvent(stage, new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
  }

  private static void until(Callable<Boolean> holds) throws Exception {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, holds);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void closeAndWait() throws Exception {
    close();
    until(() -> !stage.isShowing());
  }

  @AfterEach
  void nothingStaysOpen() {
    interact(() -> List.copyOf(Window.getWindows()).forEach(Window::hide));
  }

  /** As a mail program does that opens what came with a mail. */
  @Test
  void aSetupFileNamedAtTheStartIsOpenedAsAGuest() throws Exception {
    Path file = folder.resolve("from a rider.setup.json");
    Files.write(
        file, SetupJson.write(SetupFiles.whole(Samples.season(), EnumSet.noneOf(Shared.class))));
    startTheProgram(Optional.of(file));
    until(() -> stage.getScene().lookup("#guest-page") != null);
  }

  @Test
  void whatIsNoSetupFileIsToldInASentence() throws Exception {
    Path file = folder.resolve("torn.setup.json");
    Files.writeString(file, "{");
    startTheProgram(Optional.of(file));
    until(() -> stage.getScene().lookup("#overlay-close") != null);
    assertThat(Files.readString(file)).isEqualTo("{");
  }

  @SuppressWarnings("unchecked")
  private void openTheSession() throws Exception {
    until(this::hasASession);
    ListView<LogRow> list = (ListView<LogRow>) node("log-list");
    for (int i = 0; i < list.getItems().size(); i++) {
      if (list.getItems().get(i) instanceof LogRow.Item item
          && item.entry() instanceof Entry.Session) {
        int place = i;
        interact(() -> list.getSelectionModel().select(place));
      }
    }
    press(list, KeyCode.ENTER);
  }

  private Notebook onDisk() throws IOException {
    try (var files = Files.list(home())) {
      Path notebook =
          files.filter(path -> path.toString().endsWith(".rutbook")).findFirst().orElseThrow();
      return NotebookJson.read(Files.readAllBytes(notebook));
    }
  }

  private static OptionalInt trust(Notebook notebook) {
    return notebook.entries().stream()
        .filter(Entry.Session.class::isInstance)
        .flatMap(entry -> ((Entry.Session) entry).motos().stream())
        .map(Moto::report)
        .findFirst()
        .orElseThrow()
        .trust();
  }

  private boolean isTold(String id) {
    Node node = stage.getScene().lookup("#" + id);
    return node != null && node.isVisible();
  }

  @Test
  void whatIsEnteredIsSavedByItselfAndThereTheNextTime() throws Exception {
    startTheProgram();
    assertThat(isTold("notice-sample")).as("a first run says what it shows").isTrue();
    openTheSession();
    touch("trust-7");
    assertThat(text("save-light")).startsWith("saving");
    until(() -> text("save-light").startsWith("saved"));
    assertThat(trust(onDisk())).isEqualTo(OptionalInt.of(7));
    touch("trust-9");
    closeAndWait();
    assertThat(trust(onDisk())).as("closing saves at once").isEqualTo(OptionalInt.of(9));
    startTheProgram();
    openTheSession();
    assertThat(((javafx.scene.control.ToggleButton) node("trust-9")).isSelected()).isTrue();
    closeAndWait();
  }

  @Test
  void theWindowIsWhereItWas() throws Exception {
    startTheProgram();
    interact(
        () -> {
          stage.setX(40);
          stage.setY(30);
          stage.setWidth(1111);
          stage.setHeight(700);
        });
    settle();
    closeAndWait();
    startTheProgram();
    assertThat(List.of(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight()))
        .containsExactly(40.0, 30.0, 1111.0, 700.0);
    closeAndWait();
  }

  @Test
  void aFailingDiskIsSurvivedToldAndSettled() throws Exception {
    startTheProgram();
    openTheSession();
    Path away = folder.resolve("away");
    Files.move(home(), away);
    touch("trust-6");
    until(() -> isTold("notice-trouble"));
    assertThat(text("save-light")).isEqualTo("NOT saved");
    touch("trust-8");
    Files.move(away, home());
    touch("notice-settle");
    until(() -> isTold("overlay"));
    touch("overlay-choice-0");
    until(() -> text("save-light").startsWith("saved"));
    assertThat(isTold("notice-trouble")).isFalse();
    assertThat(trust(onDisk())).isEqualTo(OptionalInt.of(8));
    closeAndWait();
  }

  @Test
  void closingWithSomethingUnsavedAsksFirst() throws Exception {
    startTheProgram();
    openTheSession();
    Files.move(home(), folder.resolve("away"));
    touch("trust-6");
    close();
    until(() -> isTold("overlay"));
    assertThat(((Labeled) node("overlay-text")).getText()).contains("in this window only");
    touch("overlay-close");
    assertThat(stage.isShowing()).as("the rider chose to stay").isTrue();
    close();
    until(() -> isTold("overlay"));
    touch("overlay-choice-1");
    until(() -> !stage.isShowing());
  }

  @Test
  void aNotebookOfLastTimeThatCannotBeOpenedIsTold() throws Exception {
    startTheProgram();
    closeAndWait();
    Path broken;
    try (var files = Files.list(home())) {
      broken = files.filter(path -> path.toString().endsWith(".rutbook")).findFirst().orElseThrow();
    }
    Files.writeString(broken, "{ not a notebook");
    startTheProgram();
    assertThat(isTold("overlay")).isTrue();
    assertThat(((Labeled) node("overlay-text")).getText()).isNotBlank();
    assertThat(Files.readString(broken)).isEqualTo("{ not a notebook");
    touch("overlay-close");
    closeAndWait();
  }

  private boolean hasASession() {
    return stage.getScene().lookup("#log-list") instanceof ListView<?> list
        && list.getItems().size() > 2;
  }
}
