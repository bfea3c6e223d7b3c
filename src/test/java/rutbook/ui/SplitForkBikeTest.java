package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Sheet;
import rutbook.samples.Samples;
import rutbook.ui.controls.RowKey;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Volume;

/** A split-function fork in US units: its legs apart, its numbers as they were written. */
class SplitForkBikeTest extends ApplicationTest {
  private Editor editor;
  private Scene scene;

  @Override
  public void start(Stage stage) {
    editor = new Editor(Samples.splitFork());
    Window.start(stage, StandIns.services(editor, LocalDate.of(2026, 6, 1)))
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

  private Sheet sheet() {
    return editor.present().bikes().get(0).latestSheet();
  }

  @Test
  void eachLegIsNamedAndAReversedAdjusterSaysHowItCounts() {
    assertThat(node("bike-setting-fork-compression").getAccessibleText())
        .contains("0 to 28 clicks in from open · left leg");
    assertThat(node("bike-setting-fork-rebound").getAccessibleText())
        .contains("0 to 28 clicks out · right leg");
  }

  @Test
  void aFillStaysInFluidOuncesAsItWasWritten() {
    touch("bike-setting-left-oil");
    assertThat(((TextField) node("chamber-least")).getText()).isEqualTo("16.5 fl oz");
    type("chamber-least", "480 ml");
    touch("setting-form-save", "which-correct");
    assertThat(sheet().chambers().get(sheet().chambers().size() - 1).limits().least())
        .isEqualTo(Amount.of(480, Volume.MILLILITRE));
    assertThat(sheet().chambers().get(sheet().chambers().size() - 1).limits().most())
        .isEqualTo(Amount.of("19.5", Volume.US_FLUID_OUNCE));
  }

  @Test
  void anAirLegTakesAllThreeOfItsDataOrNone() {
    touch("bike-tab-fork", "fork-build", "fork-kind-2");
    type("fork-piston", "24 mm");
    touch("fork-form-save");
    assertThat(((Label) node("fork-positive-error")).getText())
        .isEqualTo("An air leg needs all three: piston, positive and negative chamber.");
    type("fork-positive", "200 mL");
    type("fork-negative", "30 mL");
    touch("fork-form-save", "which-correct");
    assertThat(sheet().parts().fork().kind()).isEqualTo(ForkKind.AIR);
    assertThat(sheet().parts().fork().airLeg().orElseThrow().pistonDiameter())
        .isEqualTo(Amount.of(24, Length.MILLIMETRE));
  }
}
