package rutbook.physics;

/**
 * The sags in m that are wished for. The bike's sheet rules; the defaults are common practice for
 * full-size motocross bikes of about 300 mm travel, on which sources differ.
 */
public record SagWindow(double least, double most) {

  public static final SagWindow RACE = new SagWindow(0.095, 0.110);
  public static final SagWindow FREE = new SagWindow(0.025, 0.040);
  public static final SagWindow FORK_WITH_RIDER = new SagWindow(0.065, 0.080);

  public SagWindow {
    Given.length("least sag", least);
    Given.within("most sag", most, least, 2);
  }

  /** Whether a sag lies inside, ends included. */
  public boolean holds(double sag) {
    return sag >= least && sag <= most;
  }

  /** The sag itself when inside, otherwise the nearest edge: the least that has to change. */
  public double nearest(double sag) {
    Given.within("sag", sag, -2, 2);
    return Math.max(least, Math.min(most, sag));
  }
}
