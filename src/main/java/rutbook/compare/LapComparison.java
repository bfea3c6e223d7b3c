package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
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
    Noise noise = new Noise();
    for (Entry.Session session : timeline.sessions()) {
      if (session.track().equals(track)) {
        noise.learn(session.motos());
      }
    }
    Optional<LapDifference> result =
        MotoComparison.of(numbers(to), numbers(from), MotoScatter.from(noise.pairs, noise.lapSd()))
            .map(LapDifference::of);
    return new LapComparison(
        result.isPresent() ? State.COMPARED : State.TOO_FEW, from, to, result, noise.pairs.size());
  }

  /** How laps scatter within a moto, and motos with nothing changed between them. */
  private static final class Noise {
    private final List<MotoScatter.UnchangedPair> pairs = new ArrayList<>();
    private double squares;
    private int freedom;

    void learn(List<Moto> motos) {
      double[] before = {};
      for (int i = 0; i < motos.size(); i++) {
        double[] laps = MotoLaps.seconds(motos.get(i));
        double mean = mean(laps);
        for (double lap : laps) {
          squares += (lap - mean) * (lap - mean);
        }
        freedom += Math.max(0, laps.length - 1);
        if (motos.get(i).changes().isEmpty() && before.length > 0 && laps.length > 0) {
          pairs.add(new MotoScatter.UnchangedPair(mean(before), before.length, mean, laps.length));
        }
        before = laps;
      }
    }

    double lapSd() {
      return freedom == 0 ? 0 : Math.sqrt(squares / freedom);
    }

    private static double mean(double[] laps) {
      double sum = 0;
      for (double lap : laps) {
        sum += lap;
      }
      return laps.length == 0 ? 0 : sum / laps.length;
    }
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
