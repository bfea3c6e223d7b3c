package rutbook.reasoning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import rutbook.stats.Normal;

/**
 * The two likeliest explanations of what bothers: on each plausible bike some one change would help
 * most. Which of two it is, the rating after another ride may tell.
 */
final class Explanations {
  /** Sd of one rating, severity points. */
  static final double NOISE = 0.8;

  /** Nobody is asked to ride for what is told wrongly more often than this. */
  static final double MOST_MISTAKEN = 0.25;

  private static final double LEAST_SHARE = 0.2;
  private static final double CLOSE = 0.6;
  private static final double LEAST_LIMIT = 0.5;

  /** Some doses of a setting, more or less. */
  record Move(int setting, int doses) {
    boolean isLike(Move other) {
      return setting == other.setting && Integer.signum(doses) == Integer.signum(other.doses);
    }
  }

  /** A change that may be the remedy, and the bikes on which it would help most. */
  record Explanation(Move move, List<PlausibleBikes.Bike> bikes, double chance) {}

  /**
   * How the rating of a complaint tells two explanations apart.
   *
   * @param firstUnder whether a rating below the limit speaks for the likelier of the two
   */
  record Sign(int complaint, double limit, double mistaken, boolean firstUnder) {}

  private final Explanation first;
  private final Explanation second;

  private Explanations(Explanation first, Explanation second) {
    this.first = first;
    this.second = second;
  }

  /**
   * The two likeliest, if the motos do not tell them apart.
   *
   * @param moves from which the remedy is
   * @param drop of the summed severity by a move on a bike
   */
  static Optional<Explanations> of(
      List<PlausibleBikes.Bike> bikes,
      List<Move> moves,
      ToDoubleBiFunction<PlausibleBikes.Bike, Move> drop) {
    java.util.Map<List<Integer>, java.util.List<PlausibleBikes.Bike>> of =
        new java.util.TreeMap<>(
            Comparator.<List<Integer>>comparingInt(each -> each.get(0))
                .thenComparingInt(each -> each.get(1)));
    for (PlausibleBikes.Bike bike : bikes) {
      moves.stream()
          .filter(move -> drop.applyAsDouble(bike, move) >= Choosing.LEAST_GAIN)
          .max(Comparator.comparingDouble(move -> drop.applyAsDouble(bike, move)))
          .ifPresent(
              move ->
                  of.computeIfAbsent(
                          List.of(move.setting(), Integer.signum(move.doses())),
                          key -> new java.util.ArrayList<>())
                      .add(bike));
    }
    List<Explanation> all =
        of.entrySet().stream()
            .map(
                each ->
                    new Explanation(
                        new Move(each.getKey().get(0), each.getKey().get(1)),
                        each.getValue(),
                        (double) each.getValue().size() / bikes.size()))
            .sorted(Comparator.comparingDouble(each -> -each.chance()))
            .limit(2)
            .toList();
    return all.size() == 2
            && all.get(1).chance() >= LEAST_SHARE
            && all.get(1).chance() >= CLOSE * all.get(0).chance()
        ? Optional.of(new Explanations(all.get(0), all.get(1)))
        : Optional.empty();
  }

  Explanation first() {
    return first;
  }

  Explanation second() {
    return second;
  }

  /**
   * Which complaint's rating after a change tells them apart best, if one does.
   *
   * @param mentioned complaints that the rider rates, the first of each bike's
   */
  Optional<Sign> sign(Move move, int mentioned) {
    return IntStream.range(0, mentioned)
        .mapToObj(s -> sign(move, rated(first, move, s), rated(second, move, s), s))
        .filter(each -> each.mistaken() <= MOST_MISTAKEN && each.limit() >= LEAST_LIMIT)
        .min(Comparator.comparingDouble(Sign::mistaken));
  }

  /** At this limit either is taken for the other as often. */
  private static Sign sign(Move move, double[] one, double[] other, int s) {
    double limit = (one[0] * other[1] + other[0] * one[1]) / (one[1] + other[1]);
    double apart = Math.abs(one[0] - other[0]) / (one[1] + other[1]);
    return new Sign(s, limit, Normal.cumulative(-apart), one[0] < other[0]);
  }

  /** Mean and sd of the rating after a change, if an explanation is true. */
  private static double[] rated(Explanation is, Move move, int s) {
    double sum = 0;
    double squares = 0;
    for (PlausibleBikes.Bike bike : is.bikes()) {
      double then = bike.here()[s] + move.doses() * bike.effect()[s][move.setting()];
      double rated = Math.max(0, Math.min(5, then));
      sum += rated;
      squares += rated * rated;
    }
    double mean = sum / is.bikes().size();
    double variance = Math.max(0, squares / is.bikes().size() - mean * mean);
    return new double[] {mean, Math.sqrt(variance + NOISE * NOISE)};
  }
}
