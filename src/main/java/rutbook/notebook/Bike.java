package rutbook.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A bike with its sheets, oldest first. */
public record Bike(BikeId id, String name, List<Sheet> sheets) {
  public Bike {
    name = Checks.name("bike", name);
    sheets =
        Checks.unique("sheet", sheets, Sheet::from).stream()
            .sorted(Comparator.comparing(Sheet::from))
            .toList();
    if (sheets.isEmpty()) {
      throw new NotebookException(Fault.EMPTY, "sheets");
    }
    checkSettingsKeepTheirMeaning(sheets);
  }

  /** A new datum, unit or carrier is a new setting id: an old reading must not change meaning. */
  private static void checkSettingsKeepTheirMeaning(List<Sheet> sheets) {
    Map<SettingId, Setting> first = new HashMap<>();
    for (Sheet sheet : sheets) {
      for (Setting setting : sheet.settings()) {
        Setting earlier = first.putIfAbsent(setting.id(), setting);
        if (earlier != null
            && (earlier.dimension() != setting.dimension()
                || earlier.carrier() != setting.carrier()
                || earlier.scale().datum() != setting.scale().datum())) {
          throw new NotebookException(Fault.CHANGED_MEANING, "setting", setting.id());
        }
      }
    }
  }

  public Bike named(String newName) {
    return new Bike(id, newName, sheets);
  }

  /** With a sheet replaced (same day) or added. */
  public Bike with(Sheet sheet) {
    List<Sheet> next = new ArrayList<>(sheets);
    next.removeIf(each -> each.from().equals(sheet.from()));
    next.add(sheet);
    return new Bike(id, name, next);
  }

  /**
   * Without the sheet that began on a day.
   *
   * @throws NotebookException when there is none, or it is the only one
   */
  public Bike withoutSheet(LocalDate from) {
    List<Sheet> next = new ArrayList<>(sheets);
    if (!next.removeIf(each -> each.from().equals(from))) {
      throw new NotebookException(Fault.NO_SHEET, name, from);
    }
    return new Bike(id, name, next);
  }

  /**
   * The sheet in force on a day.
   *
   * @throws NotebookException when the day is before the first sheet
   */
  public Sheet sheetOn(LocalDate day) {
    Sheet inForce = null;
    for (Sheet sheet : sheets) {
      if (!sheet.from().isAfter(day)) {
        inForce = sheet;
      }
    }
    if (inForce == null) {
      throw new NotebookException(Fault.NO_SHEET, name, day);
    }
    return inForce;
  }

  /** The sheet in force now: the newest. */
  public Sheet latestSheet() {
    return sheets.get(sheets.size() - 1);
  }
}
