package rutbook.share;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bike;
import rutbook.notebook.Checks;
import rutbook.notebook.Entry;
import rutbook.notebook.Fault;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Rider;
import rutbook.notebook.Shelf;
import rutbook.notebook.Track;
import rutbook.units.Display;

/**
 * The part of a notebook that goes along: one rider, one bike with the sheets in question, and
 * sessions with the tracks they were ridden at, and sag.
 */
public record Excerpt(
    Display display, Rider rider, Bike bike, List<Track> tracks, List<Entry> entries) {
  public static final int MOST_ENTRIES = 400;

  public Excerpt {
    tracks = Checks.list("track", tracks, MOST_ENTRIES);
    entries = Checks.list("entries", entries, MOST_ENTRIES);
    for (Entry entry : entries) {
      if (!(entry instanceof Entry.Session) && !(entry instanceof Entry.SagMeasured)) {
        throw new NotebookException(Fault.UNKNOWN_ID, "entry", entry.id());
      }
    }
  }

  /** Sessions of the file, oldest first. */
  public List<Entry.Session> sessions() {
    return entries.stream()
        .filter(Entry.Session.class::isInstance)
        .map(Entry.Session.class::cast)
        .toList();
  }

  /** Sag as last measured before each chosen setup. */
  public List<Entry.SagMeasured> sag() {
    return entries.stream()
        .filter(Entry.SagMeasured.class::isInstance)
        .map(Entry.SagMeasured.class::cast)
        .toList();
  }

  public Optional<Track> track(Entry.Session session) {
    return tracks.stream().filter(each -> each.id().equals(session.track())).findFirst();
  }

  Shelf shelf() {
    return new Shelf(List.of(rider), List.of(bike), tracks, List.of());
  }
}
