package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.stage.PopupWindow;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.ui.NotebookFiles.Answer;
import rutbook.ui.NotebookFiles.Way;
import rutbook.units.Dimension;
import rutbook.units.Pressure;

/** The menu of notebook and view, and what came of an attempt to open one. */
class FileMenuTest extends WindowTest {
  private static final Path RECENT = Path.of("last_year.rutbook");
  private static final Notebook OTHER = Bench.notebook().copiedAs(new NotebookId("other"));
  private static final Answer OPENED =
      new Answer.Opened(OTHER, RECENT, "It was opened from a backup.");

  private final List<Path> asked = new ArrayList<>();
  private Answer answer = OPENED;

  /** Remembers one notebook, and answers what a test put in. */
  private final class OneRecent extends StandIns.NoFiles {
    @Override
    public List<Path> recent() {
      return List.of(RECENT);
    }

    @Override
    public void open(Path path, Consumer<Answer> told) {
      asked.add(path);
      told.accept(answer);
    }
  }

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(Bench.notebook());
  }

  @Override
  protected void open(Notebook notebook) {
    editor = new Editor(notebook);
    WindowServices plain = StandIns.services(editor, TODAY, look(1280, 800));
    window =
        Window.start(
            stage,
            new WindowServices(
                plain.editor(),
                plain.ids(),
                plain.clock(),
                plain.locale(),
                plain.rules(),
                new OneRecent(),
                plain.printing(),
                plain.saveLight(),
                plain.memory(),
                plain.background(),
                plain.outside(),
                plain.picker()));
  }

  /** The items of the open menu. */
  private List<MenuItem> menu() {
    touch("menu");
    return PopupWindow.getWindows().stream()
        .filter(ContextMenu.class::isInstance)
        .map(ContextMenu.class::cast)
        .reduce((earlier, later) -> later)
        .orElseThrow()
        .getItems();
  }

  private static MenuItem item(List<MenuItem> items, String text) {
    return items.stream()
        .filter(each -> text.equals(each.getText()))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + text));
  }

  private static List<MenuItem> under(List<MenuItem> items, String text) {
    return ((Menu) item(items, text)).getItems();
  }

  private static List<String> chosen(List<MenuItem> items) {
    return items.stream()
        .filter(each -> ((RadioMenuItem) each).isSelected())
        .map(MenuItem::getText)
        .toList();
  }

  private void choose(MenuItem item) {
    interact(item::fire);
    settle();
  }

  @Test
  void aRecentNotebookIsOpenedAndWhatIsToKnowIsTold() {
    choose(item(under(menu(), "Recent notebooks"), "last_year.rutbook"));
    assertThat(asked).containsExactly(RECENT);
    assertThat(editor.present()).isEqualTo(OTHER);
    assertThat(text("overlay-text")).isEqualTo("It was opened from a backup.");
    touch("overlay-close");
    assertThat(scene().lookup("#overlay").isVisible()).isFalse();
  }

  @Test
  void aNotebookThatCannotBeOpenedIsToldWithTheWaysOn() {
    Notebook before = editor.present();
    answer =
        new Answer.Refused(
            "It cannot be read.", List.of(new Way("Open the backup", told -> told.accept(OPENED))));
    choose(item(under(menu(), "Recent notebooks"), "last_year.rutbook"));
    assertThat(text("overlay-text")).isEqualTo("It cannot be read.");
    assertThat(editor.present()).isEqualTo(before);
    assertThat(text("overlay-choice-0")).isEqualTo("Open the backup");
    touch("overlay-choice-0");
    assertThat(editor.present()).isEqualTo(OTHER);
  }

  @Test
  void unitsThemeAndTextAreChosenByTheirNames() {
    List<MenuItem> menu = menu();
    List<MenuItem> pressures = under(under(menu, "Units shown"), "Pressures");
    assertThat(chosen(pressures)).containsExactly("bar");
    choose(item(pressures, "psi"));
    assertThat(editor.present().display().unit(Dimension.PRESSURE)).isEqualTo(Pressure.PSI);
    interact(editor::undo);
    assertThat(editor.present()).isEqualTo(Bench.notebook());
    assertThat(chosen(under(menu, "Theme"))).containsExactly("Light");
    choose(item(under(menu, "Theme"), "Dark"));
    assertThat(window.theme()).isEqualTo(Theme.DARK);
    assertThat(chosen(under(menu, "Text size"))).containsExactly("Normal");
    choose(item(under(menu, "Text size"), "Large"));
    assertThat(window.textSize()).isEqualTo(TextSize.LARGE);
    assertThat(chosen(under(menu, "Language, from the next start"))).containsExactly("English");
    choose(item(menu, "Keyboard shortcuts"));
    assertThat(node("shortcut-sheet")).isNotNull();
  }
}
