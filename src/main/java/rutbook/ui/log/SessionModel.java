package rutbook.ui.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.WhyUnknown;

/**
 * A session as its page shows it: a chain of motos with what was moved on the links, and where its
 * start differs from how the bike was left before.
 *
 * @param first whether the bike has no session before this one
 * @param breaks what the start has otherwise than the bike was left
 */
public record SessionModel(
    Entry.Session session,
    Bike bike,
    Sheet sheet,
    String track,
    boolean first,
    List<Moved> breaks,
    List<Ride> rides) {

  /** A setting that went from one reading to another. */
  public record Moved(Setting setting, Reading from, Reading to) {}

  /** One moto with its setup and what was moved before it. */
  public record Ride(int number, Moto moto, Setup before, Setup setup, List<Moved> moved) {
    /**
     * The middle lap of those that count; the mean of the middle two where there is an even number.
     */
    public OptionalLong medianLap() {
      return median(moto.report().laps());
    }

    public OptionalLong bestLap() {
      return moto.report().laps().stream().filter(Lap::counts).mapToLong(Lap::millis).min();
    }

    public int lapsThatCount() {
      return (int) moto.report().laps().stream().filter(Lap::counts).count();
    }
  }

  public SessionModel {
    breaks = List.copyOf(breaks);
    rides = List.copyOf(rides);
  }

  /** Empty when the notebook has no such session. */
  public static Optional<SessionModel> of(
      Notebook notebook, Function<BikeId, Timeline> timelines, EntryId id) {
    return notebook
        .entry(id)
        .filter(Entry.Session.class::isInstance)
        .map(Entry.Session.class::cast)
        .map(session -> of(notebook, timelines.apply(session.bike()), session));
  }

  private static SessionModel of(Notebook notebook, Timeline timeline, Entry.Session session) {
    Bike bike = notebook.shelf().bike(session.bike()).orElseThrow();
    Sheet sheet = bike.sheetOn(session.day());
    boolean first =
        timeline.entries().stream()
            .filter(Entry.Session.class::isInstance)
            .findFirst()
            .filter(each -> each.id().equals(session.id()))
            .isPresent();
    Setup left = timeline.before(session.id());
    String track =
        notebook.shelf().track(session.track()).map(Track::name).orElse(session.track().text());
    return new SessionModel(
        session,
        bike,
        sheet,
        track,
        first,
        first ? List.of() : moved(sheet, left, session.start()),
        rides(sheet, session));
  }

  private static List<Ride> rides(Sheet sheet, Entry.Session session) {
    List<Ride> rides = new ArrayList<>();
    Setup before = session.start();
    int number = 0;
    for (Moto moto : session.motos()) {
      number++;
      Setup after = before.after(moto.changes());
      rides.add(new Ride(number, moto, before, after, moved(sheet, before, moto.changes())));
      before = after;
    }
    return rides;
  }

  private static List<Moved> moved(Sheet sheet, Setup before, List<Change> changes) {
    List<Moved> moved = new ArrayList<>();
    for (Change change : changes) {
      Optional<Setting> setting = sheet.setting(change.setting());
      setting.ifPresent(each -> moved.add(new Moved(each, reading(before, each), change.to())));
    }
    return moved;
  }

  /** What both say and say otherwise; a setting the earlier one knows nothing of is no break. */
  private static List<Moved> moved(Sheet sheet, Setup before, Setup after) {
    List<Moved> moved = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      Optional<Reading> from = before.reading(setting.id());
      Optional<Reading> to = after.reading(setting.id());
      if (from.isPresent() && to.isPresent() && !from.get().sameAs(to.get())) {
        moved.add(new Moved(setting, from.get(), to.get()));
      }
    }
    return moved;
  }

  /** The reading, or that nobody noted it. */
  static Reading reading(Setup setup, Setting setting) {
    return setup
        .reading(setting.id())
        .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
  }

  static OptionalLong median(List<Lap> laps) {
    long[] times = laps.stream().filter(Lap::counts).mapToLong(Lap::millis).sorted().toArray();
    if (times.length == 0) {
      return OptionalLong.empty();
    }
    int middle = times.length / 2;
    boolean odd = times.length % 2 == 1;
    long[] pair =
        odd ? new long[] {times[middle]} : Arrays.copyOfRange(times, middle - 1, middle + 1);
    return OptionalLong.of(Math.round(Arrays.stream(pair).average().orElseThrow()));
  }
}
