package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.samples.Samples;

/** Two sides on their page: chosen, swapped, kept while other pages are looked at. */
class ComparePageTest extends ApplicationTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 10, 17);
  private Stage stage;
  private Scene scene;
  private Window window;

  @Override
  public void start(Stage first) {
    stage = first;
    open(Samples.season());
  }

  private void open(Notebook notebook) {
    window = Window.start(stage, StandIns.services(new Editor(notebook), TODAY));
    scene = stage.getScene();
    window.go(new Place.Compare());
    scene.getRoot().applyCss();
  }

  @SuppressWarnings("unchecked")
  private ComboBox<Object> side(String id) {
    return (ComboBox<Object>) scene.lookup("#" + id);
  }

  private String said(String id) {
    ComboBox<Object> side = side(id);
    return side.getConverter().toString(side.getValue());
  }

  private void choose(String id, String wanted) {
    interact(
        () -> {
          ComboBox<Object> side = side(id);
          List<Object> fitting =
              side.getItems().stream()
                  .filter(each -> side.getConverter().toString(each).contains(wanted))
                  .toList();
          assertThat(fitting).as(wanted).isNotEmpty();
          side.setValue(fitting.get(0));
          scene.getRoot().applyCss();
        });
  }

  private void touch(String id) {
    interact(() -> ((ButtonBase) scene.lookup("#" + id)).fire());
  }

  /** Every label inside a part of the page. */
  private String text(String id) {
    Node part = scene.lookup("#" + id);
    return part == null
        ? ""
        : part.lookupAll(".label").stream()
            .filter(Label.class::isInstance)
            .map(label -> ((Label) label).getText())
            .collect(Collectors.joining("\n"));
  }

  @Test
  void twoTracksAreComparedAtOnceWithAllTheirSessions() {
    assertThat(said("compare-from")).startsWith("Best of Quarry Hollow");
    assertThat(said("compare-to")).startsWith("Best of Saltmarsh Dunes");
    assertThat(text("compare-settings")).contains("15 → 12 out (3 firmer)");
    assertThat(text("compare-tracks")).contains("Differs consistently", "Tube above clamp");
    assertThat(text("compare-laps")).contains("Laps of two tracks say nothing about the bike.");
  }

  @Test
  void belowEachDifferenceStandsWhatTheTradeAndWhatTheOwnMotosSay() {
    assertThat(text("compare-fork-compression").lines())
        .anyMatch(line -> line.startsWith("The trade expects"))
        .anyMatch(line -> line.startsWith("Your motos, in clean"));
  }

  @Test
  void swappedSidesSayTheOppositeSense() {
    touch("compare-swap");
    assertThat(said("compare-from")).startsWith("Best of Saltmarsh Dunes");
    assertThat(text("compare-settings")).contains("12 → 15 out (3 softer)");
  }

  @Test
  void motosOfATrackAreComparedByTheirLapsAndNoiseIsNotCalledADifference() {
    choose("compare-from", "7 Mar 2026, moto 1");
    choose("compare-to", "17 Oct 2026, moto 1");
    assertThat(text("compare-laps")).contains("s a lap", "noise");
    assertThat(text("compare-tracks")).isEmpty();
    assertThat(text("compare-curves")).contains("J →");
  }

  @Test
  void whatIsTheSameIsFoldedAwayAndUnfolds() {
    Node same = scene.lookup("#compare-same-list");
    assertThat(same.isVisible()).isFalse();
    touch("compare-same");
    assertThat(same.isVisible()).isTrue();
    assertThat(((Label) same).getText()).contains("Fork rebound: 11 out");
  }

  @Test
  void theSidesStayChosenWhileAnotherPageIsLookedAt() {
    choose("compare-from", "7 Mar 2026, moto 2");
    interact(
        () -> {
          window.go(new Place.Log());
          window.go(new Place.Compare());
          scene.getRoot().applyCss();
        });
    assertThat(said("compare-from")).contains("7 Mar 2026, moto 2");
  }

  @Test
  void anEmptyNotebookIsToldWhatToDoFirst() {
    interact(() -> open(Notebook.empty(new NotebookId("empty"))));
    assertThat(text("compare-page")).contains("Note a session first");
    assertThat(side("compare-from").getParent().isVisible()).isFalse();
  }
}
