package rutbook.stats;

import java.util.List;

/**
 * How much the mean lap of a moto differs from that of the next with nothing changed: track, legs
 * and luck.
 *
 * @param sd τ, moto-to-moto standard deviation in the laps' unit, 0 to 1e9
 * @param degreesOfFreedom how well it is known, 1 to 1e6
 */
public record MotoScatter(double sd, double degreesOfFreedom) {

  /** Share of the lap sd that τ usually is: the middle of 0.5 to 0.8, an estimate of ours. */
  private static final double USUAL = 0.65;

  /** What 0.5 to 0.8 as one standard deviation either way is worth in unchanged pairs. */
  private static final double USUAL_PAIRS = 9;

  /** τ is never taken as less than this share of the lap sd: motos do differ. */
  private static final double LEAST = 0.2;

  /** No moto-to-moto scatter at all: laps are then taken as independent, as Welch does. */
  public static final MotoScatter NONE = new MotoScatter(0, 1e6);

  public MotoScatter {
    Given.within("moto-to-moto sd", sd, 0, Given.MOST);
    Given.within("degrees of freedom", degreesOfFreedom, 1, 1e6);
  }

  /** Two motos one after the other with nothing changed: mean lap and number of laps of each. */
  public record UnchangedPair(double firstMean, int firstLaps, double secondMean, int secondLaps) {

    public UnchangedPair {
      Given.within("mean lap", firstMean, -Given.MOST, Given.MOST);
      Given.within("mean lap", secondMean, -Given.MOST, Given.MOST);
      Given.within("laps", firstLaps, 1, 1e6);
      Given.within("laps", secondLaps, 1, 1e6);
    }
  }

  /** What is usual before the notebook holds an unchanged pair; an estimate. */
  public static MotoScatter usual(double lapSd) {
    return from(List.of(), lapSd);
  }

  /**
   * τ from the unchanged pairs of a notebook, {@code E d² = 2 τ² + s² (1/k1 + 1/k2)}, together with
   * what is usual, which weighs as much as nine pairs.
   *
   * @param lapSd s, sd of laps within a moto, 0 to 1e6
   */
  public static MotoScatter from(List<UnchangedPair> pairs, double lapSd) {
    return from(pairs, lapSd, USUAL * lapSd);
  }

  /**
   * The same with what is usual given.
   *
   * @param usualSd τ before any pair, 0 to 1e6
   */
  public static MotoScatter from(List<UnchangedPair> pairs, double lapSd, double usualSd) {
    double variance = square(Given.within("lap sd", lapSd, 0, 1e6));
    double sum = USUAL_PAIRS * square(Given.within("usual sd", usualSd, 0, 1e6));
    for (UnchangedPair pair : pairs) {
      double ofLaps = variance * (1.0 / pair.firstLaps() + 1.0 / pair.secondLaps());
      sum += (square(pair.firstMean() - pair.secondMean()) - ofLaps) / 2;
    }
    double freedom = USUAL_PAIRS + pairs.size();
    double tau = Math.sqrt(Math.max(square(LEAST) * variance, sum / freedom));
    return new MotoScatter(Math.min(Given.MOST, tau), Math.min(1e6, freedom));
  }

  private static double square(double value) {
    return value * value;
  }
}
