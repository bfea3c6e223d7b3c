package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.Ruler;
import rutbook.notebook.Chamber;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.ui.StripModel;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerSentence;
import rutbook.ui.controls.RulerView;

/** Every setting of the sheet with its stops, and what is on the bike now. */
final class SettingsSection extends Section {
  private static final double RULER_WIDTH = 460;
  private static final double LEAST_RULER = 96;

  private final ListAndDetail sides = new ListAndDetail();

  SettingsSection(BikeDesk desk) {
    super(desk, "settings");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    sides.otherwise(new SheetSummary(desk(), sides, this::newThing));
    List<ListAndDetail.Part> parts = new ArrayList<>();
    for (StripModel.Group group : StripModel.Group.values()) {
      List<ListAndDetail.Row> rows =
          model.sheet().settings().stream()
              .filter(setting -> StripModel.Group.of(setting.role()) == group)
              .map(setting -> row(model, setting))
              .toList();
      if (!rows.isEmpty()) {
        Label heading = Keys.label(desk().text("group." + group.name()), "group-title");
        heading.setPadding(new javafx.geometry.Insets(6, 0, 2, 10));
        parts.add(new ListAndDetail.Part(Optional.of(heading), rows));
      }
    }
    sides.show(parts);
  }

  private ListAndDetail.Row row(BikeModel model, Setting setting) {
    Optional<Chamber> chamber = model.sheet().chamber(setting);
    Reading now = model.now(setting);
    String said =
        RulerSentence.of(
            desk().desk().words(),
            desk().desk().settingWords(),
            model.sheet(),
            setting,
            now,
            List.of(desk().words().bounds(model.sheet(), setting)));
    return new ListAndDetail.Row(
        "bike-setting-" + setting.id(),
        List.of(setting, chamber),
        face(model, setting, now),
        said,
        () ->
            new SettingForm(
                desk(), Optional.of(setting), setting.role(), this::adjust, sides::close));
  }

  private Node face(BikeModel model, Setting setting, Reading now) {
    Label name = Keys.prose(setting.name(), "strong");
    Label bounds = Keys.prose(desk().words().bounds(model.sheet(), setting), "soft", "condensed");
    VBox text = new VBox(1, name, bounds);
    text.getStyleClass().add("setting-text");
    text.setAlignment(Pos.CENTER_LEFT);
    Ruler ruler = Ruler.of(model.sheet(), setting, now).in(desk().desk().settingWords().display());
    RulerView view = new RulerView(1);
    view.show(model.baseline(setting).map(ruler::withBaseline).orElse(ruler));
    view.setMinWidth(LEAST_RULER);
    view.setMaxWidth(RULER_WIDTH);
    HBox.setHgrow(view, Priority.ALWAYS);
    Label value = Keys.label(desk().words().readings().reading(setting, now), "number");
    value.setMinWidth(Region.USE_PREF_SIZE);
    if (isOutside(model, setting.id())) {
      value.getStyleClass().add("overdue");
    }
    HBox valueBox = new HBox(value);
    valueBox.setAlignment(Pos.CENTER_RIGHT);
    valueBox.getStyleClass().add("setting-value");
    HBox face = new HBox(12, text, view, valueBox);
    face.setAlignment(Pos.CENTER_LEFT);
    return face;
  }

  private static boolean isOutside(BikeModel model, SettingId id) {
    return model.outside().stream()
        .anyMatch(each -> each.isNow() && each.setting().id().equals(id));
  }

  private void adjust(Setting setting) {
    sides.open(new AdjustForm(desk(), setting, sides::close));
  }

  /** Opens the form of a setting, as a touch on its row would. */
  void open(SettingId id) {
    sides.choose("bike-setting-" + id);
  }

  @Override
  void newThing() {
    sides.open(new NewSetting(desk(), sides));
  }
}
