package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.ScrollEvent;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;

/** Counting clicks in to closed by touch, key and wheel, until the reading is written. */
class CountAlongTest extends WindowTest {
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

  private void wheel(Node on, double turn) {
    interact(
        () ->
            on.fireEvent(
                new ScrollEvent(
                    ScrollEvent.SCROLL,
                    0,
                    0,
                    0,
                    0,
                    false,
                    false,
                    false,
                    false,
                    false,
                    false,
                    0,
                    turn,
                    0,
                    turn,
                    ScrollEvent.HorizontalTextScrollUnits.NONE,
                    0,
                    ScrollEvent.VerticalTextScrollUnits.NONE,
                    0,
                    0,
                    null)));
  }

  @Test
  void everyTouchKeyAndNotchIsAClickAndOneCanBeTakenBack() {
    go(new Place.Session(SESSION));
    touch("session-check");
    touch("count-shock-rebound-LEFT");
    Node control = node("count-along");
    for (int i = 0; i < 4; i++) {
      touch("count-plus");
      press(node("count-plus"), KeyCode.PLUS);
      wheel(control, 40);
    }
    assertThat(text("count-number")).isEqualTo("12");
    press(node("count-plus"), KeyCode.BACK_SPACE);
    wheel(control, -40);
    assertThat(text("count-number")).isEqualTo("10");
    touch("count-done");
    touch("check-all");
    touch("check-write");
    assertThat(((Entry.Session) editor.present().entry(SESSION).orElseThrow()).end())
        .satisfies(
            end -> assertThat(end.reading(Bench.SHOCK_REBOUND)).contains(Reading.of(clicks(10))));
  }

  @Test
  void aCountThatIsStoppedWritesNothing() {
    Notebook before = editor.present();
    go(new Place.Session(SESSION));
    touch("session-check");
    touch("count-shock-rebound-LEFT");
    touch("count-plus");
    touch("count-cancel");
    assertThat(editor.present()).isSameAs(before);
    assertThat(scene().lookup("#count-along")).isNull();
  }
}
