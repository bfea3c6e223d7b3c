package rutbook.reasoning;

import java.util.List;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;

/**
 * One setting to change, and what is expected of it.
 *
 * @param from reading now
 * @param to target, inside the limits in force
 * @param doses towards more of the setting, negative for less
 * @param gain expected drop of the summed severity, points
 * @param chance that it is better overall, 0 to 1
 * @param shifts expected change of each complaint that matters
 * @param nearStop whether the target is within two steps of a stop
 */
public record Suggestion(
    Setting setting,
    Reading from,
    Reading to,
    int doses,
    double gain,
    double chance,
    List<Shift> shifts,
    boolean nearStop) {
  public Suggestion {
    shifts = List.copyOf(shifts);
  }

  /**
   * Expected change of a complaint in severity points with its 80 % interval, and the part that the
   * rules alone would expect.
   */
  public record Shift(Complaint complaint, double mean, double low, double high, double byRule) {}
}
