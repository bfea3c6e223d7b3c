package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.Placed;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/**
 * A session that starts with other readings than the bike was left with: shown, never mended.
 *
 * @param rows the settings that differ, from what was left to what the session starts with
 */
public record Break(Entry.Session session, List<SettingDifference> rows) {
  public Break {
    rows = List.copyOf(rows);
  }

  /** Oldest first. */
  public static List<Break> in(Timeline timeline) {
    List<Break> breaks = new ArrayList<>();
    for (Entry.Session session : timeline.sessions()) {
      List<SettingDifference> rows =
          rows(timeline.sheetOn(session.day()), timeline.before(session.id()), session.start());
      if (!rows.isEmpty()) {
        breaks.add(new Break(session, rows));
      }
    }
    return breaks;
  }

  /** Settings that only one of them has came or went with a sheet: that breaks nothing. */
  private static List<SettingDifference> rows(Sheet sheet, Setup left, Setup start) {
    List<SettingDifference> rows = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      Placed before = left.placed(setting.id()).orElse(null);
      Placed after = start.placed(setting.id()).orElse(null);
      if (before != null && after != null && !before.reading().sameAs(after.reading())) {
        rows.add(SettingDifference.of(sheet, setting, before, after));
      }
    }
    return rows;
  }
}
