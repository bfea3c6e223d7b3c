package rutbook.ui.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.compare.SettingHistory;
import rutbook.drawing.StepLine;
import rutbook.notebook.Entry;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.ui.Desk;
import rutbook.ui.PictureKey;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RowKey;
import rutbook.ui.fx.DrawingView;
import rutbook.words.CompareWords;
import rutbook.words.ComparedWords;
import rutbook.words.SeasonWords;

/**
 * How each setting moved over the season: one as a large step line that leads to its sessions, all
 * that ever moved as small ones, of which a touch makes one the large one.
 */
final class SeasonView extends VBox {
  private static final String CHOSEN = "compare.season";
  private static final double SMALL_WIDTH = 290;
  private static final double SMALL_HEIGHT = 92;
  private static final double WIDE = 74;
  private static final double HIGH = 260;

  private final Desk desk;
  private final Timeline timeline;
  private final LocalDate end;
  private final SeasonWords words;
  private final ComparedWords said;
  private final CompareWords names;
  private final VBox large = new VBox(4);
  private final FlowPane small = new FlowPane(8, 8);
  private final List<SettingHistory> moved;

  SeasonView(Desk desk, Timeline timeline, List<SettingHistory> histories) {
    super(14);
    this.desk = desk;
    this.timeline = timeline;
    this.end = timeline.lastDay().filter(last -> last.isAfter(desk.today())).orElse(desk.today());
    this.words = new SeasonWords(desk.phrases());
    this.said = new ComparedWords(desk.phrases());
    this.names = new CompareWords(desk.phrases());
    this.moved = histories.stream().filter(history -> words.drawn(history).size() > 1).toList();
    setId("compare-season");
    if (!moved.isEmpty()) {
      getChildren().addAll(large, small);
      show(kept().orElse(moved.get(0)));
    }
    still(histories).ifPresent(getChildren()::add);
  }

  private Optional<SettingHistory> kept() {
    return desk.kept(CHOSEN)
        .flatMap(id -> moved.stream().filter(each -> id(each).text().equals(id)).findFirst());
  }

  private static SettingId id(SettingHistory history) {
    return history.setting().id();
  }

  private String name(SettingHistory history) {
    return names.setting(history.setting());
  }

  private void show(SettingHistory history) {
    List<SettingHistory.Step> steps = words.drawn(history);
    Label at = Keys.prose("", "condensed");
    at.setId("season-at");
    SettingLine line =
        new SettingLine(
            words.season(history, end),
            steps.stream().map(step -> said.step(history, step)).toList(),
            place -> at.setText(said.step(history, steps.get(place))),
            place -> open(steps.get(place)));
    large
        .getChildren()
        .setAll(
            Keys.label(name(history), "card-title"),
            line,
            at,
            Keys.prose(desk.text("compare.season.legend"), "soft", "condensed"));
    List<Node> keys = new ArrayList<>();
    for (SettingHistory each : moved) {
      RowKey key = key(each);
      key.select(each == history);
      keys.add(key);
    }
    small.getChildren().setAll(keys);
  }

  /** The large line on a sheet; empty when nothing ever moved. */
  Optional<PictureKey.Picture> picture() {
    if (moved.isEmpty()) {
      return Optional.empty();
    }
    SettingHistory history = kept().orElse(moved.get(0));
    String title =
        desk.text(
            "picture.season",
            timeline.bike().name(),
            name(history),
            desk.phrases().days().day(end));
    StepLine line = new StepLine(words.season(history, end), desk.em() * WIDE, HIGH);
    return Optional.of(
        new PictureKey.Picture(
            title,
            PictureKey.sheet(
                title,
                PictureKey.drawn(line.drawing()),
                Keys.prose(desk.text("compare.season.marks"), "soft", "condensed"))));
  }

  private RowKey key(SettingHistory history) {
    List<SettingHistory.Step> steps = words.drawn(history);
    DrawingView drawn = new DrawingView();
    drawn.show(new StepLine(words.season(history, end), SMALL_WIDTH, SMALL_HEIGHT).drawing());
    drawn.setMinSize(SMALL_WIDTH, SMALL_HEIGHT);
    drawn.setMouseTransparent(true);
    VBox face = new VBox(2, Keys.label(name(history), "strong"), drawn);
    RowKey key = new RowKey("season-" + id(history));
    key.show(
        face,
        name(history) + ". " + said.step(history, steps.get(steps.size() - 1)),
        () -> choose(history));
    return key;
  }

  private void choose(SettingHistory history) {
    desk.keep(CHOSEN, id(history).text());
    show(history);
    lookup("#season-line").requestFocus();
  }

  /** To the session in which it was moved, or the rebuild; anything else is in the Log. */
  private void open(SettingHistory.Step step) {
    Entry entry =
        timeline.entries().stream()
            .filter(each -> each.id().equals(step.entry()))
            .findFirst()
            .orElseThrow();
    if (entry instanceof Entry.Session) {
      desk.go(new Place.Session(entry.id()));
    } else {
      desk.go(entry instanceof Entry.RebuildJob ? new Place.Job(entry.id()) : new Place.Log());
    }
  }

  private Optional<Node> still(List<SettingHistory> histories) {
    String list =
        histories.stream()
            .filter(history -> !moved.contains(history))
            .map(this::name)
            .collect(Collectors.joining(", "));
    return list.isEmpty()
        ? Optional.empty()
        : Optional.of(Keys.prose(desk.text("compare.season.still", list), "soft"));
  }
}
