package rutbook.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The entries of one bike in the order of days, and what follows from them: setups, sheets, hours.
 * Made from a notebook, never stored.
 */
public final class Timeline {
  private static final Comparator<Entry> ORDER =
      Comparator.comparing(Entry::day)
          .thenComparingInt(entry -> entry.head().order())
          .thenComparing(entry -> entry.id().text());

  /** Most questions are about the latest entries, which are found without a map. */
  private static final int LATEST = 16;

  private final Bike bike;
  private final List<Entry> entries;

  /** Made when it is first asked for, since most timelines never are. */
  private volatile Map<EntryId, Integer> places;

  private Timeline(Bike bike, List<Entry> entries) {
    this.bike = bike;
    this.entries = entries;
  }

  /**
   * @throws NotebookException when the notebook has no such bike
   */
  public static Timeline of(Notebook notebook, BikeId id) {
    Bike bike =
        notebook
            .shelf()
            .bike(id)
            .orElseThrow(() -> new NotebookException(Fault.UNKNOWN_ID, "bike", id));
    return new Timeline(bike, inOrder(notebook.entries(), id));
  }

  /** Most notebooks are kept in the order of days: those need no sorting. */
  private static List<Entry> inOrder(List<Entry> all, BikeId id) {
    List<Entry> entries = new ArrayList<>(all.size());
    boolean sorted = true;
    for (Entry entry : all) {
      if (entry.bike().equals(id)) {
        sorted &= entries.isEmpty() || ORDER.compare(entries.get(entries.size() - 1), entry) <= 0;
        entries.add(entry);
      }
    }
    if (!sorted) {
      entries.sort(ORDER);
    }
    return Collections.unmodifiableList(entries);
  }

  public Bike bike() {
    return bike;
  }

  /** Oldest first. */
  public List<Entry> entries() {
    return entries;
  }

  public <T extends Entry> List<T> entries(Class<T> kind) {
    return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  public List<Entry.Session> sessions() {
    return entries(Entry.Session.class);
  }

  /** The newest entry of a kind. */
  public <T extends Entry> Optional<T> latest(Class<T> kind) {
    return latest(kind, entries.size());
  }

  private <T extends Entry> Optional<T> latest(Class<T> kind, int before) {
    for (int i = before - 1; i >= 0; i--) {
      if (kind.isInstance(entries.get(i))) {
        return Optional.of(kind.cast(entries.get(i)));
      }
    }
    return Optional.empty();
  }

  /** The newest baseline on or before a day. */
  public Optional<Entry.Baseline> baselineOn(LocalDate day) {
    return entries(Entry.Baseline.class).stream()
        .filter(baseline -> !baseline.day().isAfter(day))
        .reduce((earlier, later) -> later);
  }

  public Optional<Entry.Baseline> baseline() {
    return latest(Entry.Baseline.class);
  }

  public Sheet sheetOn(LocalDate day) {
    return bike.sheetOn(day);
  }

  /** The day of the newest entry; empty when there is none. */
  public Optional<LocalDate> lastDay() {
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of(entries.get(entries.size() - 1).day());
  }

  /** What is on the bike after all that is noted. */
  public Setup now() {
    return after(entries.size());
  }

  /**
   * What is on the bike, as a session of that day starts with it: every setting of the sheet in
   * force then, and what lies outside its limits counted as found.
   */
  public Setup startOn(LocalDate day) {
    Sheet sheet = sheetOn(day);
    Setup now = now();
    return new Setup(sheet.settings().stream().map(each -> start(sheet, each, now)).toList());
  }

  private static Placed start(Sheet sheet, Setting setting, Setup now) {
    Optional<Placed> left = now.placed(setting.id());
    if (left.isEmpty()) {
      Reading unknown = Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED);
      return Placed.found(setting.id(), unknown);
    }
    Reading reading = left.get().reading();
    boolean choosable =
        reading.amounts().stream()
            .allMatch(amount -> Bounds.refusal(sheet, setting, amount).isEmpty());
    return choosable ? left.get() : Placed.found(setting.id(), reading);
  }

  /** What is on the bike just before an entry. */
  public Setup before(EntryId id) {
    return after(index(id));
  }

  /** What is on the bike just after an entry. */
  public Setup after(EntryId id) {
    return after(index(id) + 1);
  }

  /** The place of an entry in the order of days, from 0. */
  int index(EntryId id) {
    for (int i = entries.size() - 1; i >= Math.max(0, entries.size() - LATEST); i--) {
      if (entries.get(i).id().equals(id)) {
        return i;
      }
    }
    if (places == null) {
      Map<EntryId, Integer> all = new HashMap<>(entries.size() * 2);
      for (int i = 0; i < entries.size(); i++) {
        all.put(entries.get(i).id(), i);
      }
      places = all;
    }
    Integer place = places.get(id);
    if (place == null) {
      throw new NotebookException(Fault.UNKNOWN_ID, "entry", id);
    }
    return place;
  }

  /** Folds from the last session before the given place, which leaves a full setup. */
  private Setup after(int count) {
    int start = count - 1;
    while (start >= 0 && !(entries.get(start) instanceof Entry.Session)) {
      start--;
    }
    Setup setup = start < 0 ? Setup.EMPTY : ((Entry.Session) entries.get(start)).end();
    for (int i = start + 1; i < count; i++) {
      setup = after(setup, entries.get(i));
    }
    return setup;
  }

  private static Setup after(Setup setup, Entry entry) {
    if (entry instanceof Entry.Adjusted adjusted) {
      return setup.after(adjusted.changes());
    }
    if (entry instanceof Entry.RebuildJob rebuild) {
      return RebuildReadings.applied(setup, rebuild.done());
    }
    return entry instanceof Entry.Baseline baseline ? known(setup, baseline.setup()) : setup;
  }

  /** A baseline says what is on the bike only of settings of which nothing was noted before. */
  private static Setup known(Setup setup, Setup baseline) {
    Setup known = setup;
    for (Placed placed : baseline.placed()) {
      if (known.placed(placed.setting()).isEmpty()) {
        known = known.with(placed);
      }
    }
    return known;
  }

  /** Sag of an end as last measured. */
  public Optional<Entry.SagMeasured> sag(End end) {
    return sagOn(end, Checks.LAST_DAY);
  }

  /** Sag of an end as last measured on or before a day. */
  public Optional<Entry.SagMeasured> sagOn(End end, LocalDate day) {
    for (int i = entries.size() - 1; i >= 0; i--) {
      if (entries.get(i) instanceof Entry.SagMeasured sag
          && sag.end() == end
          && !sag.day().isAfter(day)) {
        return Optional.of(sag);
      }
    }
    return Optional.empty();
  }

  /** The bike's running hours from meter readings, over meter changes and resets. */
  public Hours hours() {
    return Hours.of(this);
  }
}
