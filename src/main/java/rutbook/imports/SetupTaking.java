package rutbook.imports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.Ids;
import rutbook.edit.SessionStart;
import rutbook.edit.ShelfEdit;
import rutbook.imports.NotTaken.Why;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;

/**
 * Works out, row by row, what a spreadsheet of setups adds to a notebook. A setting that a row does
 * not name is as it was before that day.
 */
public final class SetupTaking {
  private final Grid grid;
  private final SetupMapping mapping;
  private final SetupImport.Wanted wanted;
  private final BikeId bike;
  private final Ids ids;
  private final List<SetupImport.Row> rows = new ArrayList<>();
  private final List<NotTaken> notTaken = new ArrayList<>();
  private final List<Edit> edits = new ArrayList<>();
  private Notebook notebook;

  private SetupTaking(
      Notebook notebook,
      BikeId bike,
      Grid grid,
      SetupMapping mapping,
      SetupImport.Wanted wanted,
      Ids ids) {
    this.notebook = notebook;
    this.bike = bike;
    this.grid = grid;
    this.mapping = mapping;
    this.wanted = wanted;
    this.ids = ids;
  }

  /** What would be added to the notebook. */
  public static SetupImport of(
      Notebook notebook,
      BikeId bike,
      Grid grid,
      SetupMapping mapping,
      SetupImport.Wanted wanted,
      Ids ids) {
    return new SetupTaking(notebook, bike, grid, mapping, wanted, ids).take();
  }

  private SetupImport take() {
    grid.above().forEach(row -> notTaken.add(NotTaken.above(row)));
    if (notebook.shelf().rider(wanted.rider().id()).isEmpty()) {
      make(new ShelfEdit.PutRider(wanted.rider()));
    }
    for (SetupImport.Dated dated : SetupImport.inOrder(dated())) {
      if (rows.size() == SetupImport.MOST) {
        refuse(dated.row(), Why.TOO_MANY_ROWS, "");
      } else {
        take(dated);
      }
    }
    notTaken.sort(java.util.Comparator.comparingInt(NotTaken::line));
    return new SetupImport(rows, notTaken, rows.isEmpty() ? List.of() : edits);
  }

  private void make(Edit edit) {
    notebook = edit.applyTo(notebook);
    edits.add(edit);
  }

  private void refuse(Grid.Row row, Why why, String cell) {
    notTaken.add(NotTaken.row(row, why, cell));
  }

  private String cell(Grid.Row row, SetupColumn of) {
    OptionalInt column = mapping.column(of);
    return column.isPresent() ? row.cells().get(column.getAsInt()) : "";
  }

  private List<SetupImport.Dated> dated() {
    List<SetupImport.Dated> dated = new ArrayList<>();
    for (Grid.Row row : grid.rows()) {
      String cell = cell(row, new SetupColumn.Day());
      Optional<LocalDate> day = Days.read(cell, mapping.order());
      if (cell.isEmpty()) {
        refuse(row, Why.NO_DAY, "");
      } else if (day.isEmpty()) {
        refuse(row, Why.BAD_DAY, cell);
      } else if (day.get().isBefore(theBike().sheets().get(0).from())) {
        refuse(row, Why.NO_SHEET, cell);
      } else {
        dated.add(new SetupImport.Dated(row, day.get()));
      }
    }
    return dated;
  }

  private Bike theBike() {
    return notebook.shelf().bike(bike).orElseThrow();
  }

  private void take(SetupImport.Dated dated) {
    Grid.Row row = dated.row();
    try {
      Optional<Track> track = track(row);
      if (track.isEmpty()) {
        refuse(row, Why.NO_TRACK, "");
      } else if (isThere(dated.day(), track.get().id())) {
        refuse(row, Why.ALREADY_THERE, track.get().name());
      } else {
        take(dated, track.get());
      }
    } catch (NotebookException refused) {
      notTaken.add(new NotTaken(row.line(), Why.REFUSED, "", "", Optional.of(refused)));
    }
  }

  private void take(SetupImport.Dated dated, Track track) {
    RowReadings readings =
        RowReadings.of(
            grid, mapping, dated.row(), theBike().sheetOn(dated.day()), before(dated.day()));
    if (readings.isEmpty()) {
      refuse(dated.row(), Why.NO_READING, "");
    } else {
      add(dated, track, readings);
    }
    notTaken.addAll(readings.bad());
  }

  /** The track of the row: one of the shelf, or a new one; the chosen one where none is named. */
  private Optional<Track> track(Grid.Row row) {
    String name = cell(row, new SetupColumn.AtTrack());
    if (name.isEmpty()) {
      return wanted.track();
    }
    return notebook.shelf().tracks().stream()
        .filter(each -> each.name().equalsIgnoreCase(name))
        .findFirst()
        .or(
            () ->
                Optional.of(
                    new Track(
                        new TrackId(ids.next()), name, Optional.empty(), Optional.empty(), "")));
  }

  private boolean isThere(LocalDate day, TrackId track) {
    return notebook.entries().stream()
        .anyMatch(
            each ->
                each instanceof Entry.Session session
                    && session.bike().equals(bike)
                    && session.day().equals(day)
                    && session.track().equals(track));
  }

  /** What was on the bike at the end of that day, as far as anything was noted. */
  private Setup before(LocalDate day) {
    Timeline timeline = Timeline.of(notebook, bike);
    List<Entry> entries = timeline.entries();
    for (int i = entries.size() - 1; i >= 0; i--) {
      if (!entries.get(i).day().isAfter(day)) {
        return timeline.after(entries.get(i).id());
      }
    }
    return Setup.EMPTY;
  }

  private void add(SetupImport.Dated dated, Track track, RowReadings readings) {
    Sheet sheet = theBike().sheetOn(dated.day());
    List<Placed> placed = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      placed.add(SessionStart.placed(sheet, setting, readings.of(setting)));
    }
    Setup setup = new Setup(placed);
    Entry.Session session =
        new Entry.Session(
            head(dated, readings),
            track.id(),
            wanted.rider().id(),
            Conditions.NOT_NOTED,
            setup,
            List.of(),
            Optional.empty());
    makeAll(track, session);
    rows.add(
        new SetupImport.Row(dated.row().line(), dated.day(), track, setup, readings.beyond(sheet)));
  }

  /** All of it, or nothing when the notebook refuses some. */
  private void makeAll(Track track, Entry.Session session) {
    List<Edit> made = new ArrayList<>();
    if (notebook.shelf().track(track.id()).isEmpty()) {
      made.add(new ShelfEdit.PutTrack(track));
    }
    made.add(new EntryEdit.Add(session));
    notebook = new Edit.Together(made).applyTo(notebook);
    edits.addAll(made);
  }

  private Head head(SetupImport.Dated dated, RowReadings readings) {
    int order = SessionStart.orderOn(notebook, theBike(), dated.day());
    return Head.of(new EntryId(ids.next()), bike, dated.day(), order)
        .withMeter(readings.meter())
        .withNote(cell(dated.row(), new SetupColumn.Note()));
  }
}
