package rutbook.reasoning;

import java.util.OptionalInt;

/**
 * What bothers the rider now.
 *
 * @param expected severity with the setup as it is, after all motos; below 0 is comfortably absent
 * @param low lower end of its 80 % interval
 * @param high upper end of its 80 % interval
 * @param rated what was written of it in the last moto, if it was mentioned
 * @param left severity expected to be left at the most comfortable setup: what no setting takes
 *     away
 */
public record Bother(
    Complaint complaint, double expected, double low, double high, OptionalInt rated, double left) {
  /** Severity points from which on a complaint is felt at all. */
  static final double FELT = 0.5;

  private static final int BAD = 4;

  /** Whether it is felt at all: half a point or more is expected. */
  public boolean isFelt() {
    return expected >= FELT;
  }

  /** Whether it was written as 4 or 5: then it is not left alone while something may help. */
  public boolean isBad() {
    return rated.isPresent() && rated.getAsInt() >= BAD;
  }

  /** Whether it is worth a change: 2 or more, expected or written. */
  public boolean isReal() {
    return expected >= Choosing.WORTH_A_CHANGE - 0.5
        || rated.isPresent() && rated.getAsInt() >= Choosing.WORTH_A_CHANGE;
  }
}
