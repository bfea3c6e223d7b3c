package rutbook.reasoning;

/**
 * How far the rules of the trade are to be trusted on this bike, learned from its own motos: every
 * change that was ridden and rated speaks for rules that hold, do nothing or are reversed. The
 * chances of all suggestions count it.
 *
 * @param holds share of the rules that is expected to hold, 0 to 1
 * @param nothing share that is expected to do nothing
 * @param reversed share that is expected to be the other way round
 */
public record RuleTrust(double holds, double nothing, double reversed) {
  /** Before any moto. */
  static final RuleTrust USUAL = of(BeforeRiding.RULES.chance());

  /** From here on it is said. */
  private static final double NOTABLY = 1.5;

  /** From how many rules hold, do nothing, are reversed. */
  static RuleTrust of(double[] count) {
    double all = count[PriorCell.HOLDS] + count[PriorCell.NOTHING] + count[PriorCell.REVERSED];
    return new RuleTrust(
        count[PriorCell.HOLDS] / all,
        count[PriorCell.NOTHING] / all,
        count[PriorCell.REVERSED] / all);
  }

  /** The mean over bikes that may be true. */
  static RuleTrust of(PlausibleBikes bikes) {
    double[] sum = new double[3];
    for (PlausibleBikes.Bike bike : bikes.bikes()) {
      sum[PriorCell.HOLDS] += bike.rules().holds();
      sum[PriorCell.NOTHING] += bike.rules().nothing();
      sum[PriorCell.REVERSED] += bike.rules().reversed();
    }
    return of(sum);
  }

  /** Whether notably more rules than usual seem to be reversed here. */
  public boolean isLess() {
    return reversed >= NOTABLY * USUAL.reversed;
  }
}
