package rutbook.reasoning;

import java.util.List;
import rutbook.notebook.Feel;

/**
 * How a rider writes ratings, told from the ratings: in even numbers only, or silent about what is
 * small, so that a complaint no longer mentioned was small.
 */
record RatingHabit(boolean coarse, boolean silent) {
  private static final int ENOUGH = 6;
  private static final int SMALL = 2;

  static RatingHabit of(List<Ride> rides) {
    int felt = 0;
    boolean odd = false;
    boolean small = false;
    for (Ride ride : rides) {
      for (Feel feel : ride.feel().values()) {
        felt += feel.severity() > 0 ? 1 : 0;
        odd |= feel.severity() % 2 == 1;
        small |= feel.severity() < SMALL;
      }
    }
    return new RatingHabit(felt >= ENOUGH && !odd, felt >= ENOUGH && !small);
  }
}
