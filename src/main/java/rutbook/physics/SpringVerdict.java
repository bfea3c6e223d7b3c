package rutbook.physics;

import java.util.Optional;

/** What free sag says of the spring once race sag is right. */
public enum SpringVerdict {
  /** Too little free sag: the spring is too soft and needs a lot of preload. */
  TOO_SOFT,
  RIGHT,
  /** Too much free sag: the spring is too stiff and hardly needs preload. */
  TOO_STIFF;

  /**
   * The verdict, or nothing while race sag is outside its own window: free sag says nothing then.
   * Common practice of the trade. Sags in m.
   */
  public static Optional<SpringVerdict> of(
      double raceSag, SagWindow race, double freeSag, SagWindow free) {
    Given.within("race sag", raceSag, -2, 2);
    Given.within("free sag", freeSag, -2, 2);
    if (!race.holds(raceSag)) {
      return Optional.empty();
    }
    if (free.holds(freeSag)) {
      return Optional.of(RIGHT);
    }
    return Optional.of(freeSag < free.least() ? TOO_SOFT : TOO_STIFF);
  }
}
