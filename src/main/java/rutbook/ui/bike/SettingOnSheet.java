package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Chamber;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;

/** Puts a setting on a sheet together with the chamber that bounds it. */
final class SettingOnSheet {
  private SettingOnSheet() {}

  /**
   * The sheet with a setting in the place of another, or at its end; the chamber goes along in the
   * same step, since a sheet checks that the chamber of a fill is there, and in its kind of unit.
   *
   * @param before the setting whose place it takes, if any
   */
  static Sheet put(
      Sheet sheet, Optional<SettingId> before, Setting setting, Optional<Chamber> chamber) {
    List<Setting> settings = new ArrayList<>();
    boolean placed = false;
    for (Setting each : sheet.settings()) {
      boolean same = before.equals(Optional.of(each.id()));
      placed |= same;
      settings.add(same ? setting : each);
    }
    if (!placed) {
      settings.add(setting);
    }
    List<Chamber> chambers = new ArrayList<>(sheet.chambers());
    chamber.ifPresent(
        each -> {
          chambers.removeIf(other -> other.id().equals(each.id()));
          chambers.add(each);
        });
    return new Sheet(
        sheet.from(),
        sheet.reason(),
        settings,
        chambers,
        sheet.parts(),
        sheet.torques(),
        sheet.services(),
        sheet.pinchedFirst());
  }
}
