package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;

/** The session page by touch and by key, and what it did to the notebook. */
class SessionPageTest extends ApplicationTest {
  private static final EntryId SESSION = new EntryId("s-1");
  private Editor editor;
  private Scene scene;

  private static Notebook notebook() {
    Feel kicks = Feel.of(End.REAR, Section.BRAKING_BUMPS, Symptom.KICKS, 3);
    Feel harsh = Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 2);
    return Bench.notebook()
        .with(
            Bench.session(
                "s-1",
                LocalDate.of(2026, 5, 16),
                Bench.HOLLOW,
                Bench.setup(),
                List.of(
                    Bench.moto("m-1", List.of(), List.of(kicks, harsh)),
                    Bench.moto("m-2", List.of(), List.of()))));
  }

  @Override
  public void start(Stage stage) {
    editor = new Editor(notebook());
    Window.start(stage, StandIns.services(editor, LocalDate.of(2026, 5, 16)))
        .go(new Place.Session(SESSION));
    scene = stage.getScene();
  }

  private void touch(String id) {
    new FxRobot().interact(() -> ((ButtonBase) scene.lookup("#" + id)).fire());
  }

  private Entry.Session session() {
    return (Entry.Session) editor.present().entry(SESSION).orElseThrow();
  }

  @Test
  void whatBotheredBeforeIsUpdatedWithOneTouchEach() {
    touch("still-0-0");
    touch("still-1-2");
    touch("trust-7");
    assertThat(session().motos().get(1).report().feel())
        .containsExactly(
            Feel.of(End.REAR, Section.BRAKING_BUMPS, Symptom.KICKS, 0),
            Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 2));
    assertThat(session().motos().get(1).report().trust()).isEqualTo(OptionalInt.of(7));
    interact(editor::undo);
    assertThat(session().motos().get(1).report().trust()).isEmpty();
  }

  @Test
  void aNewSymptomTakesThreeTouches() {
    touch("section-CORNER_ENTRY");
    touch("symptom-DIVES");
    touch("severity-1");
    assertThat(session().motos().get(1).report().feel())
        .containsExactly(Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, 1));
  }

  @Test
  void aRulerIsSteppedWithKeysAndRefusesWhatLiesBeyondItsStop() {
    touch("tab-changes");
    interact(
        () ->
            scene
                .lookup("#shock-rebound-ruler")
                .fireEvent(
                    new KeyEvent(
                        KeyEvent.KEY_PRESSED, "", "", KeyCode.LEFT, false, false, false, false)));
    assertThat(session().setupOf(1).reading(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(11)));
    interact(
        () -> {
          TextField field = (TextField) scene.lookup("#shock-rebound-field");
          field.setText("30");
          field.fireEvent(new javafx.event.ActionEvent());
        });
    assertThat(session().setupOf(1).reading(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(11)));
    assertThat(((TextField) scene.lookup("#shock-rebound-field")).getText()).isEqualTo("30");
  }

  @Test
  void pastedLapsAreTakenAndTheBadOnesStayToBeMended() {
    touch("tab-laps");
    interact(() -> ((TextArea) scene.lookup("#laps-area")).setText("1:52.3\n112.9\nslow one"));
    touch("laps-take");
    assertThat(session().motos().get(1).report().laps())
        .containsExactly(Lap.of(112_300), Lap.of(112_900));
    assertThat(((TextArea) scene.lookup("#laps-area")).getText()).isEqualTo("slow one");
  }

  @Test
  void countingAlongEndsInTheCheckAndOneLegOffIsTold() {
    touch("session-check");
    touch("count-fork-compression-RIGHT");
    for (int i = 0; i < 14; i++) {
      touch("count-plus");
    }
    touch("count-minus");
    touch("count-done");
    touch("check-all");
    touch("check-write");
    assertThat(session().end().reading(Bench.FORK_COMPRESSION))
        .contains(Reading.of(clicks(12), clicks(13)));
  }

  @Test
  void everySideOfAMotoOpens() {
    for (String tab : List.of("feel", "changes", "laps", "notes", "grid")) {
      touch("tab-" + tab);
    }
    touch("chain-start");
    assertThat(scene.lookup("#settings-tab")).isNotNull();
  }
}
