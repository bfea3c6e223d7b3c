package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;
import rutbook.units.Amount;

/** The ruler by mouse, by key and by typing, at both ends of its range and beyond. */
class RulerByHandTest extends WindowTest {
  private static final EntryId SESSION = new EntryId("s-1");

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(
        Bench.notebook()
            .with(
                Bench.session(
                    "s-1",
                    LocalDate.of(2026, 5, 16),
                    Bench.HOLLOW,
                    Bench.setup(),
                    List.of(Bench.moto("m-1", List.of(), List.of())))));
  }

  private Optional<Reading> now(SettingId id) {
    return ((Entry.Session) editor.present().entry(SESSION).orElseThrow()).setupOf(0).reading(id);
  }

  private void changes() {
    go(new Place.Session(SESSION));
    touch("tab-changes");
  }

  /** The event has its place in the scene, as those of a real mouse have. */
  private void mouse(javafx.event.EventType<MouseEvent> type, Node on, double inside) {
    double x = on.localToScene(inside, 10).getX();
    interact(
        () ->
            on.fireEvent(
                new MouseEvent(
                    type,
                    x,
                    10,
                    0,
                    0,
                    MouseButton.PRIMARY,
                    1,
                    false,
                    false,
                    false,
                    false,
                    true,
                    false,
                    false,
                    true,
                    false,
                    true,
                    null)));
    settle();
  }

  @Test
  void aDragEndsAtTheStopsHoweverFarTheMouseGoes() {
    changes();
    Node ruler = node("shock-rebound-ruler");
    double width = ruler.getLayoutBounds().getWidth();
    mouse(MouseEvent.MOUSE_PRESSED, ruler, width / 2);
    mouse(MouseEvent.MOUSE_DRAGGED, ruler, width + 500);
    assertThat(now(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(22)));
    mouse(MouseEvent.MOUSE_DRAGGED, ruler, -500);
    assertThat(now(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(0)));
    mouse(MouseEvent.MOUSE_RELEASED, ruler, -500);
    interact(editor::undo);
    assertThat(now(Bench.SHOCK_REBOUND))
        .as("one drag is one step")
        .contains(Reading.of(clicks(12)));
  }

  @Test
  void keysStepAndEndAtTheStops() {
    changes();
    Node ruler = node("shock-rebound-ruler");
    press(ruler, KeyCode.END);
    press(ruler, KeyCode.RIGHT);
    assertThat(now(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(22)));
    press(ruler, KeyCode.LEFT);
    assertThat(now(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(21)));
    press(ruler, KeyCode.PAGE_DOWN);
    assertThat(now(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(16)));
    press(ruler, KeyCode.HOME);
    press(ruler, KeyCode.LEFT);
    assertThat(now(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(0)));
  }

  @Test
  void theReaderHearsTheReadingItsRangeItsMarksAndThatAStopIsNear() {
    changes();
    Node ruler = node("shock-rebound-ruler");
    press(ruler, KeyCode.END);
    assertThat(ruler.getAccessibleText())
        .startsWith("Shock rebound: 22 out.")
        .contains("Baseline 12 out.", "Before 12 out.", "Near its stop.");
  }

  @Test
  void whatIsTypedBeyondAStopIsRefusedWithTheLimitAndKeptForMending() {
    changes();
    Notebook before = editor.present();
    type("shock-rebound-field", "30");
    assertThat(editor.present()).isSameAs(before);
    assertThat(((TextField) node("shock-rebound-field")).getText()).isEqualTo("30");
    assertThat(((Labeled) node("shock-rebound-error")).getText()).contains("30", "22");
    type("shock-rebound-field", "20");
    assertThat(now(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(20)));
    assertThat(scene().lookup("#shock-rebound-error")).isNull();
  }

  @Test
  void anyUnitOfItsKindIsTakenAndStaysAsItWasWritten() {
    changes();
    type("tube-above-clamp-field", "0.25 in");
    Amount written = now(Bench.TUBE).orElseThrow().amounts().get(0);
    assertThat(written.toString()).contains("0.25").contains("in");
    type("tube-above-clamp-field", "7 turns");
    assertThat(((Labeled) node("tube-above-clamp-error")).getText()).isNotEmpty();
  }

  @Test
  void aRulerShowsWhatATouchWouldChoose() {
    changes();
    Node ruler = node("shock-rebound-ruler");
    mouse(MouseEvent.MOUSE_MOVED, ruler, ruler.getLayoutBounds().getWidth() - 15);
    Labeled hover = (Labeled) ruler.getParent().lookup(".ruler-hover");
    assertThat(hover.isVisible()).isTrue();
    assertThat(hover.getText()).isEqualTo("22 clicks");
    mouse(MouseEvent.MOUSE_EXITED, ruler, 0);
    assertThat(hover.isVisible()).isFalse();
  }

  @Test
  void legsThatDifferAreSetApartAndToldInTheStrip() {
    changes();
    touch("split-fork-compression");
    press(node("fork-compression-right-ruler"), KeyCode.RIGHT);
    assertThat(now(Bench.FORK_COMPRESSION)).contains(Reading.of(clicks(12), clicks(13)));
    Node strip = node("strip-fork-compression");
    assertThat(strip.getStyleClass()).contains("mismatch");
    assertThat(strip.getAccessibleText()).contains("Legs differ.");
  }
}
