package rutbook.ui.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.SessionStart;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.Report;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Setup;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.units.Amount;

/**
 * What a new session becomes in the notebook: what is moved on the bike first, then the session as
 * the bike stands, with its first moto; a track and a rider where they are new.
 */
final class BegunSession {
  private final Desk desk;
  private final Bike bike;
  private final List<Edit> edits = new ArrayList<>();

  BegunSession(Desk desk, Bike bike) {
    this.desk = desk;
    this.bike = bike;
  }

  /** The track of a name, whatever its capitals. */
  static Optional<Track> known(Notebook notebook, String name) {
    String wanted = name.toLowerCase(Locale.ROOT);
    return notebook.shelf().tracks().stream()
        .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(wanted))
        .findFirst();
  }

  /**
   * Makes it in one step and goes there; the fault where the notebook refuses.
   *
   * @param changes moved before it, which its start has already
   */
  Optional<NotebookException> make(
      String trackName, LocalDate on, Optional<Amount> hours, List<Change> changes) {
    TrackId track = track(trackName);
    RiderId rider = rider();
    EntryId id = new EntryId(desk.ids().next());
    int order = SessionStart.orderOn(desk.notebook(), bike, on);
    Setup start = SessionStart.asLeft(desk.notebook(), bike, on);
    if (!changes.isEmpty()) {
      EntryId moved = new EntryId(desk.ids().next());
      edits.add(
          new EntryEdit.Add(new Entry.Adjusted(Head.of(moved, bike.id(), on, order), changes)));
      order++;
    }
    for (Change change : changes) {
      start = start.with(Placed.set(change.setting(), change.to()));
    }
    edits.add(
        new EntryEdit.Add(
            new Entry.Session(
                Head.of(id, bike.id(), on, order).withMeter(hours),
                track,
                rider,
                Conditions.NOT_NOTED,
                start,
                List.of(first()),
                Optional.empty())));
    Edit edit = edits.size() == 1 ? edits.get(0) : new Edit.Together(edits);
    Optional<NotebookException> refused = desk.make(edit);
    if (refused.isEmpty()) {
      desk.go(new Place.Session(id));
    }
    return refused;
  }

  private Moto first() {
    MotoId id = new MotoId(desk.ids().next());
    return new Moto(id, MotoKind.MOTO, List.of(), Report.EMPTY, Optional.empty(), "");
  }

  private TrackId track(String name) {
    Optional<Track> known = known(desk.notebook(), name);
    if (known.isPresent()) {
      return known.get().id();
    }
    TrackId id = new TrackId(desk.ids().next());
    edits.add(new ShelfEdit.PutTrack(new Track(id, name, Optional.empty(), Optional.empty(), "")));
    return id;
  }

  /** Who rode last, or the first rider, or a new one where there is none yet. */
  private RiderId rider() {
    Optional<RiderId> known =
        SessionStart.last(desk.notebook(), bike)
            .map(Entry.Session::rider)
            .or(() -> desk.notebook().shelf().riders().stream().findFirst().map(Rider::id));
    if (known.isPresent()) {
      return known.get();
    }
    RiderId id = new RiderId(desk.ids().next());
    edits.add(new ShelfEdit.PutRider(new Rider(id, desk.text("new.rider"), List.of())));
    return id;
  }
}
