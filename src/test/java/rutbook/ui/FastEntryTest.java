package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;

/** A rider back from a moto says what the bike did: in few touches, and by keyboard alone. */
class FastEntryTest extends WindowTest {
  private static final EntryId SESSION = new EntryId("s-1");
  private static final Feel KICKS = Feel.of(End.REAR, Section.BRAKING_BUMPS, Symptom.KICKS, 3);
  private static final Feel HARSH = Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 2);
  private static final Feel TUCKS = Feel.of(End.FRONT, Section.MID_CORNER, Symptom.TUCKS, 1);

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
                    List.of(Bench.moto("m-1", List.of(), List.of(KICKS, HARSH, TUCKS))))));
  }

  private Moto newest() {
    List<Moto> motos = ((Entry.Session) editor.present().entry(SESSION).orElseThrow()).motos();
    return motos.get(motos.size() - 1);
  }

  @Test
  void threeSymptomsAndTrustAreUpdatedInAtMostEightTouches() {
    go(new Place.Session(SESSION));
    touch("session-add");
    touch("still-0-0");
    touch("still-1-1");
    touch("still-2-1");
    touch("trust-7");
    assertThat(newest().report().feel())
        .containsExactly(KICKS.withSeverity(0), HARSH.withSeverity(1), TUCKS.withSeverity(1));
    assertThat(newest().report().trust()).isEqualTo(OptionalInt.of(7));
    assertThat(touches).isLessThanOrEqualTo(8);
  }

  @Test
  void aNewSymptomTakesThreeTouchesEvenInASmallWindow() {
    interact(
        () -> {
          stage.setWidth(1024);
          stage.setHeight(640);
        });
    go(new Place.Session(SESSION));
    touch("section-CORNER_ENTRY");
    touch("symptom-DIVES");
    assertThat(isInSight("severity-5")).isTrue();
    touch("severity-4");
    assertThat(touches).isEqualTo(3);
    assertThat(newest().report().feel(new Feel.Key(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES)))
        .contains(Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, 4));
    touch("feel-elsewhere");
    assertThat(node("section-WHOOPS").isVisible()).isTrue();
  }

  @Test
  void whatBotheredBeforeIsInSightInASmallWindow() {
    interact(
        () -> {
          stage.setWidth(1024);
          stage.setHeight(640);
        });
    go(new Place.Session(SESSION));
    touch("session-add");
    assertThat(List.of("trust-1", "still-0-0", "still-1-5", "still-2-5", "chain-start", "moto-2"))
        .allMatch(this::isInSight);
  }

  @Test
  void touchingTheSameAgainChangesNothingAndStaysChosen() {
    go(new Place.Session(SESSION));
    touch("session-add");
    touch("still-0-3");
    Notebook before = editor.present();
    touch("still-0-3");
    assertThat(editor.present()).isSameAs(before);
    assertThat(((javafx.scene.control.ToggleButton) node("still-0-3")).isSelected()).isTrue();
  }

  @Test
  void everythingIsEnteredByKeyboardAlone() {
    go(new Place.Session(SESSION));
    push(KeyCode.CONTROL, KeyCode.N);
    settle();
    assertThat(scene().getFocusOwner().getId()).isEqualTo("section-STRAIGHT");
    push(KeyCode.RIGHT);
    push(KeyCode.SPACE);
    toSymptoms();
    push(KeyCode.RIGHT);
    push(KeyCode.SPACE);
    push(KeyCode.DIGIT2);
    settle();
    assertThat(newest().report().feel())
        .containsExactly(Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.DIVES, 2));
    tabTo("still-0-0");
    push(KeyCode.DIGIT0);
    push(KeyCode.TAB);
    push(KeyCode.DIGIT1);
    settle();
    backTo("trust-1");
    push(KeyCode.DIGIT8);
    settle();
    assertThat(newest().report().feel()).contains(KICKS.withSeverity(0), HARSH.withSeverity(1));
    assertThat(newest().report().trust()).isEqualTo(OptionalInt.of(8));
  }

  /** Where the lap folds away, the focus is there already; else it is some presses of Tab away. */
  private void toSymptoms() {
    settle();
    for (int i = 0; i < 4 && !focused().startsWith("symptom-"); i++) {
      push(KeyCode.TAB);
    }
    assertThat(focused()).startsWith("symptom-");
  }

  private String focused() {
    return String.valueOf(scene().getFocusOwner().getId());
  }

  private void tabTo(String id) {
    List<String> passed = new ArrayList<>();
    while (!focused().equals(id)) {
      passed.add(focused());
      assertThat(passed).as("on the way to " + id).hasSizeLessThan(30);
      push(KeyCode.TAB);
    }
  }

  /** Trust stands above: a few presses back, instead of once around the window. */
  private void backTo(String id) {
    List<String> passed = new ArrayList<>();
    while (!focused().equals(id)) {
      passed.add(focused());
      assertThat(passed).as("on the way back to " + id).hasSizeLessThan(10);
      push(KeyCode.SHIFT, KeyCode.TAB);
    }
  }

  @Test
  void everyKeyThatGlovesComeOffForIsAtLeast44PixelsLarge() {
    go(new Place.Session(SESSION));
    touch("section-CORNER_ENTRY");
    touch("symptom-DIVES");
    touch("severity-3");
    for (String tab : List.of("tab-feel", "tab-changes", "tab-laps", "tab-notes", "tab-grid")) {
      touch(tab);
      assertKeysAreLarge();
    }
    touch("session-check");
    assertKeysAreLarge();
  }

  private void assertKeysAreLarge() {
    for (Node node : scene().lookup("#session-page").lookupAll(".key")) {
      Bounds size = node.getLayoutBounds();
      if (node instanceof ButtonBase && isShown(node)) {
        assertThat(Math.min(size.getWidth(), size.getHeight()))
            .as("#" + node.getId() + " " + size)
            .isGreaterThanOrEqualTo(43.5);
      }
    }
  }

  private static boolean isShown(Node node) {
    for (Node above = node; above != null; above = above.getParent()) {
      if (!above.isVisible()) {
        return false;
      }
    }
    return true;
  }
}
