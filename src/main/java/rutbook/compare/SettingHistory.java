package rutbook.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/**
 * How one setting moved over time: a step wherever its reading changed, and the rebuilds, sheets
 * and baselines beside it.
 */
public record SettingHistory(Setting setting, List<Step> steps, List<Mark> marks) {
  public SettingHistory {
    steps = List.copyOf(steps);
    marks = List.copyOf(marks);
  }

  /**
   * A new reading from a place on.
   *
   * @param moto counted from 0, where it was changed before one
   */
  public record Step(LocalDate day, EntryId entry, OptionalInt moto, Reading reading) {}

  /** What happened beside the setting. */
  public enum Kind {
    REBUILD,
    SHEET,
    BASELINE
  }

  /**
   * Something that happened.
   *
   * @param entry empty for a sheet
   * @param reading what a baseline wants
   */
  public record Mark(
      LocalDate day, Kind kind, Optional<EntryId> entry, Optional<Reading> reading) {}

  /** Of every setting of the newest sheet. */
  public static List<SettingHistory> of(Timeline timeline) {
    return of(timeline, timeline.bike().latestSheet().settings());
  }

  public static SettingHistory of(Timeline timeline, Setting setting) {
    return of(timeline, List.of(setting)).get(0);
  }

  /** Goes through the entries once, whatever the number of settings. */
  private static List<SettingHistory> of(Timeline timeline, List<Setting> settings) {
    Map<SettingId, Folding> foldings = new LinkedHashMap<>();
    settings.forEach(setting -> foldings.put(setting.id(), new Folding(setting)));
    timeline.bike().sheets().stream()
        .skip(1)
        .forEach(sheet -> foldings.values().forEach(folding -> folding.sheet(sheet)));
    boolean first = true;
    for (Entry entry : timeline.entries()) {
      if (entry instanceof Entry.Baseline baseline) {
        boolean begins = first;
        foldings.values().forEach(folding -> folding.baseline(baseline, begins));
      } else if (entry instanceof Entry.RebuildJob) {
        foldings.values().forEach(folding -> folding.rebuild(entry));
        setup(foldings, entry, timeline.after(entry.id()));
      } else if (entry instanceof Entry.Session session) {
        ride(foldings, session);
      } else if (entry instanceof Entry.Adjusted adjusted) {
        changes(foldings, entry, OptionalInt.empty(), adjusted.changes());
      }
      first = false;
    }
    return foldings.values().stream().map(Folding::history).toList();
  }

  private static void ride(Map<SettingId, Folding> foldings, Entry.Session session) {
    setup(foldings, session, session.start());
    for (int i = 0; i < session.motos().size(); i++) {
      changes(foldings, session, OptionalInt.of(i), session.motos().get(i).changes());
    }
    session
        .check()
        .ifPresent(
            check ->
                check
                    .found()
                    .forEach(
                        found ->
                            read(
                                foldings,
                                found.setting(),
                                session,
                                OptionalInt.empty(),
                                found.seen())));
  }

  private static void setup(Map<SettingId, Folding> foldings, Entry entry, Setup setup) {
    for (Placed placed : setup.placed()) {
      read(foldings, placed.setting(), entry, OptionalInt.empty(), placed.reading());
    }
  }

  private static void changes(
      Map<SettingId, Folding> foldings, Entry entry, OptionalInt moto, List<Change> changes) {
    for (Change change : changes) {
      read(foldings, change.setting(), entry, moto, change.to());
    }
  }

  private static void read(
      Map<SettingId, Folding> foldings,
      SettingId setting,
      Entry entry,
      OptionalInt moto,
      Reading reading) {
    Folding folding = foldings.get(setting);
    if (folding != null) {
      folding.read(entry, moto, reading);
    }
  }

  /** Takes up each reading that differs from the one before, and what happens beside. */
  private static final class Folding {
    private final Setting setting;
    private final List<Step> steps = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    Folding(Setting setting) {
      this.setting = setting;
    }

    void sheet(Sheet sheet) {
      marks.add(new Mark(sheet.from(), Kind.SHEET, Optional.empty(), Optional.empty()));
    }

    /** What nothing was noted before is what the bike began with. */
    void baseline(Entry.Baseline baseline, boolean begins) {
      Optional<Reading> wanted = baseline.setup().reading(setting.id());
      marks.add(new Mark(baseline.day(), Kind.BASELINE, Optional.of(baseline.id()), wanted));
      if (begins) {
        wanted.ifPresent(reading -> read(baseline, OptionalInt.empty(), reading));
      }
    }

    void rebuild(Entry entry) {
      Optional<EntryId> id = Optional.of(entry.id());
      marks.add(new Mark(entry.day(), Kind.REBUILD, id, Optional.empty()));
    }

    void read(Entry entry, OptionalInt moto, Reading reading) {
      if (steps.isEmpty() || !steps.get(steps.size() - 1).reading().sameAs(reading)) {
        steps.add(new Step(entry.day(), entry.id(), moto, reading));
      }
    }

    SettingHistory history() {
      marks.sort(Comparator.comparing(Mark::day));
      return new SettingHistory(setting, steps, marks);
    }
  }
}
