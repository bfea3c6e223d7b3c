package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.notebook.Bike;
import rutbook.notebook.Carrier;
import rutbook.notebook.Entry;
import rutbook.notebook.How;
import rutbook.notebook.Limits;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;
import rutbook.units.Dimension;
import rutbook.units.Length;

/** From nothing to the first session, by touch. */
class GuidedStartTest extends ApplicationTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 16);
  private Editor editor;
  private Scene scene;

  @Override
  public void start(Stage stage) {
    editor = new Editor(Notebook.empty(new NotebookId("nb")));
    Window.start(stage, StandIns.services(editor, TODAY))
        .go(new Place.Bike(Place.BikePart.SETTINGS));
    scene = stage.getScene();
  }

  private Node node(String id) {
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    Node node = scene.lookup("#" + id);
    assertThat(node).as(id).isNotNull();
    return node;
  }

  private void touch(String... ids) {
    for (String id : ids) {
      interact(() -> ((ButtonBase) node(id)).fire());
    }
  }

  private void type(String id, String text) {
    interact(() -> ((TextField) node(id)).setText(text));
  }

  private Bike bike() {
    return editor.present().bikes().get(0);
  }

  private Setting setting(Role role) {
    return bike().latestSheet().settings(role).get(0);
  }

  @Test
  void aBikeIsMadeFromNothingAndRiddenTheSameMinute() {
    touch("rail-log", "log-bike");
    type("start-name", "Blue 250");
    touch("start-next");
    type("start-FORK_COMPRESSION-now", "12");
    touch("start-TYRE_FRONT", "start-TYRE_REAR");
    touch("start-next");
    type("start-fill-least", "300");
    type("start-fill-most", "380");
    type("start-fill-now", "335 mL");
    type("start-shock-spring", "54");
    type("start-meter", "61.4");
    touch("start-next");

    Sheet sheet = bike().latestSheet();
    assertThat(bike().name()).isEqualTo("Blue 250");
    assertThat(sheet.from()).isEqualTo(TODAY);
    assertThat(sheet.settings())
        .extracting(Setting::role)
        .containsExactly(
            Role.FORK_COMPRESSION,
            Role.FORK_REBOUND,
            Role.SHOCK_LOW_SPEED,
            Role.SHOCK_HIGH_SPEED,
            Role.SHOCK_REBOUND,
            Role.TUBE_ABOVE_CLAMP,
            Role.SHOCK_PRELOAD,
            Role.FORK_OIL,
            Role.SHOCK_SPRING);
    assertThat(sheet.torques()).isEmpty();
    assertThat(sheet.services()).allMatch(item -> item.commonPractice()).hasSize(2);
    Timeline timeline = Timeline.of(editor.present(), bike().id());
    assertThat(timeline.now().placed(setting(Role.FORK_COMPRESSION).id()))
        .contains(
            Placed.set(
                setting(Role.FORK_COMPRESSION).id(),
                Reading.bothLegs(Amount.of(12, ClickUnit.CLICK))));
    assertThat(timeline.now().reading(setting(Role.FORK_REBOUND).id()).orElseThrow().isKnown())
        .isFalse();
    node("bike-settings");

    touch("rail-log", "log-new");
    interact(() -> ((ComboBox<?>) node("new-track")).getEditor().setText("Home field"));
    touch("new-start");
    assertThat(editor.present().entries()).hasAtLeastOneElementOfType(Entry.Session.class);
    assertThat(Timeline.of(editor.present(), bike().id()).sessions().get(0).start().placed())
        .extracting(Placed::reading)
        .isEqualTo(timeline.now().placed().stream().map(Placed::reading).toList());
  }

  @Test
  void withoutANameNothingIsMadeAndItIsSaidWhere() {
    touch("start-next");
    assertThat(((Label) node("start-name-error")).getText()).isNotBlank();
    assertThat(editor.present().bikes()).isEmpty();
  }

  @Test
  void whatStandsBeyondItsStopIsSaidAtItsFieldAndTheStartGoesNoFurther() {
    type("start-name", "Blue 250");
    touch("start-next");
    type("start-FORK_COMPRESSION-now", "25");
    touch("start-next");
    assertThat(((Label) node("start-FORK_COMPRESSION-now-error")).getText())
        .isEqualTo("Fork compression cannot be 25 clicks: the most is 20 clicks.");
    type("start-FORK_COMPRESSION-most", "26");
    touch("start-next", "start-next");
    assertThat(setting(Role.FORK_COMPRESSION).scale().limits())
        .isEqualTo(
            new Limits.Stops(
                new Range(Amount.of(0, ClickUnit.CLICK), Amount.of(26, ClickUnit.CLICK))));
  }

  @Test
  void aSplitForkHasItsAdjustersInOneLegEach() {
    type("start-name", "Split 300");
    touch("start-legs-1", "start-units-1", "start-next", "start-next", "start-next");
    assertThat(setting(Role.FORK_COMPRESSION).carrier()).isEqualTo(Carrier.LEFT);
    assertThat(setting(Role.FORK_REBOUND).carrier()).isEqualTo(Carrier.RIGHT);
    assertThat(setting(Role.TUBE_ABOVE_CLAMP).scale().step().unit()).isEqualTo(Length.INCH);
    assertThat(editor.present().display().unit(Dimension.LENGTH)).isEqualTo(Length.INCH);
  }

  @Test
  void anAirForkAsksForThePressuresOfTheManual() {
    type("start-name", "Air 350");
    touch("start-fork-2", "start-next", "start-next");
    type("start-fill-now", "10.4");
    touch("start-next");
    assertThat(((Label) node("start-fill-least-error")).getText())
        .startsWith("The manual has two ends");
    type("start-fill-least", "9");
    type("start-fill-most", "10");
    touch("start-next");
    Placed air =
        Timeline.of(editor.present(), bike().id())
            .now()
            .placed(setting(Role.FORK_AIR).id())
            .orElseThrow();
    assertThat(air.how()).as("found beyond its limit, kept").isEqualTo(How.FOUND);
    assertThat(setting(Role.FORK_AIR).carrier()).isEqualTo(Carrier.LEFT);
    assertThat(bike().latestSheet().settings(Role.FORK_SPRING)).isEmpty();
  }

  @Test
  void theWholeStartIsOneStepOfUndoAndASecondBikeIsMadeBesideTheFirst() {
    type("start-name", "First");
    touch("start-next", "start-next", "start-next");
    touch("bike-new");
    type("start-name", "Second");
    touch("start-next", "start-next", "start-next");
    assertThat(editor.present().bikes())
        .extracting(Bike::name)
        .isEqualTo(List.of("First", "Second"));
    assertThat(((Label) node("bike-title")).getText()).isEqualTo("Second");
    assertThat(node("undo").getAccessibleText()).isEqualTo("Undo new bike");
    interact(editor::undo);
    assertThat(editor.present().bikes()).extracting(Bike::name).isEqualTo(List.of("First"));
    interact(editor::undo);
    assertThat(editor.present().bikes()).isEmpty();
    node("guided-start");
  }
}
