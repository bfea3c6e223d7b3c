package rutbook.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.Id;
import rutbook.notebook.Notebook;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;

/**
 * A notebook made ready for searching: made once, good for as long as the notebook is the same.
 *
 * @param name by which the shelf knows it, such as the name of its file
 */
public record Indexed(String name, List<Line> lines) {

  /** An entry with the folded text it is found by. */
  record Line(Hit hit, String text) {}

  public Indexed {
    lines = List.copyOf(lines);
  }

  public static Indexed of(String name, Notebook notebook) {
    Names names = new Names(notebook);
    List<Line> lines = new ArrayList<>(notebook.entries().size());
    for (Entry entry : notebook.entries()) {
      lines.add(line(name, names, entry));
    }
    return new Indexed(name, lines);
  }

  private static Line line(String name, Names names, Entry entry) {
    boolean ridden = entry instanceof Entry.Session;
    String rider = ridden ? names.rider(((Entry.Session) entry).rider()) : names.everyRider;
    String track = ridden ? names.track(((Entry.Session) entry).track()) : "";
    Hit hit =
        new Hit(
            name,
            entry.id(),
            entry.day(),
            rider,
            names.bike(entry.bike()),
            track,
            Written.in(entry));
    return new Line(
        hit,
        Stream.concat(
                Stream.of(name, entry.day().toString(), rider, hit.bike(), track),
                hit.written().stream())
            .map(Folded::of)
            .collect(Collectors.joining("\n")));
  }

  /** The names of a notebook's shelf by id. */
  private static final class Names {
    private final Map<Id, String> byId = new HashMap<>();
    private final String everyRider;

    Names(Notebook notebook) {
      for (Rider rider : notebook.shelf().riders()) {
        byId.put(rider.id(), rider.name());
      }
      for (Bike bike : notebook.bikes()) {
        byId.put(bike.id(), bike.name());
      }
      for (Track track : notebook.shelf().tracks()) {
        byId.put(track.id(), track.name());
      }
      everyRider =
          notebook.shelf().riders().stream().map(Rider::name).collect(Collectors.joining(", "));
    }

    String rider(RiderId id) {
      return byId.get(id);
    }

    String bike(BikeId id) {
      return byId.get(id);
    }

    String track(TrackId id) {
      return byId.get(id);
    }
  }
}
