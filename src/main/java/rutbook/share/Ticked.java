package rutbook.share;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Shared;
import rutbook.notebook.Sheet;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;

/** What was ticked to go along: each thing with everything else left out. */
record Ticked(Set<Shared> shared) {

  private boolean goes(Shared what) {
    return shared.contains(what);
  }

  private String note(String note) {
    return goes(Shared.NOTES) ? note : "";
  }

  List<Rider.Weight> weights(List<Rider.Weight> weights) {
    return goes(Shared.WEIGHT) ? weights : List.of();
  }

  /** How high a track lies tells where it is, as its name does. */
  Track track(Track track, String id) {
    boolean named = goes(Shared.PLACE_NAMES);
    return new Track(
        new TrackId(id),
        named ? track.name() : id,
        track.ground(),
        named ? track.altitude() : Optional.empty(),
        named ? note(track.note()) : "");
  }

  /** The table of the bike as it is, but for why it was started. */
  Sheet sheet(Sheet sheet) {
    return sheet.with(sheet.from(), note(sheet.reason()));
  }

  Entry.Session session(Entry.Session session, EntryId id, TrackId track, RiderId rider) {
    List<Moto> motos =
        java.util.stream.IntStream.range(0, session.motos().size())
            .mapToObj(i -> moto(session.motos().get(i), id.text() + "-moto-" + (i + 1)))
            .toList();
    return new Entry.Session(
        head(session.head(), id),
        track,
        rider,
        session.conditions(),
        session.start(),
        motos,
        session.check());
  }

  /** The time of day stays at home; the hours of the bike go along, since oil wears by them. */
  private Head head(Head head, EntryId id) {
    return new Head(
        id,
        head.bike(),
        head.day(),
        head.order(),
        Optional.empty(),
        head.meter(),
        note(head.note()));
  }

  private Moto moto(Moto moto, String id) {
    return new Moto(
        new MotoId(id),
        moto.kind(),
        moto.changes().stream().map(this::change).toList(),
        moto.report().withLaps(laps(moto.report().laps())),
        moto.conditions(),
        note(moto.note()));
  }

  private Change change(Change change) {
    return new Change(change.setting(), change.to(), Optional.empty(), note(change.why()));
  }

  private List<Lap> laps(List<Lap> laps) {
    return goes(Shared.LAPS)
        ? laps.stream().map(lap -> new Lap(lap.millis(), lap.dropped().map(this::note))).toList()
        : List.of();
  }

  Entry.SagMeasured sag(Entry.SagMeasured sag, EntryId id) {
    return new Entry.SagMeasured(
        head(sag.head(), id),
        sag.end(),
        sag.race(),
        sag.free(),
        sag.lengths(),
        goes(Shared.WEIGHT) ? sag.weight() : Optional.empty(),
        sag.fuel());
  }
}
