package rutbook.notebook;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Checks one entry against the shelf and the other entries: ids that exist, readings that fit, and
 * chosen readings inside the limits of the sheet in force that day.
 */
final class EntryCheck {
  private final Shelf shelf;
  private final Function<EntryId, Entry> others;
  private final Map<Sheet, OnSheet> sheets = new IdentityHashMap<>();

  /** The settings of a sheet, and the setup that was last seen to fit it. */
  private static final class OnSheet {
    private final Map<SettingId, Setting> byId = new HashMap<>();
    private Setup fits = Setup.EMPTY;

    OnSheet(Sheet sheet) {
      sheet.settings().forEach(setting -> byId.put(setting.id(), setting));
    }

    /** Whether this very reading was seen to fit: neighbouring setups share what did not change. */
    boolean knows(int place, Placed placed) {
      return place < fits.placed().size() && fits.placed().get(place) == placed;
    }
  }

  EntryCheck(Shelf shelf, Function<EntryId, Entry> others) {
    this.shelf = shelf;
    this.others = others;
  }

  void check(Entry entry) {
    try {
      Bike bike = shelf.bike(entry.bike()).orElseThrow(() -> unknown("bike", entry.bike()));
      checkKind(entry, bike);
    } catch (NotebookException fault) {
      throw fault.in("entries/" + entry.id());
    }
  }

  private void checkKind(Entry entry, Bike bike) {
    if (entry instanceof Entry.Session session) {
      checkSession(session, bike.sheetOn(session.day()));
    } else if (entry instanceof Entry.Adjusted adjusted) {
      adjusted.changes().forEach(change -> checkChange(bike.sheetOn(entry.day()), change));
    } else if (entry instanceof Entry.Baseline baseline) {
      checkSetup("setup", bike.sheetOn(entry.day()), baseline.setup());
      baseline.rebuild().ifPresent(id -> requireEntry(id, bike, Entry.RebuildJob.class));
    } else if (entry instanceof Entry.RebuildJob rebuild) {
      checkRebuild(rebuild, bike);
    } else if (entry instanceof Entry.Serviced serviced) {
      Sheet sheet = bike.sheetOn(entry.day());
      for (ServiceId item : serviced.items()) {
        if (sheet.services().stream().noneMatch(each -> each.id().equals(item))) {
          throw unknown("service", item);
        }
      }
    } else if (entry instanceof Entry.HandedOver handed) {
      checkSetup(
          "snapshot", bike.sheetOn(handed.snapshot().sheetFrom()), handed.snapshot().setup());
    } else if (entry instanceof Entry.Advice advice) {
      checkAdvice(advice, bike);
    }
  }

  private void checkSession(Entry.Session session, Sheet sheet) {
    if (shelf.track(session.track()).isEmpty()) {
      throw unknown("track", session.track());
    }
    if (shelf.rider(session.rider()).isEmpty()) {
      throw unknown("rider", session.rider());
    }
    checkSetup("start", sheet, session.start());
    for (Moto moto : session.motos()) {
      try {
        moto.changes().forEach(change -> checkChange(sheet, change));
      } catch (NotebookException fault) {
        throw fault.in("motos/" + moto.id());
      }
    }
    session
        .check()
        .ifPresent(
            check ->
                check
                    .found()
                    .forEach(
                        found ->
                            Bounds.requireFits(setting(sheet, found.setting()), found.seen())));
  }

  private void checkRebuild(Entry.RebuildJob rebuild, Bike bike) {
    requireEntry(rebuild.job().baseline(), bike, Entry.Baseline.class);
    Sheet sheet = bike.sheetOn(rebuild.job().sheetFrom());
    for (Placed placed : rebuild.job().before().placed()) {
      Bounds.requireFits(setting(sheet, placed.setting()), placed.reading());
    }
    rebuild.done().forEach(done -> checkStep(sheet, done));
    rebuild
        .job()
        .oil()
        .ifPresent(
            oil -> {
              if (shelf.oil(oil).isEmpty()) {
                throw unknown("oil", oil);
              }
            });
  }

