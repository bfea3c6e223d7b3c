package rutbook.edit;

import java.time.LocalDate;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Snapshot;
import rutbook.notebook.WhyUnknown;

/** What an earlier entry says of a setting that its sheet did not have then: nothing. */
final class NewSettings {
  private NewSettings() {}

  /** The entry with every setting of its sheet that its setup lacks put in as not noted. */
  static Entry unknownIn(Entry entry, Bike bike) {
    if (entry instanceof Entry.Session session) {
      return session.withStart(filled(session.start(), bike, entry.day()));
    }
    if (entry instanceof Entry.Baseline baseline) {
      return new Entry.Baseline(
          baseline.head(),
          filled(baseline.setup(), bike, entry.day()),
          baseline.raceSag(),
          baseline.freeSag(),
          baseline.reason(),
          baseline.rebuild());
    }
    if (entry instanceof Entry.HandedOver handed) {
      Snapshot before = handed.snapshot();
      Snapshot after =
          new Snapshot(
              filled(before.setup(), bike, before.sheetFrom()),
              before.sheetFrom(),
              before.shared());
      return new Entry.HandedOver(handed.head(), handed.handOver(), after, handed.sha256());
    }
    return entry;
  }

  private static Setup filled(Setup setup, Bike bike, LocalDate day) {
    Setup next = setup;
    for (Setting setting : bike.sheetOn(day).settings()) {
      if (next.placed(setting.id()).isEmpty()) {
        Reading unknown = Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED);
        next = next.with(Placed.found(setting.id(), unknown));
      }
    }
    return next;
  }
}
