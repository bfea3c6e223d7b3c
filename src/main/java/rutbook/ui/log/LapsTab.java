package rutbook.ui.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.imports.Grid;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.ui.Desk;
import rutbook.ui.controls.Hint;
import rutbook.ui.controls.Keys;
import rutbook.words.ImportWords;

/** Laps of a moto: pasted from anything, told how many were read and which were not. */
final class LapsTab extends VBox {
  private final Desk desk;
  private final Consumer<List<Lap>> chosen;
  private final TextArea area = new TextArea();
  private final Label read = Keys.label("", "soft");
  private final Label bad = Keys.prose("", "error");
  private final Button take;
  private final FlowPane laps = new FlowPane(6, 6);
  private final Label summary = Keys.label("", "number");
  private Moto shown;

  /**
   * @param table opens the laps of a table for a moto
   */
  LapsTab(Desk desk, Consumer<List<Lap>> chosen, BiConsumer<MotoId, Grid> table) {
    super(10);
    this.desk = desk;
    this.chosen = chosen;
    setId("laps-tab");
    area.setId("laps-area");
    area.setPrefRowCount(4);
    area.setMinHeight(90);
    area.setAccessibleText(desk.text("laps.paste"));
    area.textProperty().addListener((text, before, now) -> look());
    bad.setId("laps-bad");
    read.setId("laps-read");
    take = Keys.mainKey("laps-take", desk.text("laps.take"), this::take);
    HBox.setHgrow(area, Priority.ALWAYS);
    Button from =
        Keys.key(
            "laps-from",
            new ImportWords(desk.phrases()).text("laps.from"),
            () -> desk.openTable(grid -> table.accept(shown.id(), grid), this::refuse));
    HBox entry = new HBox(12, area, new VBox(8, take, from));
    getChildren()
        .addAll(
            summary, laps, Keys.label(desk.text("laps.paste"), "group-title"), entry, read, bad);
  }

  void show(SessionModel.Ride ride) {
    Moto moto = ride.moto();
    boolean other = shown == null || !shown.id().equals(moto.id());
    boolean changed = other || !shown.report().laps().equals(moto.report().laps());
    shown = moto;
    if (other) {
      area.clear();
    }
    if (changed) {
      showLaps(ride);
    }
    look();
  }

  private void showLaps(SessionModel.Ride ride) {
    List<Lap> all = ride.moto().report().laps();
    laps.getChildren().clear();
    for (int i = 0; i < all.size(); i++) {
      int place = i;
      Lap lap = all.get(i);
      ToggleButton key =
          Keys.choice("lap-" + i, desk.words().lap(lap.millis()), () -> toggle(place));
      key.getStyleClass().add("number");
      key.setSelected(false);
      if (!lap.counts()) {
        key.setText(desk.words().lap(lap.millis()) + " " + desk.text("laps.dropped"));
        key.setOpacity(0.7);
      }
      key.setAccessibleText(desk.text("laps.said", i + 1, key.getText()));
      Hint.on(key, () -> desk.text(lap.counts() ? "laps.drop" : "laps.keep"));
      laps.getChildren().add(key);
    }
    if (ride.lapsThatCount() == 0) {
      summary.setText(desk.text("laps.none"));
      return;
    }
    summary.setText(
        desk.text(
            "laps.summary",
            ride.lapsThatCount(),
            desk.words().lap(ride.medianLap().orElseThrow()),
            desk.words().lap(ride.bestLap().orElseThrow())));
  }

  private void toggle(int place) {
    List<Lap> next = new ArrayList<>(shown.report().laps());
    Lap lap = next.get(place);
    Optional<String> dropped =
        lap.counts() ? Optional.of(desk.text("laps.dropped")) : Optional.empty();
    next.set(place, new Lap(lap.millis(), dropped));
    chosen.accept(next);
  }

  private void refuse(String sentence) {
    bad.setText(sentence);
    bad.setManaged(true);
    bad.setVisible(true);
  }

  private void look() {
    PastedLaps pasted = PastedLaps.of(area.getText());
    boolean empty = area.getText().isBlank();
    read.setText(empty ? "" : desk.text("laps.read", pasted.laps().size()));
    bad.setText(
        pasted.bad().isEmpty() ? "" : desk.text("laps.bad", String.join(", ", pasted.bad())));
    bad.setManaged(!pasted.bad().isEmpty());
    bad.setVisible(!pasted.bad().isEmpty());
    take.setDisable(pasted.laps().isEmpty());
  }

  /** Adds what was read; what was not stays to be mended. */
  private void take() {
    PastedLaps pasted = PastedLaps.of(area.getText());
    List<Lap> next = new ArrayList<>(shown.report().laps());
    next.addAll(pasted.laps());
    chosen.accept(next);
    area.setText(String.join("\n", pasted.bad()));
  }
}
