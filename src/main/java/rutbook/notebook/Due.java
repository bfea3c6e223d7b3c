package rutbook.notebook;

/** How a service item stands to its interval. */
public enum Due {
  /** More than a tenth of the interval is left. */
  NOT_YET,
  /** The last tenth of the interval. */
  NEARLY,
  /** The interval has been reached. */
  DUE,
  /** More than a tenth of the interval past it. */
  OVERDUE;

  /**
   * The state after so many hours of an interval.
   *
   * @param since hours since it was last done, 0 or more
   * @param interval hours, more than 0
   */
  public static Due of(double since, double interval) {
    if (!(since >= 0) || !(interval > 0)) {
      throw new IllegalArgumentException("hours " + since + " of " + interval);
    }
    // Hours are sums of written decimals: a hair of rounding must not decide.
    double share = Math.rint(since / interval * 1e9) / 1e9;
    if (share < 0.9) {
      return NOT_YET;
    }
    if (share < 1) {
      return NEARLY;
    }
    return share <= 1.1 ? DUE : OVERDUE;
  }
}
