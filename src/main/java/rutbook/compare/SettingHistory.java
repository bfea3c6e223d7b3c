package rutbook.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
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
    return timeline.bike().latestSheet().settings().stream()
        .map(setting -> of(timeline, setting))
        .toList();
  }

  public static SettingHistory of(Timeline timeline, Setting setting) {
    Folding folding = new Folding(setting);
    List<Mark> marks = new ArrayList<>();
    for (Sheet sheet : timeline.bike().sheets().stream().skip(1).toList()) {
      marks.add(new Mark(sheet.from(), Kind.SHEET, Optional.empty(), Optional.empty()));
    }
    for (Entry entry : timeline.entries()) {
      if (entry instanceof Entry.Baseline baseline) {
        Optional<Reading> wanted = baseline.setup().reading(setting.id());
        marks.add(new Mark(entry.day(), Kind.BASELINE, Optional.of(entry.id()), wanted));
        folding.first(entry, wanted);
      } else if (entry instanceof Entry.RebuildJob) {
        marks.add(new Mark(entry.day(), Kind.REBUILD, Optional.of(entry.id()), Optional.empty()));
        folding.read(entry, OptionalInt.empty(), timeline.after(entry.id()).reading(setting.id()));
      } else {
        folding.ride(entry);
      }
    }
    marks.sort(java.util.Comparator.comparing(Mark::day));
    return new SettingHistory(setting, folding.steps, marks);
  }

  /** Takes up each reading that differs from the one before. */
  private static final class Folding {
    private final Setting setting;
    private final List<Step> steps = new ArrayList<>();

    Folding(Setting setting) {
      this.setting = setting;
    }

    void first(Entry entry, Optional<Reading> reading) {
      if (steps.isEmpty()) {
        read(entry, OptionalInt.empty(), reading);
      }
    }

    void ride(Entry entry) {
      if (entry instanceof Entry.Session session) {
        read(entry, OptionalInt.empty(), session.start().reading(setting.id()));
        for (int i = 0; i < session.motos().size(); i++) {
          read(entry, OptionalInt.of(i), changed(session.motos().get(i).changes()));
        }
        read(entry, OptionalInt.empty(), session.end().reading(setting.id()));
      } else if (entry instanceof Entry.Adjusted adjusted) {
        read(entry, OptionalInt.empty(), changed(adjusted.changes()));
      }
    }

    private Optional<Reading> changed(List<rutbook.notebook.Change> changes) {
      return changes.stream()
          .filter(change -> change.setting().equals(setting.id()))
          .map(rutbook.notebook.Change::to)
          .findFirst();
    }

    void read(Entry entry, OptionalInt moto, Optional<Reading> reading) {
      if (reading.isEmpty()
          || !steps.isEmpty() && steps.get(steps.size() - 1).reading().sameAs(reading.get())) {
        return;
      }
      steps.add(new Step(entry.day(), entry.id(), moto, reading.get()));
    }
  }
}
