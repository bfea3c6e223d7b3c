package rutbook.imports;

import java.util.Optional;
import rutbook.notebook.SettingId;
import rutbook.notebook.Side;

/** What a column of a spreadsheet of setups is. */
public sealed interface SetupColumn {
  record Nothing() implements SetupColumn {}

  record Day() implements SetupColumn {}

  record AtTrack() implements SetupColumn {}

  record Note() implements SetupColumn {}

  /** What the hour meter read. */
  record Meter() implements SetupColumn {}

  /** A setting: both legs alike where it has two and no leg is named. */
  record OfSetting(SettingId setting, Optional<Side> leg) implements SetupColumn {}
}
