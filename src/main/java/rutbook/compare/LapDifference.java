package rutbook.compare;

import java.util.OptionalInt;
import rutbook.stats.Difference;
import rutbook.stats.MotoComparison;

/**
 * How much slower the second side's laps are than the first's, with its 95 % interval.
 *
 * @param seconds a lap; below zero is quicker
 * @param standardError of the difference, s
 * @param low lower end of the interval
 * @param high upper end
 * @param chance of as great a difference either way where there is none, 0 to 1
 * @param beyondNoise whether the interval leaves out zero
 * @param motosToSettle motos on each side at which it would; empty when more than anybody rides
 */
public record LapDifference(
    double seconds,
    double standardError,
    double low,
    double high,
    double chance,
    boolean beyondNoise,
    OptionalInt motosToSettle) {

  /** More motos than this on each side are not asked for. */
  public static final int MOST_MOTOS = MotoComparison.MOST_MOTOS;

  public static LapDifference of(MotoComparison comparison) {
    Difference difference = comparison.difference();
    return new LapDifference(
        difference.difference(),
        difference.standardError(),
        difference.low(),
        difference.high(),
        difference.chance(),
        difference.beyondNoise(),
        comparison.motosToSettle());
  }
}