  /** What is entered where a setting is put or found is a reading of the bike from then on. */
  private void checkStep(Sheet sheet, StepDone done) {
    Optional<Reading> reading = RebuildReadings.entered(done);
    Optional<SettingId> about = done.step().placed().or(done.step()::found);
    if (about.isPresent() && reading.isPresent()) {
      try {
        Bounds.requireFits(setting(sheet, about.get()), reading.get());
      } catch (NotebookException fault) {
        throw fault.in("done/" + done.step());
      }
    }
  }

  /** What was declined may be about a setting that only an earlier sheet had. */
  private void checkAdvice(Entry.Advice advice, Bike bike) {
    Sheet sheet = bike.sheetOn(advice.day());
    for (Proposal proposal : advice.proposals()) {
      boolean declined = proposal.answer() instanceof Answer.Declined;
      Setting setting =
          declined ? everSetting(bike, proposal.setting()) : setting(sheet, proposal.setting());
      Bounds.requireFits(setting, proposal.from());
      if (declined || proposal.answer() instanceof Answer.Held) {
        Bounds.requireFits(setting, proposal.to());
      } else {
        Bounds.requireChoosable(sheet, setting, proposal.to());
      }
    }
  }

  private Setting everSetting(Bike bike, SettingId id) {
    for (Sheet sheet : bike.sheets()) {
      Optional<Setting> found = sheet.setting(id);
      if (found.isPresent()) {
        return found.get();
      }
    }
    throw unknown("setting", id);
  }

  private void checkSetup(String place, Sheet sheet, Setup setup) {
    OnSheet onSheet = onSheet(sheet);
    if (setup == onSheet.fits && !setup.placed().isEmpty()) {
      return;
    }
    try {
      for (int i = 0; i < setup.placed().size(); i++) {
        Placed placed = setup.placed().get(i);
        if (!onSheet.knows(i, placed)) {
          checkPlaced(sheet, setting(sheet, i, placed.setting()), placed);
        }
      }
      requireWhole(sheet, setup);
    } catch (NotebookException fault) {
      throw fault.in(place);
    }
    onSheet.fits = setup;
  }

  private static void checkPlaced(Sheet sheet, Setting setting, Placed placed) {
    if (placed.how() == How.SET) {
      Bounds.requireChoosable(sheet, setting, placed.reading());
    } else {
      Bounds.requireFits(setting, placed.reading());
    }
  }

  /** Each reading is of another setting of the sheet: as many as there are settings is all. */
  private static void requireWhole(Sheet sheet, Setup setup) {
    if (setup.placed().size() < sheet.settings().size()) {
      for (Setting setting : sheet.settings()) {
        if (setup.placed(setting.id()).isEmpty()) {
          throw new NotebookException(Fault.MISSING_SETTING, setting.name());
        }
      }
    }
  }

  private void checkChange(Sheet sheet, Change change) {
    Bounds.requireChoosable(sheet, setting(sheet, change.setting()), change.to());
  }

  /** The setting at its likely place: most setups are in the order of their sheet. */
  private Setting setting(Sheet sheet, int likely, SettingId id) {
    List<Setting> all = sheet.settings();
    return likely < all.size() && all.get(likely).id().equals(id)
        ? all.get(likely)
        : setting(sheet, id);
  }

  private Setting setting(Sheet sheet, SettingId id) {
    Setting setting = onSheet(sheet).byId.get(id);
    if (setting == null) {
      throw unknown("setting", id);
    }
    return setting;
  }

  private OnSheet onSheet(Sheet sheet) {
    return sheets.computeIfAbsent(sheet, OnSheet::new);
  }

  /** Of the same bike: the settings of another mean something else. */
  private void requireEntry(EntryId id, Bike bike, Class<? extends Entry> kind) {
    Entry entry = others.apply(id);
    if (!kind.isInstance(entry) || !entry.bike().equals(bike.id())) {
      throw unknown("entry", id);
    }
  }

  private static NotebookException unknown(String kind, Id id) {
    return new NotebookException(Fault.UNKNOWN_ID, kind, id);
  }
}
