package rutbook.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Bike;
import rutbook.notebook.Bounds;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Rider;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.WhyUnknown;

/** How a new session starts: with the bike as it was left, read against the sheet of the day. */
public final class SessionStart {
  private SessionStart() {}

  /**
   * A reading for every setting of the sheet. What may not be chosen on that sheet any more is kept
   * as found; what nobody knows is unknown.
   */
  public static Setup asLeft(Notebook notebook, Bike bike, LocalDate day) {
    Sheet sheet = bike.sheetOn(day);
    Setup left = Timeline.of(notebook, bike.id()).now();
    List<Placed> placed = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      Reading reading =
          left.reading(setting.id())
              .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
      placed.add(placed(sheet, setting, reading));
    }
    return new Setup(placed);
  }

  /** What has to be moved on the bike as it was left so that it reads as wanted. */
  public static List<Change> changes(
      Notebook notebook, Bike bike, LocalDate day, Map<SettingId, Reading> wanted) {
    Setup left = asLeft(notebook, bike, day);
    return left.placed().stream()
        .filter(placed -> wanted.containsKey(placed.setting()))
        .filter(placed -> !placed.reading().sameAs(wanted.get(placed.setting())))
        .map(placed -> Change.of(placed.setting(), wanted.get(placed.setting())))
        .toList();
  }

  /** As set where it may be chosen on the sheet, as found where it may not. */
  public static Placed placed(Sheet sheet, Setting setting, Reading reading) {
    try {
      Bounds.requireChoosable(sheet, setting, reading);
      return Placed.set(setting.id(), reading);
    } catch (NotebookException beyond) {
      return Placed.found(setting.id(), reading);
    }
  }

  /** The place after everything else of that bike on that day. */
  public static int orderOn(Notebook notebook, Bike bike, LocalDate day) {
    return notebook.entries().stream()
        .filter(entry -> entry.bike().equals(bike.id()) && entry.day().equals(day))
        .mapToInt(entry -> entry.head().order())
        .map(order -> order + 1)
        .max()
        .orElse(0);
  }

  /** Who rode the bike last, or else the first rider of the shelf. */
  public static Optional<Rider> rider(Notebook notebook, Bike bike) {
    return last(notebook, bike)
        .map(Entry.Session::rider)
        .flatMap(notebook.shelf()::rider)
        .or(() -> notebook.shelf().riders().stream().findFirst());
  }

  /** The session ridden last on the bike, if any: its track and rider are offered first. */
  public static Optional<Entry.Session> last(Notebook notebook, Bike bike) {
    return Timeline.of(notebook, bike.id()).latest(Entry.Session.class);
  }
}
