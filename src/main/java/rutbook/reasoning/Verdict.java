package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.stats.LapDrift;
import rutbook.stats.MotoComparison;
import rutbook.stats.MotoScatter;
import rutbook.stats.Summary;

/**
 * What a change that was ridden proved: motos before it (A), with it (B) and, where the rider went
 * back, after it (A again). Feel decides where it was rated on both sides, laps otherwise; nothing
 * inside the noise is called a difference, and only going back confirms.
 *
 * @param feelGain how much less was written of the complaints that it was meant to help, summed
 * @param feelBack how much more was written again after going back, summed
 * @param laps seconds a lap, A less B, first laps and dropped ones left out
 * @param motosEach with it and without it: those ridden on the side that has fewer
 */
public record Verdict(
    Outcome outcome,
    OptionalDouble feelGain,
    OptionalDouble feelBack,
    Optional<MotoComparison> laps,
    int motosEach) {

  /** What can be said. */
  public enum Outcome {
    NOT_RIDDEN,
    NO_DIFFERENCE,
    /** Better, but it could be the track, legs or luck: go back for one moto to know. */
    BETTER,
    /** Better, and worse again on going back. */
    CONFIRMED,
    /** It stayed better on going back. */
    NOT_THE_CHANGE,
    WORSE
  }

  private static final double RATING_NOISE = 0.8;

  /** Neighbouring laps of a moto; an estimate of ours, no source. */
  private static final LapDrift DRIFT = new LapDrift(0.4);

  /**
   * Moto-to-moto sd against that of a lap before the notebook has unchanged pairs: usually 0.5 to
   * 0.8, taken at its upper end, since a difference that is none must not be called one.
   */
  private static final double MOTOS_DIFFER = 0.8;

  private static final double BEYOND = 1.96;

  /**
   * The verdict on the changes made before a moto of a session.
   *
   * @param moto the first one with the change
   * @param meant complaints that the change was meant to help
   */
  public static Verdict of(
      Timeline timeline, Entry.Session session, MotoId moto, List<Complaint> meant) {
    int at = 0;
    while (at < session.motos().size() && !session.motos().get(at).id().equals(moto)) {
      at++;
    }
    return at == 0 || at >= session.motos().size()
        ? nothing()
        : of(timeline, session, at, session.setupOf(at - 1), meant);
  }

  /**
   * The same for a change that may have been made before the session: it is then compared with the
   * motos of the session that were ridden without it.
   */
  static Verdict of(
      Timeline timeline, Entry.Session session, int at, Setup without, List<Complaint> meant) {
    List<Moto> motos = session.motos();
    Setup with = session.setupOf(at);
    List<Moto> before = new ArrayList<>();
    for (int i = at - 1; i >= 0 && same(session.setupOf(i), without); i--) {
      before.add(motos.get(i));
    }
    List<Moto> ridden = new ArrayList<>();
    int next = at;
    while (next < motos.size() && same(session.setupOf(next), with)) {
      ridden.add(motos.get(next++));
    }
    List<Moto> back = new ArrayList<>();
    while (next < motos.size() && same(session.setupOf(next), without)) {
      back.add(motos.get(next++));
    }
    return of(before, ridden, back, meant, scatter(timeline));
  }

  private static Verdict nothing() {
    return new Verdict(
        Outcome.NOT_RIDDEN, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), 0);
  }

  private static boolean same(Setup one, Setup other) {
    return one.placed().stream()
        .allMatch(
            placed -> other.reading(placed.setting()).map(placed.reading()::sameAs).orElse(false));
  }

  private static Verdict of(
      List<Moto> before,
      List<Moto> with,
      List<Moto> back,
      List<Complaint> meant,
      List<MotoScatter.UnchangedPair> pairs) {
    List<Moto> without = new ArrayList<>(before);
    without.addAll(back);
    List<double[]> slow = laps(without);
    List<double[]> fast = laps(with);
    Optional<MotoComparison> laps = MotoComparison.of(slow, fast, scatter(slow, fast, pairs));
    OptionalDouble gain = difference(without, with, meant);
    OptionalDouble again = difference(back, with, meant);
    int each = Math.min(without.size(), with.size());
    Outcome outcome = Outcome.NOT_RIDDEN;
    if (gain.isPresent()) {
      double error =
          RATING_NOISE * Math.sqrt(meant.size() * (1.0 / without.size() + 1.0 / with.size()));
      boolean stayed =
          !back.isEmpty() && again.orElse(0) < difference(before, with, meant).orElse(0) / 2;
      boolean wentBack = !before.isEmpty() && !back.isEmpty();
      outcome = outcome(gain.getAsDouble(), BEYOND * error, wentBack, stayed);
      boolean first = difference(before, with, meant).orElse(0) > BEYOND * error;
      outcome =
          outcome == Outcome.NO_DIFFERENCE && first && stayed ? Outcome.NOT_THE_CHANGE : outcome;
    } else if (laps.isPresent()) {
      boolean beyond = laps.get().difference().beyondNoise();
      outcome =
          outcome(
              laps.get().difference().difference(),
              beyond ? 0 : Double.POSITIVE_INFINITY,
              !before.isEmpty() && !back.isEmpty(),
              false);
    }
    return new Verdict(outcome, gain, again, laps, each);
  }

  private static Outcome outcome(double gain, double noise, boolean wentBack, boolean stayed) {
    if (gain < -noise) {
      return Outcome.WORSE;
    } else if (gain <= noise) {
      return Outcome.NO_DIFFERENCE;
    }
    return !wentBack ? Outcome.BETTER : stayed ? Outcome.NOT_THE_CHANGE : Outcome.CONFIRMED;
  }

  /** Sum of mean ratings less that of others; empty when a complaint is not rated on both sides. */
  private static OptionalDouble difference(
      List<Moto> one, List<Moto> other, List<Complaint> meant) {
    double sum = 0;
    for (Complaint complaint : meant) {
      OptionalDouble a = mean(one, complaint);
      OptionalDouble b = mean(other, complaint);
      if (a.isEmpty() || b.isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += a.getAsDouble() - b.getAsDouble();
    }
    return meant.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
  }

  private static OptionalDouble mean(List<Moto> motos, Complaint complaint) {
    return motos.stream()
        .map(moto -> Ride.greatest(moto).get(complaint))
        .filter(java.util.Objects::nonNull)
        .mapToInt(Feel::severity)
        .average();
  }

  /** Seconds of the laps that count, motos without any left out. */
  private static List<double[]> laps(List<Moto> motos) {
    return motos.stream()
        .map(
            moto ->
                moto.report().laps().stream()
                    .skip(1)
                    .filter(Lap::counts)
                    .mapToDouble(lap -> lap.millis() / 1000.0)
                    .toArray())
        .filter(laps -> laps.length > 0)
        .toList();
  }

  private static MotoScatter scatter(
      List<double[]> one, List<double[]> other, List<MotoScatter.UnchangedPair> pairs) {
    double squares = 0;
    double freedom = 0;
    for (List<double[]> side : List.of(one, other)) {
      for (double[] laps : side) {
        double mean = Summary.of(laps).mean();
        for (double lap : laps) {
          squares += (lap - mean) * (lap - mean);
        }
        freedom += laps.length - 1;
      }
    }
    if (freedom == 0) {
      return MotoScatter.from(pairs, 0);
    }
    double seen = Math.sqrt(squares / freedom);
    int laps = (int) Math.max(2, Math.round(1 + freedom / (one.size() + other.size())));
    return MotoScatter.from(pairs, seen, DRIFT.motoSd(seen, laps, MOTOS_DIFFER));
  }

  /** Motos one after the other with nothing changed, anywhere in the notebook. */
  private static List<MotoScatter.UnchangedPair> scatter(Timeline timeline) {
    List<MotoScatter.UnchangedPair> pairs = new ArrayList<>();
    for (Entry.Session session : timeline.sessions()) {
      for (int i = 1; i < session.motos().size(); i++) {
        List<double[]> two = laps(session.motos().subList(i - 1, i + 1));
        if (session.motos().get(i).changes().isEmpty() && two.size() == 2) {
          double[] a = two.get(0);
          double[] b = two.get(1);
          pairs.add(
              new MotoScatter.UnchangedPair(
                  Summary.of(a).mean(), a.length, Summary.of(b).mean(), b.length));
        }
      }
    }
    return pairs;
  }
}
