package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bounds;
import rutbook.notebook.Entry;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/**
 * A reading that falls outside a sheet: on the bike now, or in a baseline.
 *
 * @param baseline the baseline it stands in; empty for what is on the bike now
 */
record Outside(Optional<Entry.Baseline> baseline, Setting setting, Reading reading, Range limits) {

  /** All of them: what is on the bike first, then the baselines, newest first. */
  static List<Outside> of(Timeline timeline, Sheet sheet) {
    List<Outside> outside = new ArrayList<>();
    add(outside, Optional.empty(), sheet, timeline.now());
    List<Entry.Baseline> baselines = timeline.entries(Entry.Baseline.class);
    for (int i = baselines.size() - 1; i >= 0; i--) {
      add(outside, Optional.of(baselines.get(i)), sheet, baselines.get(i).setup());
    }
    return outside;
  }

  private static void add(
      List<Outside> outside, Optional<Entry.Baseline> baseline, Sheet sheet, Setup setup) {
    for (Setting setting : sheet.settings()) {
      setup
          .reading(setting.id())
          .filter(reading -> !Bounds.isInside(sheet, setting, reading))
          .ifPresent(
              reading ->
                  outside.add(new Outside(baseline, setting, reading, sheet.limits(setting))));
    }
  }

  boolean isNow() {
    return baseline.isEmpty();
  }
}
