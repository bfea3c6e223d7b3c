package rutbook.stats;

/**
 * Laps of a moto that drift together: each is correlated with the next by ρ, with the one after by
 * ρ² and so on (an autoregression of order one). Their mean is then less sure, and their scatter
 * within the moto looks smaller, than independent laps would have it.
 *
 * @param correlation ρ of neighbouring laps, 0 to 0.95
 */
public record LapDrift(double correlation) {

  public LapDrift {
    Given.within("correlation", correlation, 0, 0.95);
  }

  /**
   * Variance of the mean of n laps against that of one lap, {@code (1 + 2 Σ (1 − k/n) ρᵏ)/n}
   * (Bayley and Hammersley 1946): 1/n of it would be expected of independent laps.
   */
  public double ofMean(int laps) {
    Given.within("laps", laps, 1, 1e6);
    double sum = 1;
    double power = 1;
    for (int k = 1; k < laps && power > 1e-18; k++) {
      power *= correlation;
      sum += 2 * (1 - (double) k / laps) * power;
    }
    return sum / laps;
  }

  /**
   * What the usual sample variance of n laps is expected to show of the variance of a lap, {@code
   * (1 − ofMean) n/(n − 1)}; 1 for independent laps.
   *
   * @param laps two or more
   */
  public double seen(int laps) {
    Given.within("laps", laps, 2, 1e6);
    return (1 - ofMean(laps)) * laps / (laps - 1);
  }

  /**
   * The sd that motos' means seem to have beyond {@code s²/n} when s is what is seen within a moto:
   * the motos' own, and what the drift adds.
   *
   * @param seenSd s, 0 to 1e6
   * @param laps of a moto, two or more
   * @param share of the motos' own sd against that of a lap, 0 to 10
   */
  public double motoSd(double seenSd, int laps, double share) {
    Given.within("sd within a moto", seenSd, 0, 1e6);
    Given.within("share", share, 0, 10);
    double seen = seen(laps);
    double ofLap = seenSd * seenSd / seen;
    return Math.sqrt(ofLap * (share * share + ofMean(laps) - seen / laps));
  }
}
