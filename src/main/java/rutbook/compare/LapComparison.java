package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Timeline;
import rutbook.notebook.TrackId;
import rutbook.stats.MotoComparison;
import rutbook.stats.MotoScatter;

/**
 * The laps of both sides by moto, and whether they differ by more than noise.
 *
 * @param result times of the second side less those of the first are {@link #by()}; empty when
 *     there is nothing to compare
 * @param pairs pairs of motos at the track with nothing changed between them, from which the
 *     moto-to-moto noise is learned
 */
public record LapComparison(
    State state,
    List<MotoLaps> from,
    List<MotoLaps> to,
    Optional<LapDifference> result,
    int pairs) {
  /** Whether there is a comparison, or why there is none. */
  public enum State {
    COMPARED,
    /** Laps of two tracks say nothing about the bike. */
    OTHER_TRACK,
    /** One side was not ridden, or nobody took laps. */
    NO_LAPS,
    /** Both sides are the same moto. */
    SAME_MOTO,
    /** A side has fewer than two laps that tell something. */
    TOO_FEW
  }

  public LapComparison {
    from = List.copyOf(from);
    to = List.copyOf(to);
  }

  static LapComparison of(Timeline timeline, Choice from, Choice to) {
    List<MotoLaps> first = laps(from);
    List<MotoLaps> second = laps(to);
    if (first.isEmpty() || second.isEmpty()) {
      return without(State.NO_LAPS, first, second);
    }
    TrackId track = first.get(0).session().track();
    if (!track.equals(second.get(0).session().track())) {
      return without(State.OTHER_TRACK, first, second);
    }
    if (first.equals(second)) {
      return without(State.SAME_MOTO, first, second);
    }
    return compared(timeline, track, first, second);
  }

  private static LapComparison without(State state, List<MotoLaps> from, List<MotoLaps> to) {
    return new LapComparison(state, from, to, Optional.empty(), 0);
  }

  private static LapComparison compared(
      Timeline timeline, TrackId track, List<MotoLaps> from, List<MotoLaps> to) {
    List<MotoScatter.UnchangedPair> pairs = new ArrayList<>();
    double squares = 0;
    int freedom = 0;
    for (Entry.Session session : timeline.sessions()) {
      if (!session.track().equals(track)) {
        continue;
      }
      for (int i = 0; i < session.motos().size(); i++) {
        MotoLaps laps = MotoLaps.of(session, i);
        if (laps.seconds().size() > 1) {
          double mean = laps.mean();
          squares += laps.seconds().stream().mapToDouble(s -> (s - mean) * (s - mean)).sum();
          freedom += laps.seconds().size() - 1;
        }
        if (i > 0 && session.motos().get(i).changes().isEmpty()) {
          pair(MotoLaps.of(session, i - 1), laps).ifPresent(pairs::add);
        }
      }
    }
    double lapSd = freedom == 0 ? 0 : Math.sqrt(squares / freedom);
    Optional<LapDifference> result =
        MotoComparison.of(numbers(to), numbers(from), MotoScatter.from(pairs, lapSd))
            .map(LapDifference::of);
    return new LapComparison(
        result.isPresent() ? State.COMPARED : State.TOO_FEW, from, to, result, pairs.size());
  }

  private static Optional<MotoScatter.UnchangedPair> pair(MotoLaps one, MotoLaps next) {
    return one.seconds().isEmpty() || next.seconds().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new MotoScatter.UnchangedPair(
                one.mean(), one.seconds().size(), next.mean(), next.seconds().size()));
  }

  private static List<double[]> numbers(List<MotoLaps> motos) {
    return motos.stream().map(MotoLaps::numbers).toList();
  }

  private static List<MotoLaps> laps(Choice choice) {
    if (choice instanceof Choice.OfSession it) {
      return MotoLaps.of(it.session());
    } else if (choice instanceof Choice.OfMoto it) {
      return some(MotoLaps.of(it.session(), it.moto()));
    } else if (choice instanceof Choice.BestOf it) {
      return some(MotoLaps.of(it.session(), it.moto()));
    }
    return List.of();
  }

  private static List<MotoLaps> some(MotoLaps laps) {
    return laps.seconds().isEmpty() ? List.of() : List.of(laps);
  }

  /** Seconds a lap that the second side is slower; below zero it is quicker. Empty without. */
  public Optional<Double> by() {
    return result.map(LapDifference::seconds);
  }

  /** More motos a side that would tell, if the difference stays; empty when none or too many. */
  public Optional<Integer> moreMotos() {
    if (result.isEmpty() || result.get().motosToSettle().isEmpty()) {
      return Optional.empty();
    }
    int ridden = Math.max(1, Math.min(from.size(), to.size()));
    return Optional.of(result.get().motosToSettle().getAsInt() - ridden);
  }
}
