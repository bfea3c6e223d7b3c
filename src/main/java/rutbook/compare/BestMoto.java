package rutbook.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Report;
import rutbook.notebook.Timeline;
import rutbook.notebook.TrackId;

/**
 * The moto at a track that went best: the most trust; at equal trust one whose feel was noted, with
 * the least discomfort (sum of severities); then the newest. Motos that the rider marked as
 * doubtful count only when there is no other, and motos without trust come after those with it.
 *
 * @param moto counted from 0
 */
public record BestMoto(Entry.Session session, int moto) {
  /** Empty when no moto was ridden there. */
  public static Optional<BestMoto> at(Timeline timeline, TrackId track) {
    return Optional.ofNullable(ofEach(timeline).get(track));
  }

  /** The best of each track that was ridden, in one pass; the track first ridden comes first. */
  public static Map<TrackId, BestMoto> ofEach(Timeline timeline) {
    Map<TrackId, BestMoto> best = new LinkedHashMap<>();
    for (Entry entry : timeline.entries()) {
      if (entry instanceof Entry.Session session) {
        of(session).ifPresent(it -> best.merge(session.track(), it, BestMoto::better));
      }
    }
    return best;
  }

  /** The best of a day; empty when nothing was ridden. */
  static Optional<BestMoto> of(Entry.Session session) {
    BestMoto best = null;
    for (int i = 0; i < session.motos().size(); i++) {
      BestMoto next = new BestMoto(session, i);
      best = best == null ? next : better(best, next);
    }
    return Optional.ofNullable(best);
  }

  static Optional<BestMoto> best(List<BestMoto> motos) {
    return motos.stream().reduce(BestMoto::better);
  }

  private static BestMoto better(BestMoto best, BestMoto next) {
    return compare(next, best) >= 0 ? next : best;
  }

  /** Without boxing: ten thousand sessions are gone through at once. */
  private static int compare(BestMoto one, BestMoto other) {
    Report first = one.report();
    Report second = other.report();
    int sure = Boolean.compare(second.doubtful(), first.doubtful());
    int trust = Integer.compare(first.trust().orElse(0), second.trust().orElse(0));
    if (sure != 0 || trust != 0) {
      return sure != 0 ? sure : trust;
    }
    int noted = Boolean.compare(second.feel().isEmpty(), first.feel().isEmpty());
    return noted != 0 ? noted : Integer.compare(other.discomfort(), one.discomfort());
  }

  private Report report() {
    return session.motos().get(moto).report();
  }

  /** Sum of the severities that were mentioned. */
  public int discomfort() {
    int sum = 0;
    for (Feel feel : report().feel()) {
      sum += feel.severity();
    }
    return sum;
  }
}
