package rutbook.ui.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.drawing.Ruler;
import rutbook.edit.SessionStart;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Track;
import rutbook.notebook.Work;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.StartAtTrack;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerView;
import rutbook.ui.controls.Scrolling;
import rutbook.words.ReasoningWords;
import rutbook.words.StartWords;

/**
 * What to start with at a track, setting by setting against how the bike was left: what differs has
 * its ruler, where it comes from, and a key that takes it along or leaves it.
 */
final class StartChoice extends VBox {
  private final Desk desk;
  private final Bike bike;
  private final VBox rows = new VBox(8);
  private final Map<SettingId, ToggleButton> takes = new LinkedHashMap<>();
  private final Map<SettingId, Reading> wanted = new LinkedHashMap<>();

  StartChoice(Desk desk, Bike bike) {
    super(8);
    this.desk = desk;
    this.bike = bike;
    setId("start-choice");
    rows.setPadding(new Insets(0, 16, 0, 0));
    ScrollPane scroll = Scrolling.of(rows);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
  }

  /** Works it out for a track and a day. */
  void show(Track track, LocalDate day) {
    Notebook notebook = desk.notebook();
    RuleBook rules = desk.rules();
    desk.background()
        .run(
            "start at a track",
            () -> StartAtTrack.of(notebook, bike.id(), track, Conditions.NOT_NOTED, rules),
            start -> draw(start, track, day),
            fault -> {
              throw new IllegalStateException(fault);
            });
  }

  private void draw(StartAtTrack start, Track track, LocalDate day) {
    StartWords words = new StartWords(desk.phrases());
    takes.clear();
    wanted.clear();
    start.settings().forEach(from -> wanted.put(from.setting().id(), from.reading()));
    List<Change> changes = SessionStart.changes(desk.notebook(), bike, day, wanted);
    Setup left = SessionStart.asLeft(desk.notebook(), bike, day);
    List<Node> shown = new ArrayList<>();
    Label like = Keys.prose(words.like(start, track, desk.notebook().shelf()), "strong");
    like.setId("start-like");
    shown.add(like);
    for (StartAtTrack.From from : start.settings()) {
      changes.stream()
          .filter(change -> change.setting().equals(from.setting().id()))
          .forEach(change -> shown.add(row(from, left, words)));
    }
    int same = left.placed().size() - takes.size();
    shown.add(Keys.prose(desk.text("new.start.same", takes.size(), same), "soft"));
    if (start.like().isPresent()) {
      shown.add(Keys.prose(words.how(), "soft"));
    }
    if (!takes.isEmpty()) {
      shown.add(Keys.prose(words.caution(), "soft"));
    }
    rows.getChildren().setAll(shown);
  }

  /** Work that is done at the track or in the paddock goes along unless the rider leaves it. */
  private Node row(StartAtTrack.From from, Setup left, StartWords words) {
    Setting setting = from.setting();
    Reading now = SessionModel.reading(left, setting);
    String name = desk.phrases().safe(setting.name());
    ToggleButton take = new ToggleButton(desk.text("new.start.take"));
    take.setId("start-take-" + setting.id().text());
    take.getStyleClass().setAll("toggle-button", "key");
    take.setSelected(setting.work() == Work.TRACKSIDE || setting.work() == Work.PADDOCK);
    take.setAccessibleText(
        desk.text(
            "new.start.take.said", name, desk.settingWords().change(setting, now, from.reading())));
    take.setMinWidth(USE_PREF_SIZE);
    takes.put(setting.id(), take);
    RulerView ruler = new RulerView(desk.settingWords().numerals(), 1);
    ruler.show(
        Ruler.of(bike.latestSheet(), setting, now)
            .withProposal(from.reading())
            .in(desk.notebook().display()));
    ruler.setMinHeight(USE_PREF_SIZE);
    ruler.setPrefWidth(300);
    ruler.setMinWidth(160);
    Label change = Keys.prose(desk.settingWords().change(setting, now, from.reading()), "strong");
    Label reason =
        Keys.prose(
            desk.text(
                "new.start.reason",
                words.basis(from),
                new ReasoningWords(desk.phrases()).work(setting.work())),
            "soft",
            "condensed");
    VBox text = new VBox(1, Keys.prose(name), change, reason);
    text.setMinWidth(220);
    HBox.setHgrow(text, Priority.ALWAYS);
    text.setMaxWidth(Double.MAX_VALUE);
    HBox row = new HBox(14, text, ruler, take);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  /** What is to be moved before the first moto: what is taken along. */
  List<Change> taken(LocalDate day) {
    Map<SettingId, Reading> chosen = new LinkedHashMap<>(wanted);
    chosen
        .keySet()
        .removeIf(
            id -> !Optional.ofNullable(takes.get(id)).filter(ToggleButton::isSelected).isPresent());
    return SessionStart.changes(desk.notebook(), bike, day, chosen);
  }
}
