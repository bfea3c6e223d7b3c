package rutbook.reasoning;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rutbook.notebook.Feel;

/**
 * How a rider writes ratings, told from the ratings.
 *
 * @param coarse in even numbers only
 * @param silent about what is small, so that a complaint no longer mentioned was small
 * @param thorough also what was never felt: what is not written is then not rated at all
 */
record RatingHabit(boolean coarse, boolean silent, boolean thorough) {
  private static final int ENOUGH = 4;
  private static final int SMALL = 2;

  static RatingHabit of(List<Ride> rides) {
    int felt = 0;
    boolean odd = false;
    boolean small = false;
    boolean thorough = false;
    Set<Complaint> met = new HashSet<>();
    for (Ride ride : rides) {
      for (Map.Entry<Complaint, Feel> each : ride.feel().entrySet()) {
        int severity = each.getValue().severity();
        felt += severity > 0 ? 1 : 0;
        odd |= severity % 2 == 1;
        small |= severity < SMALL;
        thorough |= met.add(each.getKey()) && severity == 0;
      }
    }
    return new RatingHabit(felt >= ENOUGH && !odd, felt >= ENOUGH && !small, thorough);
  }
}
