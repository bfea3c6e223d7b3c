package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.units.Amount;

/**
 * One setting to change, and what is expected of it. How to test it is the same for all: ride it
 * with nothing else changed, answer {@link #helped()} and {@link #worse()} afterwards, and go back
 * for one moto to know.
 *
 * @param from reading now
 * @param to target, inside the limits in force
 * @param doses towards more of the setting, negative for less
 * @param gain expected drop of the summed severity, points
 * @param chance that it is better overall, 0 to 1; every gate that stands lowers it
 * @param cost of the work, severity points: 0 at the track, 0.1 in the paddock, 0.3 at the bench
 * @param shifts expected change of each complaint that matters, the greatest help first
 * @param nearStop whether the target is within two steps of a stop
 * @param room from the target to the limit that it goes towards, the nearer leg
 * @param tells which of two explanations its ride would tell, if it would
 */
public record Suggestion(
    Setting setting,
    Reading from,
    Reading to,
    int doses,
    double gain,
    double chance,
    double cost,
    List<Shift> shifts,
    boolean nearStop,
    Optional<Amount> room,
    Optional<Telling> tells) {
  public Suggestion {
    shifts = List.copyOf(shifts);
  }

  /**
   * Expected change of a complaint as it is felt: one that is absent cannot get better.
   *
   * @param mean severity points, negative for better
   * @param low lower end of the 80 % interval
   * @param high upper end of the 80 % interval
   * @param rule the rule behind it, if there is one
   * @param byRule severity points that the rules alone would expect; 0 where they are silent
   * @param trials the rider's own motos that speak of it
   */
  public record Shift(
      Complaint complaint,
      double mean,
      double low,
      double high,
      Optional<Rule> rule,
      double byRule,
      List<Trial> trials) {
    public Shift {
      trials = List.copyOf(trials);
    }

    public long cleanTrials() {
      return trials.stream().filter(Trial::clean).count();
    }
  }

  /** Complaints that it is meant to help. */
  public List<Complaint> helped() {
    return shifts.stream().filter(each -> each.mean() < 0).map(Shift::complaint).toList();
  }

  /** Complaints that it may cost. */
  public List<Complaint> worse() {
    return shifts.stream().filter(each -> each.mean() > 0).map(Shift::complaint).toList();
  }

  /** What it gains after its work. */
  public double net() {
    return gain - cost;
  }

  Suggestion lessSure(double towardsHalf) {
    double less = chance + (0.5 - chance) * towardsHalf;
    return new Suggestion(
        setting, from, to, doses, gain, less, cost, shifts, nearStop, room, tells);
  }

  Suggestion telling(Telling which) {
    return new Suggestion(
        setting, from, to, doses, gain, chance, cost, shifts, nearStop, room, Optional.of(which));
  }
}
