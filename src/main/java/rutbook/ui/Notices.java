package rutbook.ui;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Keys;

/**
 * What is told between strip and page for as long as it holds: that something is going on, that
 * nothing is safe on the disk, that this is only a sample.
 */
final class Notices extends VBox {
  private final Desk desk;
  private final NotebookFiles files;
  private final FileMenu menu;
  private final HBox working = new HBox(12);
  private Optional<String> trouble = Optional.empty();

  /** Of a disk that is slow or takes no backup: nothing to be done at once. */
  private Optional<String> remark = Optional.empty();

  private boolean sampleIsDismissed;

  Notices(Desk desk, NotebookFiles files, FileMenu menu) {
    super(6);
    this.desk = desk;
    this.files = files;
    this.menu = menu;
    setId("notices");
    setMinHeight(USE_PREF_SIZE);
    ProgressBar bar = new ProgressBar();
    bar.setAccessibleText(desk.text("busy"));
    working.setId("working");
    working.setAlignment(Pos.CENTER_LEFT);
    working.getChildren().addAll(bar, Keys.label(desk.text("busy"), "soft"));
    desk.background().busy().addListener((busy, before, now) -> redraw());
    redraw();
  }

  void show(SaveLight.State state) {
    if (state instanceof SaveLight.State.Failed failed) {
      trouble = Optional.of(failed.sentence());
    } else if (state instanceof SaveLight.State.Saved saved) {
      trouble = Optional.empty();
      remark = saved.noBackup();
    } else if (state instanceof SaveLight.State.Waiting waiting && waiting.slow().isPresent()) {
      remark = waiting.slow();
    }
    redraw();
  }

  /** Another notebook is open. */
  void redraw() {
    getChildren().clear();
    if (desk.background().busy().get()) {
      getChildren().add(working);
    }
    trouble
        .map(this::trouble)
        .or(() -> remark.map(Notices::remark))
        .ifPresent(notice -> getChildren().add(notice));
    if (files.isSample() && !sampleIsDismissed) {
      getChildren().add(sample());
    }
    setManaged(!getChildren().isEmpty());
    setVisible(!getChildren().isEmpty());
  }

  private Node trouble(String sentence) {
    return notice(
        "notice-trouble",
        Keys.prose(desk.text("saved.failed.more", sentence), "error"),
        List.of(
            Keys.key("notice-settle", desk.text("saved.settle"), menu::settle),
            Keys.key("notice-copy", desk.text("menu.copy"), menu::copy)));
  }

  private static Node remark(String sentence) {
    return notice("notice-remark", Keys.prose(sentence), List.of());
  }

  private Node sample() {
    return notice(
        "notice-sample",
        Keys.prose(desk.text("sample.told")),
        List.of(
            Keys.mainKey("sample-own", desk.text("sample.own"), menu::startNew),
            Keys.key(
                "sample-look",
                desk.text("sample.look"),
                () -> {
                  sampleIsDismissed = true;
                  redraw();
                })));
  }

  private static Node notice(String id, Label text, List<? extends Node> keys) {
    HBox.setHgrow(text, Priority.ALWAYS);
    text.setMaxWidth(Double.MAX_VALUE);
    HBox row = new HBox(10, text);
    row.getChildren().addAll(keys);
    row.setId(id);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("caution");
    return row;
  }
}
