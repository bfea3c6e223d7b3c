package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Bench;
import rutbook.notebook.Bike;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EventKind;
import rutbook.notebook.FaultSeen;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Notebook;
import rutbook.notebook.Parts;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.SagLengths;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Tightening;
import rutbook.notebook.Timeline;
import rutbook.ui.controls.RowKey;
import rutbook.units.Amount;
import rutbook.units.SpringRate;

/** The Bike page by touch, and what it did to the notebook. */
class BikePageTest extends ApplicationTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 16);
  private Editor editor;
  private Scene scene;
  private Window window;

  @Override
  public void start(Stage stage) {
    Notebook notebook =
        Bench.notebook()
            .with(
                Bench.session(
                    "s-1", LocalDate.of(2026, 5, 9), Bench.HOLLOW, Bench.setup(), List.of()));
    editor = new Editor(notebook);
    window = Window.start(stage, StandIns.services(editor, TODAY));
    scene = stage.getScene();
    open(Place.BikePart.SETTINGS);
  }

  private void open(Place.BikePart part) {
    window.go(new Place.Bike(part));
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
      interact(
          () -> {
            Node node = node(id);
            if (node instanceof RowKey row) {
              row.fire();
            } else {
              ((ButtonBase) node).fire();
            }
          });
    }
  }

  private void type(String id, String text) {
    interact(() -> ((TextField) node(id)).setText(text));
  }

  private String said(String id) {
    return ((Label) node(id)).getText();
  }

  private Bike bike() {
    return editor.present().bikes().get(0);
  }

  private Setting compression(Sheet sheet) {
    return sheet.setting(Bench.FORK_COMPRESSION).orElseThrow();
  }

  private static Range clicks(int least, int most) {
    return new Range(Bench.clicks(least), Bench.clicks(most));
  }

  @Test
  void stopsThatCrossAreRefusedUnderTheFieldAndNothingTypedIsLost() {
    touch("bike-setting-fork-compression");
    type("setting-least", "30");
    touch("setting-form-save");
    assertThat(said("setting-most-error"))
        .isEqualTo("The least, 30 clicks, is above the most, 22 clicks.");
    assertThat(((TextField) node("setting-least")).getText()).isEqualTo("30");
    assertThat(bike().sheets()).containsExactly(Bench.sheet());
  }

  @Test
  void narrowerStopsAskWhichSheetAndANewOneListsWhatFallsOutside() {
    touch("bike-setting-fork-compression");
    type("setting-most", "10");
    touch("setting-form-save");
    assertThat(bike().sheets()).hasSize(1);
    assertThat(said("which-outside")).contains("On the bike now: Fork compression 12 out");
    touch("which-new");
    assertThat(bike().sheets()).hasSize(2);
    assertThat(bike().latestSheet().from()).isEqualTo(TODAY);
    assertThat(bike().latestSheet().limits(compression(bike().latestSheet())))
        .isEqualTo(clicks(0, 10));
    assertThat(bike().sheets().get(0)).isEqualTo(Bench.sheet());
    assertThat(((javafx.scene.layout.VBox) node("outside-list")).getChildren()).hasSize(3);
    interact(editor::undo);
    assertThat(bike().sheets()).containsExactly(Bench.sheet());
  }

  @Test
  void aCorrectionThatWouldPutAnOlderRideOutsideIsRefusedByTheNameOfTheRide() {
    touch("bike-setting-fork-compression");
    type("setting-most", "10");
    touch("setting-form-save", "which-correct");
    assertThat(said("setting-form-error"))
        .contains("Baseline of")
        .contains("Fork compression cannot be 12 clicks: the most is 10 clicks.");
    assertThat(bike().sheets()).containsExactly(Bench.sheet());
  }

  @Test
  void aNewSheetNeverTakesTheDayOfAnother() {
    touch("bike-setting-fork-compression");
    type("setting-most", "16");
    touch("setting-form-save");
    type("which-from", Bench.SPRING.toString());
    touch("which-new");
    assertThat(said("which-from-error")).startsWith("A new sheet begins after this one");
    assertThat(bike().sheets()).containsExactly(Bench.sheet());
  }

  @Test
  void aSettingAddedByHandIsOnTheSheetAndUnknownInOlderRides() {
    touch("add-setting", "new-setting-FORK_PRELOAD");
    touch("setting-form-save", "which-correct");
    Setting added = bike().latestSheet().settings().get(Bench.sheet().settings().size());
    assertThat(added.name()).isEqualTo("Fork preload");
    assertThat(
            Timeline.of(editor.present(), bike().id())
                .now()
                .reading(added.id())
                .orElseThrow()
                .isKnown())
        .isFalse();
  }

  @Test
  void aFillIsBoundedByItsChamber() {
    touch("bike-setting-fork-oil");
    type("chamber-most", "400 mL");
    type("chamber-nominal", "500");
    touch("setting-form-save");
    assertThat(said("chamber-nominal-error")).contains("500 mL");
    type("chamber-nominal", "340");
    touch("setting-form-save", "which-correct");
    assertThat(bike().latestSheet().chamber(Bench.OUTER).orElseThrow().limits())
        .isEqualTo(new Range(Bench.ml("300"), Bench.ml("400")));
    assertThat(bike().latestSheet().chamber(Bench.OUTER).orElseThrow().nominal())
        .contains(Bench.ml("340"));
  }

  @Test
  void aTorqueNeedsThePlaceWhereItWasRead() {
    interact(() -> open(Place.BikePart.TORQUES));
    touch("torque-add");
    type("torque-amount", "18 ft-lb");
    touch("torque-form-save");
    assertThat(said("torque-source-error")).isNotBlank();
    type("torque-source", "manual, page 3-9");
    touch("torque-form-save");
    List<Tightening> torques = bike().latestSheet().torques();
    assertThat(torques.get(torques.size() - 1).amount().toString()).isEqualTo("18 lbf·ft");
    assertThat(torques.get(torques.size() - 1).source()).isEqualTo("manual, page 3-9");
  }

  @Test
  void threeLengthsGiveRaceSagAndShowTheFriction() {
    interact(() -> open(Place.BikePart.SHOCK));
    touch("sag-add");
    type("sag-extended", "612");
    type("sag-pushed-down", "511");
    touch("sag-form-save");
    assertThat(said("sag-lifted-up-error")).isEqualTo("All three lengths, or none.");
    type("sag-lifted-up", "505");
    assertThat(said("sag-reckoned")).isEqualTo("Race sag 104 mm, friction 6 mm");
    type("sag-free", "33");
    touch("sag-form-save");
    Entry.SagMeasured sag = Timeline.of(editor.present(), bike().id()).sag(End.REAR).orElseThrow();
    assertThat(sag.race()).contains(Bench.mm("104"));
    assertThat(sag.free()).contains(Bench.mm("33"));
    assertThat(sag.lengths())
        .contains(new SagLengths(Bench.mm("612"), Bench.mm("511"), Bench.mm("505")));
  }

  @Test
  void aFaultSeenIsNotedAndUndoneFromAnotherPage() {
    interact(() -> open(Place.BikePart.HISTORY));
    touch("event-fault");
    touch("event-form-save");
    assertThat(said("event-fault-error")).isEqualTo("Touch which fault it was.");
    touch("event-fault-0");
    type("event-what", "left fork seal weeps");
    touch("event-form-save");
    Entry.Event event =
        Timeline.of(editor.present(), bike().id()).latest(Entry.Event.class).orElseThrow();
    assertThat(event.kind()).isEqualTo(EventKind.FAULT_SEEN);
    assertThat(event.fault()).contains(FaultSeen.LEAK);
    assertThat(event.what()).isEqualTo("left fork seal weeps");
    interact(() -> window.go(new Place.Log()));
    touch("undo");
    assertThat(Timeline.of(editor.present(), bike().id()).latest(Entry.Event.class)).isEmpty();
    touch("redo");
    assertThat(Timeline.of(editor.present(), bike().id()).latest(Entry.Event.class))
        .contains(event);
  }

  @Test
  void aNewSpringIsFittedWithItsSheet() {
    touch("new-sheet");
    type("new-sheet-reason", "stiffer shock spring");
    type("put-shock-spring", "70");
    touch("new-sheet-form-save");
    assertThat(said("put-shock-spring-error")).contains("the most is 63 N/mm");
    type("put-shock-spring", "57");
    touch("new-sheet-form-save");
    assertThat(bike().latestSheet().reason()).isEqualTo("stiffer shock spring");
    Timeline timeline = Timeline.of(editor.present(), bike().id());
    assertThat(timeline.now().reading(Bench.SHOCK_SPRING))
        .contains(Reading.of(Amount.of(57, SpringRate.NEWTON_PER_MILLIMETRE)));
    interact(editor::undo);
    assertThat(bike().sheets()).containsExactly(Bench.sheet());
    assertThat(editor.present().entries()).noneMatch(Entry.Adjusted.class::isInstance);
  }

  @Test
  void aChangeBetweenRidesIsNotedLegByLegAndRefusedBeyondItsStop() {
    touch("bike-setting-fork-rebound", "setting-adjust");
    type("put-fork-rebound-left", "25");
    touch("adjust-form-save");
    assertThat(said("put-fork-rebound-left-error")).contains("the most is 20 clicks");
    type("put-fork-rebound-left", "9");
    type("put-fork-rebound-right", "9 out");
    touch("adjust-form-save");
    assertThat(Timeline.of(editor.present(), bike().id()).now().reading(Bench.FORK_REBOUND))
        .contains(Reading.bothLegs(Bench.clicks(9)));
  }

  @Test
  void theSideOfTheAxleIsOneTouch() {
    Optional<rutbook.notebook.Side> before = bike().latestSheet().pinchedFirst();
    touch("axle-side-0");
    assertThat(bike().latestSheet().pinchedFirst()).contains(rutbook.notebook.Side.LEFT);
    interact(editor::undo);
    assertThat(bike().latestSheet().pinchedFirst()).isEqualTo(before);
  }

  @Test
  void aNewBaselineIsWhatIsOnTheBike() {
    interact(() -> open(Place.BikePart.HISTORY));
    touch("baseline-add");
    type("baseline-reason", "good on loam");
    touch("baseline-form-save");
    Entry.Baseline baseline = Timeline.of(editor.present(), bike().id()).baseline().orElseThrow();
    assertThat(baseline.reason()).isEqualTo("good on loam");
    assertThat(baseline.setup()).isEqualTo(Bench.setup());
  }

  @Test
  void theForkChartIsReadByKeyAndAsATable() {
    fullFork();
    interact(() -> open(Place.BikePart.FORK));
    Node picture = node("fork-chart-picture");
    interact(
        () ->
            picture.fireEvent(
                new KeyEvent(
                    KeyEvent.KEY_PRESSED, "", "", KeyCode.END, false, false, false, false)));
    assertThat(said("fork-chart-reading"))
        .startsWith("Travel, mm 300: ")
        .contains("present, 335 mL ")
        .contains("springs alone ");
    assertThat(picture.getAccessibleText()).isEqualTo(said("fork-chart-reading"));
    touch("fork-chart-table-key");
    assertThat(scene.lookup(".word-table").getAccessibleText()).contains("300: ");
    type("fill-try", "500");
    assertThat(said("fill-try-error")).contains("the most is 380 mL");
    type("fill-try", "350");
    assertThat(((javafx.scene.layout.VBox) node("fill-try-said")).getChildren()).hasSize(4);
  }

  /** The least that a curve of the bench's fork needs besides its fills and springs. */
  private void fullFork() {
    Sheet sheet = bike().latestSheet();
    ForkParts fork = sheet.parts().fork();
    ForkParts known =
        new ForkParts(
            fork.kind(),
            Optional.of(Bench.mm("300")),
            Optional.of(Bench.mm("48")),
            fork.tubeBore(),
            fork.cartridgeRod(),
            fork.springSteel(),
            fork.airLeg(),
            fork.valving());
    Parts parts = sheet.parts();
    interact(
        () ->
            editor.make(
                new ShelfEdit.PutSheet(
                    bike().id(),
                    sheet.withParts(
                        new Parts(known, parts.shock(), parts.geometry(), parts.sag())))));
  }

  @Test
  void whatAForkCurveLacksIsSaidInItsPlace() {
    fullFork();
    Sheet sheet = bike().latestSheet();
    interact(() -> open(Place.BikePart.FORK));
    touch("fork-build");
    type("fork-travel", "");
    touch("fork-form-save");
    assertThat(bike().latestSheet().parts().fork().travel()).isEmpty();
    assertThat(scene.lookup("#fork-chart")).isNull();
    interact(editor::undo);
    assertThat(bike().latestSheet()).isEqualTo(sheet);
    node("fork-chart");
  }

  @Test
  void everyPartOpens() {
    for (Place.BikePart part : Place.BikePart.values()) {
      touch("bike-tab-" + part.name().toLowerCase(java.util.Locale.ROOT));
      node("bike-" + part.name().toLowerCase(java.util.Locale.ROOT));
    }
  }
}
