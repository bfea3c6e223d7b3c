package rutbook.share;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rutbook.compare.Choice;
import rutbook.compare.Subject;
import rutbook.notebook.Bike;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.share.ChosenSetup.What;

/**
 * Makes the setup file: what was chosen, and of it only what was ticked. Sessions, motos, sag,
 * tracks and the rider get ids of the file's own, since those of a notebook may tell a place or a
 * name; settings keep theirs, by which the coach's proposals find back.
 */
public final class Packing {
  private static final RiderId RIDER = new RiderId("rider");

  private final Notebook notebook;
  private final Timeline timeline;
  private final Ticked ticked;

  /** Each by its id in the notebook. */
  private final Map<TrackId, Track> tracks = new LinkedHashMap<>();

  private final Map<EntryId, Entry.Session> sessions = new LinkedHashMap<>();
  private final Map<EntryId, Entry.SagMeasured> sag = new LinkedHashMap<>();

  private Packing(Notebook notebook, Timeline timeline, Ticked ticked) {
    this.notebook = notebook;
    this.timeline = timeline;
    this.ticked = ticked;
  }

  /**
   * The file of some chosen setups; of a session or a moto its session goes along.
   *
   * @param chosen the first is the one that the coach is asked about
   * @param by who hands over; empty for the rider of the chosen sessions, or the latest
   * @throws ShareException when nothing is chosen, too much, or sessions of two riders
   */
  public static SetupFile of(
      Notebook notebook,
      Timeline timeline,
      List<Subject> chosen,
      HandOver handOver,
      Optional<String> by) {
    if (chosen.isEmpty()) {
      throw new ShareException(ShareFault.NOTHING_CHOSEN);
    }
    if (chosen.size() > SetupFile.MOST_SETUPS) {
      throw new ShareException(ShareFault.TOO_MANY_SETUPS, SetupFile.MOST_SETUPS);
    }
    Packing packing = new Packing(notebook, timeline, new Ticked(handOver.shared()));
    return packing.file(chosen, handOver, by);
  }

  /** Who rode the chosen sessions, or the latest one, or is the only rider there is. */
  public static Optional<Rider> rider(Notebook notebook, Timeline timeline, List<Subject> chosen) {
    Optional<Entry.Session> session =
        chosen.stream().flatMap(each -> session(each).stream()).findFirst();
    return session
        .or(() -> timeline.latest(Entry.Session.class))
        .flatMap(ridden -> notebook.shelf().rider(ridden.rider()))
        .or(() -> notebook.shelf().riders().stream().findFirst());
  }

  private SetupFile file(List<Subject> chosen, HandOver handOver, Optional<String> by) {
    Optional<Rider> rider = rider(notebook, timeline, chosen);
    Rider goesAlong = rider(rider, by);
    rider.ifPresent(whose -> requireOneRider(whose, chosen));
    List<ChosenSetup> setups = chosen.stream().map(this::setup).toList();
    Set<LocalDate> days = new TreeSet<>();
    setups.forEach(setup -> days.add(setup.sheetFrom()));
    sessions.values().forEach(session -> days.add(session.day()));
    setups.forEach(setup -> measured(setup.day()));
    List<Entry> entries = new ArrayList<>(sessions.values());
    entries.addAll(sag.values());
    Excerpt excerpt =
        new Excerpt(
            notebook.display(), goesAlong, bike(days), List.copyOf(tracks.values()), entries);
    return new SetupFile(handOver, excerpt, setups, Optional.empty());
  }

  private Rider rider(Optional<Rider> rider, Optional<String> by) {
    String name =
        by.or(() -> rider.map(Rider::name))
            .orElseThrow(() -> new ShareException(ShareFault.NO_RIDER));
    return new Rider(RIDER, name, ticked.weights(rider.map(Rider::weights).orElse(List.of())));
  }

  private void requireOneRider(Rider rider, List<Subject> chosen) {
    for (Subject subject : chosen) {
      Optional<Entry.Session> other =
          session(subject).filter(session -> !session.rider().equals(rider.id()));
      if (other.isPresent()) {
        String name = notebook.shelf().rider(other.get().rider()).map(Rider::name).orElseThrow();
        throw new ShareException(ShareFault.TWO_RIDERS, other.get().day(), rider.name(), name);
      }
    }
  }

  private static Optional<Entry.Session> session(Subject subject) {
    if (subject.choice() instanceof Choice.OfSession it) {
      return Optional.of(it.session());
    } else if (subject.choice() instanceof Choice.OfMoto it) {
      return Optional.of(it.session());
    } else if (subject.choice() instanceof Choice.BestOf it) {
      return Optional.of(it.session());
    }
    return Optional.empty();
  }

  private ChosenSetup setup(Subject subject) {
    Optional<Entry.Session> session = session(subject).map(this::packed);
    LocalDate sheetFrom = subject.sheet().from();
    if (subject.choice() instanceof Choice.Now) {
      Setup setup = timeline.startOn(subject.day());
      return ChosenSetup.notRidden(What.NOW, subject.day(), sheetFrom, setup);
    } else if (session.isEmpty()) {
      return ChosenSetup.notRidden(What.BASELINE, subject.day(), sheetFrom, subject.setup());
    }
    Optional<MotoId> moto =
        moto(subject.choice()).map(number -> session.get().motos().get(number).id());
    return new ChosenSetup(
        moto.isPresent() ? What.MOTO : What.SESSION,
        subject.day(),
        sheetFrom,
        subject.setup(),
        session.map(Entry::id),
        moto);
  }

  private static Optional<Integer> moto(Choice choice) {
    if (choice instanceof Choice.OfMoto it) {
      return Optional.of(it.moto());
    }
    return choice instanceof Choice.BestOf it ? Optional.of(it.moto()) : Optional.empty();
  }

  private Entry.Session packed(Entry.Session session) {
    Track track = packed(notebook.shelf().track(session.track()).orElseThrow());
    EntryId id = new EntryId("session-" + (sessions.size() + 1));
    return sessions.computeIfAbsent(
        session.id(), own -> ticked.session(session, id, track.id(), RIDER));
  }

  private Track packed(Track track) {
    return tracks.computeIfAbsent(
        track.id(), own -> ticked.track(track, "track-" + (tracks.size() + 1)));
  }

  private void measured(LocalDate day) {
    for (End end : List.of(End.FRONT, End.REAR)) {
      EntryId id = new EntryId("sag-" + (sag.size() + 1));
      timeline
          .sagOn(end, day)
          .ifPresent(last -> sag.computeIfAbsent(last.id(), own -> ticked.sag(last, id)));
    }
  }

  /** The bike with those of its sheets that were in force on some days. */
  private Bike bike(Set<LocalDate> days) {
    Bike bike = timeline.bike();
    List<Sheet> sheets = days.stream().map(bike::sheetOn).distinct().map(ticked::sheet).toList();
    return new Bike(bike.id(), bike.name(), sheets);
  }
}
