package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;

/**
 * One track of two that are compared: its sessions, oldest first, and the moto that went best.
 *
 * @param settled what each session came to: the moto that went best on its day; a session without a
 *     moto has none
 */
public record TrackSide(
    Track track, List<Entry.Session> sessions, Optional<BestMoto> best, List<BestMoto> settled) {
  public TrackSide {
    sessions = List.copyOf(sessions);
    settled = List.copyOf(settled);
  }

  static TrackSide of(Timeline timeline, Track track) {
    List<Entry.Session> sessions = new ArrayList<>();
    List<BestMoto> settled = new ArrayList<>();
    for (Entry.Session session : timeline.sessions()) {
      if (session.track().equals(track.id())) {
        sessions.add(session);
        BestMoto.of(session).ifPresent(settled::add);
      }
    }
    return new TrackSide(track, sessions, BestMoto.best(settled), settled);
  }

  /** Motos ridden there. */
  public int motos() {
    return sessions.stream().mapToInt(session -> session.motos().size()).sum();
  }
}
