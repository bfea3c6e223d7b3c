package rutbook.physics;

/**
 * The air left at full stroke: where it runs out the fork locks on its oil before it bottoms.
 *
 * @param startVolume air at full extension, m³
 * @param endVolume air at full stroke, m³; zero or less is hydraulic lock
 */
public record Room(double startVolume, double endVolume) {

  /** Start volume over end volume beyond which hot oil alone may fill the rest; our own choice. */
  public static final double MOST_RATIO = 15;

  public Room {
    Given.within("air at full extension", startVolume, -1e-2, 1e-2);
    Given.within("air at full stroke", endVolume, -1, 1e-2);
  }

  /** No air is left before the end of the stroke. */
  public boolean locked() {
    return startVolume <= 0 || endVolume <= startVolume / 1000;
  }

  /** Locked, or compressed more than {@value #MOST_RATIO} times: an estimate of too little room. */
  public boolean tight() {
    return locked() || startVolume > MOST_RATIO * endVolume;
  }

  /**
   * The greatest extra oil in m³ that still leaves a compression ratio of at most {@value
   * #MOST_RATIO}; negative when there is already too much. From {@code (V0 − v) = r (V1 − v)}.
   */
  public double roomForOil() {
    return (MOST_RATIO * endVolume - startVolume) / (MOST_RATIO - 1);
  }
}
