package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.samples.Samples;
import rutbook.ui.controls.RowKey;

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

  private String said(String id) {
    return ((ButtonBase) scene.lookup("#" + id)).getText();
  }

  /** Opens the list of a side, types, and takes the first that is left. */
  private void choose(String id, String typed) {
    touch(id);
    interact(
        () -> {
          ((TextField) scene.lookup("#compare-search")).setText(typed);
          scene.getRoot().applyCss();
        });
    type(KeyCode.ENTER);
    interact(() -> scene.getRoot().applyCss());
  }

  @SuppressWarnings("unchecked")
  private List<SideLine> listed(String typed) {
    interact(() -> ((TextField) scene.lookup("#compare-search")).setText(typed));
    return ((ListView<Object>) scene.lookup("#compare-options"))
        .getItems().stream().map(each -> new SideLine(each.toString())).toList();
  }

  private record SideLine(String text) {}

  private void touch(String id) {
    interact(() -> ((ButtonBase) scene.lookup("#" + id)).fire());
  }

  /** Every label inside a part of the page. */
  private String text(String id) {
    interact(() -> scene.getRoot().applyCss());
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
    assertThat(text("compare-settings")).contains("15 → 12 out (3 clicks firmer)");
    assertThat(text("compare-tracks")).contains("Usually set apart", "Tube above clamp");
    assertThat(text("compare-laps")).contains("Laps of two tracks say nothing about the bike.");
  }

  @Test
  void belowEachDifferenceStandsWhatTheTradeAndWhatTheOwnMotosSay() {
    assertThat(text("compare-fork-compression").lines())
        .anyMatch(line -> line.startsWith("The trade expects"))
        .anyMatch(line -> line.startsWith("Your motos, in clean"));
  }

  @Test
  void aBikeThatIsSetLikeNeitherSideIsSaidAndCanBeBegunAt() {
    assertThat(((Label) scene.lookup("#compare-neither")).getText())
        .startsWith("The bike is set like neither side now");
    assertThat(text("compare-settings")).contains("“Out” counts from fully closed");
    touch("compare-from-now");
    assertThat(said("compare-from")).isEqualTo("On the bike now");
    assertThat(scene.lookup("#compare-neither")).isNull();
    assertThat(text("compare-settings")).contains("16 → 12 out (4 clicks firmer)");
  }

  @Test
  void swappedSidesSayTheOppositeSense() {
    touch("compare-swap");
    assertThat(said("compare-from")).startsWith("Best of Saltmarsh Dunes");
    assertThat(text("compare-settings")).contains("12 → 15 out (3 clicks softer)");
  }

  @Test
  void motosOfATrackAreComparedByTheirLapsAndNoiseIsNotCalledADifference() {
    choose("compare-from", "7 mar 2026, moto 1");
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
    assertThat(scene.lookup("#compare-from").getParent().isVisible()).isFalse();
  }

  @Test
  void typingNarrowsTheListWhateverTheCaseAndTheOrderOfWords() {
    touch("compare-from");
    int all = listed("").size();
    List<SideLine> narrowed = listed("aug QUARRY");
    assertThat(narrowed).isNotEmpty().hasSizeLessThan(all);
    assertThat(narrowed).allSatisfy(line -> assertThat(line.text()).contains("Quarry Hollow"));
    assertThat(listed("2026-08")).isNotEmpty();
    assertThat(listed("no such place")).isEmpty();
    type(KeyCode.ENTER);
    assertThat(scene.lookup("#compare-list").isVisible()).isTrue();
    type(KeyCode.ESCAPE);
    assertThat(scene.lookup("#compare-list").isVisible()).isFalse();
    assertThat(said("compare-from")).startsWith("Best of Quarry Hollow");
  }

  @Test
  void theStartAtATrackSaysWhatItGoesByAndWhereEachReadingComesFrom() {
    choose("compare-to", "start at kestrel");
    assertThat(said("compare-to")).isEqualTo("Start at Kestrel Bank");
    assertThat(text("compare-start")).contains("Kestrel Bank", "as it was in that moto");
  }

  @Test
  void aTrackThatWasNeverRiddenIsChosenByItsGround() {
    choose("compare-to", "new track: rocks");
    assertThat(text("compare-start")).contains("Most like it:", "% alike");
    assertThat(text("compare-settings")).isNotEmpty();
  }

  @Test
  void theSeasonShowsEverySettingThatMovedAndOneOfThemLarge() {
    touch("compare-season-key");
    assertThat(text("compare-season")).contains("Never moved: Fork spring");
    assertThat(text("season-tube-above-clamp")).isNotEmpty();
    interact(() -> ((RowKey) scene.lookup("#season-tube-above-clamp")).fire());
    assertThat(((Label) scene.lookup("#season-at")).getText())
        .isEqualTo("17 Oct 2026, moto 1: 5 mm");
  }

  @Test
  void theArrowsGoFromStepToStepAndEnterOpensTheSession() {
    touch("compare-season-key");
    interact(() -> ((RowKey) scene.lookup("#season-tube-above-clamp")).fire());
    interact(() -> scene.lookup("#season-line").requestFocus());
    type(KeyCode.LEFT);
    assertThat(((Label) scene.lookup("#season-at")).getText())
        .isEqualTo("10 Oct 2026, moto 1: 3 mm");
    type(KeyCode.ENTER);
    interact(() -> scene.getRoot().applyCss());
    assertThat(scene.lookup("#compare-page")).isNull();
    assertThat(scene.lookup("#session-page")).isNotNull();
  }
}
