package rutbook.ui.log;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;

/** All settings with their rulers, those moved at the track first. */
final class SettingsTab extends VBox {
  private final Desk desk;
  private final GridPane grid = new GridPane();
  private final Map<SettingId, SettingRow> rows = new LinkedHashMap<>();
  private final BiConsumer<Setting, Reading> chosen;
  private List<Setting> shown = List.of();

  SettingsTab(Desk desk, String hint, BiConsumer<Setting, Reading> chosen) {
    super(10);
    this.desk = desk;
    this.chosen = chosen;
    setId("settings-tab");
    grid.setHgap(36);
    grid.setVgap(14);
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      grid.getColumnConstraints().add(half);
    }
    getChildren().addAll(Keys.prose(hint, "soft"), grid);
  }

  void show(Sheet sheet, Setup before, Setup now, Optional<Setup> baseline) {
    List<Setting> settings =
        sheet.settings().stream().sorted(Comparator.comparing(Setting::work)).toList();
    if (!settings.equals(shown)) {
      shown = settings;
      rows.clear();
      grid.getChildren().clear();
      for (int i = 0; i < settings.size(); i++) {
        Setting setting = settings.get(i);
        SettingRow row = new SettingRow(desk, setting, to -> chosen.accept(setting, to));
        rows.put(setting.id(), row);
        grid.add(row, i % 2, i / 2);
      }
    }
    for (Setting setting : settings) {
      rows.get(setting.id())
          .show(
              sheet,
              SessionModel.reading(now, setting),
              SessionModel.reading(before, setting),
              baseline.flatMap(setup -> setup.reading(setting.id())));
    }
  }

  void focus(SettingId id) {
    Optional.ofNullable(rows.get(id)).ifPresent(SettingRow::focus);
  }
}
