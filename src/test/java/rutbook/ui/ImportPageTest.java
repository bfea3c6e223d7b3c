package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.imports.CsvText;
import rutbook.imports.DayOrder;
import rutbook.imports.Grid;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;

/** Tables of other programs on their pages: asked, changed, taken, undone, remembered. */
class ImportPageTest extends WindowTest {
  static final String LAPS =
      """
      Pos;No.;Name;Lap;Lap time;Sector 1;Sector 2
      1;17;Imke Adler;1;2:01,400;1:00,200;1:01,200
      1;17;Imke Adler;2;1:52,310;0:56,110;0:56,200
      2;4;Jo Fenn;1;2:04,000;1:02,000;1:02,000
      2;4;Jo Fenn;2;pit;;
      1;17;Imke Adler;3;1:51,900;0:55,900;0:56,000
      """;

  static final String SETUPS =
      """
      Date,Track,Fork compression,Fork rebound,Remarks
      03/08/2026,Upper Moor,14,11,dry
      04/08/2026,Upper Moor,99,soft,
      05/08/2026,,12,12,
      """;

  private static final Notebook SEASON = Samples.season();
  private static final BikeId BIKE = SEASON.bikes().get(0).id();

  private final InMemory outside = new InMemory();

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.empty();
  }

  @Override
  public void start(Stage first) {
    stage = first;
    editor = new Editor(SEASON);
    window =
        Window.start(
            stage, StandIns.services(editor, CoachPictures.TODAY, look(1280, 800), outside));
  }

  static Grid grid(String text) {
    return CsvText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private Entry.Session latest() {
    return Timeline.of(editor.present(), BIKE).latest(Entry.Session.class).orElseThrow();
  }

  @SuppressWarnings("unchecked") // the test knows what it chooses from
  private <T> void choose(String id, T value) {
    Node box = node(id);
    interact(
        () -> {
          ((ComboBox<T>) box).setValue(value);
          box.fireEvent(new javafx.event.ActionEvent());
        });
    settle();
  }

  private String found() {
    StringBuilder all = new StringBuilder();
    node("import-found")
        .lookupAll(".label")
        .forEach(each -> all.append(((Labeled) each).getText()).append('\n'));
    return all.toString();
  }

  @Test
  void lapsAreAskedForTakenAndUndoneInOneStep() {
    Moto moto = latest().motos().get(0);
    outside.files.put(Path.of("laps.csv"), LAPS.getBytes(StandardCharsets.UTF_8));
    outside.picked = Optional.of(Path.of("laps.csv"));
    go(new Place.Session(latest().id()));
    touch("tab-laps");
    touch("laps-from");
    assertThat(node("import-take").isDisabled()).as("whose is not guessed").isTrue();
    assertThat(text("import-heading")).contains("several riders");
    choose("import-rider", "Imke Adler");
    assertThat(text("import-heading")).isEqualTo("3 laps would be taken");
    assertThat(found()).contains("Line 4: it is a lap of Jo Fenn").contains("Line 2: 2:01.4");
    int last = latest().motos().size() - 1;
    int before = latest().motos().get(last).report().laps().size();
    touch("import-take");
    assertThat(latest().motos().get(last).report().laps())
        .hasSize(before + 3)
        .endsWith(Lap.of(121_400), Lap.of(112_310), Lap.of(111_900));
    assertThat(outside.mappings).hasSize(1);
    interact(editor::undo);
    assertThat(editor.present()).isEqualTo(SEASON);
    assertThat(moto).isNotNull();
  }

  @Test
  void setupsAreToldRowByRowAndTheOrderOfDaysIsAsked() {
    go(new Place.ImportSetups(grid(SETUPS)));
    assertThat(text("import-heading")).contains("say what comes first");
    assertThat(node("import-take").isDisabled()).isTrue();
    choose("import-order", DayOrder.DAY_FIRST);
    assertThat(found())
        .contains("Line 3, kept as found: Fork compression cannot be 99 clicks")
        .contains("Line 3, Fork rebound: “soft” is no number");
    touch("import-take");
    assertThat(Timeline.of(editor.present(), BIKE).sessions())
        .hasSize(Timeline.of(SEASON, BIKE).sessions().size() + 3);
    interact(editor::undo);
    assertThat(editor.present()).isEqualTo(SEASON);
    go(new Place.ImportSetups(grid(SETUPS)));
    assertThat(text("import-heading")).as("remembered").contains("3 setups would be taken");
  }

  @Test
  void aFileThatIsNoTableIsASentence() {
    outside.files.put(Path.of("laps.csv"), new byte[] {0, 1, 2, 0});
    outside.picked = Optional.of(Path.of("laps.csv"));
    go(new Place.Session(latest().id()));
    touch("tab-laps");
    touch("laps-from");
    assertThat(text("laps-bad")).contains("This file is no text");
    assertThat(editor.present()).isEqualTo(SEASON);
  }
}
