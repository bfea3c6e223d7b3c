package rutbook.notebook;

import java.util.List;

/** What was counted on the bike after riding; it may lie outside the limits. */
public record EndOfDayCheck(List<Found> found) {
  public record Found(SettingId setting, Reading seen) {}

  public EndOfDayCheck {
    found = Checks.unique("setting", found, Found::setting);
  }
}
