package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Reading;
import rutbook.notebook.Timeline;
import rutbook.ui.log.LogRow;

/** The Log: found by track, kind and text; a session begun as the bike was left; undo from here. */
class LogPageTest extends WindowTest {
  @Override
  protected Optional<Notebook> notebook() {
    Change softer = Change.of(Bench.FORK_COMPRESSION, Reading.of(clicks(14), clicks(15)));
    return Optional.of(
        Bench.notebook()
            .with(
                Bench.session(
                    "s-1",
                    LocalDate.of(2026, 5, 2),
                    Bench.HOLLOW,
                    Bench.setup(),
                    List.of(Bench.moto("m-1", List.of(), List.of()))))
            .with(
                Bench.session(
                    "s-2",
                    LocalDate.of(2026, 5, 9),
                    Bench.DUNE,
                    Bench.setup(),
                    List.of(Bench.moto("m-2", List.of(softer), List.of())))));
  }

  @SuppressWarnings("unchecked")
  private ListView<LogRow> list() {
    return (ListView<LogRow>) node("log-list");
  }

  private List<String> entries() {
    return list().getItems().stream()
        .filter(LogRow.Item.class::isInstance)
        .map(row -> ((LogRow.Item) row).entry().id().text())
        .toList();
  }

  @Test
  void theNewestStandsFirst() {
    assertThat(entries()).containsExactly("s-2", "s-1", "base-1");
  }

  @Test
  void typingFindsByWordsInAnyOrder() {
    interact(() -> ((TextField) node("log-search")).setText("dune test"));
    settle();
    assertThat(entries()).containsExactly("s-2");
  }

  @Test
  @SuppressWarnings("unchecked")
  void aKindOrATrackLeavesOnlyItsOwn() {
    ChoiceBox<Optional<Object>> kinds = (ChoiceBox<Optional<Object>>) node("log-kinds");
    interact(() -> kinds.setValue(Optional.of(Entry.Baseline.class)));
    settle();
    assertThat(entries()).containsExactly("base-1");
    interact(() -> kinds.setValue(Optional.empty()));
    ChoiceBox<Optional<Object>> tracks = (ChoiceBox<Optional<Object>>) node("log-tracks");
    interact(() -> tracks.setValue(tracks.getItems().get(1)));
    settle();
    assertThat(entries()).containsExactly("s-1");
  }

  @Test
  void whereNothingFitsOneKeyShowsAllAgain() {
    interact(() -> ((TextField) node("log-search")).setText("snow"));
    settle();
    assertThat(scene().lookup("#log-list")).isNull();
    touch("log-clear");
    assertThat(entries()).hasSize(3);
  }

  @Test
  void anEntryIsOpenedByKeyboard() {
    interact(() -> list().getSelectionModel().select(2));
    press(list(), KeyCode.ENTER);
    assertThat(text("session-title")).contains("Test Dune");
  }

  @Test
  void aNewSessionStartsAsTheBikeWasLeftLegByLeg() {
    touch("log-new");
    touch("new-start");
    Entry.Session made =
        Timeline.of(editor.present(), Bench.BIKE).latest(Entry.Session.class).orElseThrow();
    assertThat(made.day()).isEqualTo(TODAY);
    assertThat(made.track()).isEqualTo(Bench.DUNE);
    assertThat(made.start().reading(Bench.FORK_COMPRESSION))
        .contains(Reading.of(clicks(14), clicks(15)));
    assertThat(made.start().reading(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(12)));
    assertThat(made.motos()).hasSize(1);
    assertThat(scene().lookup("#session-page")).isNotNull();
  }

  @Test
  void whatIsDoneOnOnePageIsUndoneAndRedoneFromAnother() {
    Notebook before = editor.present();
    go(new Place.Session(new EntryId("s-1")));
    touch("trust-7");
    Notebook trusted = editor.present();
    go(new Place.Log());
    assertThat(node("undo").getAccessibleText()).isEqualTo("Undo trust");
    touch("undo");
    assertThat(editor.present()).isEqualTo(before);
    assertThat(node("redo").getAccessibleText()).isEqualTo("Redo trust");
    touch("redo");
    assertThat(editor.present()).isEqualTo(trusted);
    push(KeyCode.CONTROL, KeyCode.Z);
    settle();
    assertThat(editor.present()).isEqualTo(before);
  }

  @Test
  void anEmptyNotebookSaysWhatToDoFirst() {
    interact(() -> open(Notebook.empty(new NotebookId("empty"))));
    settle();
    assertThat(node("log-message")).isNotNull();
    assertThat(node("log-new").isDisabled()).isTrue();
  }
}
