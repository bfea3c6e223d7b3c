package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;

/**
 * Two setups setting by setting, in the order of the sheets: what only the first has comes last.
 */
public record SetupComparison(List<SettingDifference> rows) {
  public SetupComparison {
    rows = List.copyOf(rows);
  }

  /** Each setup is read against the sheet that was in force for it. */
  public static SetupComparison of(Sheet fromSheet, Setup from, Sheet toSheet, Setup to) {
    List<SettingDifference> rows = new ArrayList<>();
    for (Setting setting : toSheet.settings()) {
      add(
          rows,
          setting,
          standing(fromSheet, from, setting.id()),
          standing(toSheet, to, setting.id()));
    }
    for (Setting setting : fromSheet.settings()) {
      if (toSheet.setting(setting.id()).isEmpty()) {
        add(rows, setting, standing(fromSheet, from, setting.id()), Optional.empty());
      }
    }
    return new SetupComparison(rows);
  }

  private static void add(
      List<SettingDifference> rows,
      Setting setting,
      Optional<Standing> from,
      Optional<Standing> to) {
    if (from.isPresent() || to.isPresent()) {
      rows.add(SettingDifference.of(setting, from, to));
    }
  }

  private static Optional<Standing> standing(Sheet sheet, Setup setup, SettingId id) {
    return sheet
        .setting(id)
        .flatMap(setting -> setup.placed(id).map(placed -> Standing.of(sheet, setting, placed)));
  }

  public List<SettingDifference> rows(Group group) {
    return rows.stream().filter(row -> row.group() == group).toList();
  }

  /** The rows that are not the same. */
  public List<SettingDifference> differing() {
    return rows.stream().filter(row -> !row.isSame()).toList();
  }

  public boolean isSame() {
    return differing().isEmpty();
  }

  public Optional<SettingDifference> row(SettingId id) {
    return rows.stream().filter(row -> row.setting().id().equals(id)).findFirst();
  }
}
