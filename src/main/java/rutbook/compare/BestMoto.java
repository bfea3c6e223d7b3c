package rutbook.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
  private static final Comparator<BestMoto> BETTER =
      Comparator.comparing((BestMoto best) -> !best.report().doubtful())
          .thenComparingInt(best -> best.report().trust().orElse(0))
          .thenComparing(best -> !best.report().feel().isEmpty())
          .thenComparing(Comparator.comparingInt(BestMoto::discomfort).reversed());

  /** Empty when no moto was ridden there. */
  public static Optional<BestMoto> at(Timeline timeline, TrackId track) {
    return best(
        timeline.sessions().stream()
            .filter(session -> session.track().equals(track))
            .flatMap(BestMoto::motos));
  }

  /** The best of a day; empty when nothing was ridden. */
  static Optional<BestMoto> of(Entry.Session session) {
    return best(motos(session));
  }

  static Optional<BestMoto> best(List<BestMoto> motos) {
    return best(motos.stream());
  }

  private static Optional<BestMoto> best(Stream<BestMoto> motos) {
    return motos.reduce((best, next) -> BETTER.compare(next, best) >= 0 ? next : best);
  }

  private static Stream<BestMoto> motos(Entry.Session session) {
    return IntStream.range(0, session.motos().size()).mapToObj(i -> new BestMoto(session, i));
  }

  private Report report() {
    return session.motos().get(moto).report();
  }

  /** Sum of the severities that were mentioned. */
  public int discomfort() {
    return report().feel().stream().mapToInt(Feel::severity).sum();
  }
}
