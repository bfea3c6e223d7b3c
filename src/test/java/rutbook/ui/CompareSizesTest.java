package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import rutbook.bench.ManySessions;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;

/** The Compare page with one moto, and with a thousand sessions. */
class CompareSizesTest extends WindowTest {
  private static final int SESSIONS = 1000;

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.empty();
  }

  private void show(Notebook notebook) {
    interact(() -> open(notebook));
    go(new Place.Compare());
  }

  private String said(String id) {
    Node part = scene().lookup("#" + id);
    return part == null
        ? ""
        : part.lookupAll(".label").stream()
            .map(label -> ((Label) label).getText())
            .collect(Collectors.joining("\n"));
  }

  private void choose(String side, String typed) {
    touch(side);
    interact(() -> ((TextField) node("compare-search")).setText(typed));
    press(node("compare-search"), KeyCode.ENTER);
  }

  private static Notebook oneMoto() {
    Change change = Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(Bench.clicks(14)));
    return Bench.notebook()
        .with(
            Bench.session(
                "s1",
                Bench.SPRING.plusDays(6),
                Bench.HOLLOW,
                Bench.setup(),
                List.of(Bench.moto("m1", List.of(change), List.of()))));
  }

  @Test
  void oneMotoIsComparedWithTheBaselineAndWithItself() {
    show(oneMoto());
    assertThat(text("compare-from")).startsWith("Baseline of");
    assertThat(text("compare-to")).isEqualTo("On the bike now");
    assertThat(said("compare-settings")).contains("12 → 14 out (2 clicks softer)");
    assertThat(said("compare-laps")).contains("No laps to compare.");
    assertThat(said("compare-tracks")).isEmpty();
    choose("compare-from", "moto 1");
    assertThat(said("compare-settings")).contains("Nothing differs.");
    assertThat(said("compare-explained")).isEmpty();
    touch("compare-season-key");
    assertThat(said("compare-season")).contains("Fork compression", "Never moved: Fork spring");
  }

  @Test
  void aThousandSessionsAreChosenFromComparedAndDrawn() {
    show(ManySessions.of(SESSIONS, 1));
    assertThat(said("compare-settings")).isNotEmpty();
    touch("compare-to");
    assertThat(((ListView<?>) node("compare-options")).getItems().size())
        .isGreaterThan(2 * SESSIONS);
    press(node("compare-search"), KeyCode.ESCAPE);
    assertThat(node("compare-list").isVisible()).isFalse();
    String before = text("compare-from");
    touch("compare-swap");
    assertThat(text("compare-to")).isEqualTo(before);
    touch("compare-season-key");
    assertThat(node("season-line")).isNotNull();
    assertThat(text("season-at")).contains(": ");
  }
}
