package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.WhyUnknown;

/** What the Bike page shows: a bike, one of its sheets, and what is on the bike now. */
record BikeModel(
    Notebook notebook,
    Bike bike,
    Sheet sheet,
    Timeline timeline,
    Setup now,
    Optional<Entry.Baseline> baseline,
    List<Outside> outside) {
  BikeModel {
    outside = List.copyOf(outside);
  }

  /**
   * @param from which sheet; the newest when there is none from that day
   */
  static BikeModel of(Notebook notebook, Bike bike, Optional<LocalDate> from) {
    Sheet sheet =
        bike.sheets().stream()
            .filter(each -> from.equals(Optional.of(each.from())))
            .findFirst()
            .orElse(bike.latestSheet());
    Timeline timeline = Timeline.of(notebook, bike.id());
    return new BikeModel(
        notebook,
        bike,
        sheet,
        timeline,
        timeline.now(),
        timeline.baseline(),
        Outside.of(timeline, sheet));
  }

  boolean isLatest() {
    return sheet.equals(bike.latestSheet());
  }

  Reading now(Setting setting) {
    return now.reading(setting.id())
        .filter(reading -> fits(setting, reading))
        .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
  }

  Optional<Reading> baseline(Setting setting) {
    return baseline
        .flatMap(each -> each.setup().reading(setting.id()))
        .filter(reading -> fits(setting, reading));
  }

  private static boolean fits(Setting setting, Reading reading) {
    return reading.amounts().stream().allMatch(amount -> amount.dimension() == setting.dimension());
  }
}
