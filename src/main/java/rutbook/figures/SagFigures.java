package rutbook.figures;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.physics.SpringVerdict;
import rutbook.units.Amount;

/**
 * The sag worksheet of the rear end: the wheel rate from two sags and the rider's weight, what they
 * say of the spring, and the spring and preload that would meet both windows. A straight-line
 * model, an estimate on a linkage.
 *
 * @param wheelRate with what ±2 mm on each sag allows; hangs on the share of the rider on the rear
 * @param wheelRateOfSpring by spring and motion ratio, to check the other against
 * @param verdict what free sag says of the spring; empty while race sag is outside its window
 * @param wanted the spring that meets both targets; it does not hang on the rider's weight
 * @param springs today's first, then the rider's nearest either side of the wanted one
 * @param collar what a turn of the preload collar is, where the sheet has its pitch
 */
public record SagFigures(
    Measured measured,
    Spread wheelRate,
    Amount wheelRateOfSpring,
    Optional<SpringVerdict> verdict,
    Target target,
    Wanted wanted,
    List<AtHand> springs,
    Optional<Collar> collar) {

  /** Share of the rider's weight on the rear wheel, seated; our own choice, no source. */
  public static final double REAR_SHARE = 0.6;

  public SagFigures {
    springs = List.copyOf(springs);
  }

  /**
   * What was measured.
   *
   * @param friction how far stiction holds it either side together; only with three lengths
   */
  public record Measured(Amount race, Amount free, Optional<Amount> friction) {}

  /** Nearest edge of each window, or today's sag when inside. */
  public record Target(Amount race, Amount free) {}

  /** A number with the ends that the tape's error allows. */
  public record Spread(Amount least, Amount middle, Amount most) {}

  /**
   * The spring that meets both targets.
   *
   * @param share of today's rate, less one
   * @param held its rate inside the sheet's limits: what may be suggested
   * @param inside whether it lies within them as it is
   */
  public record Wanted(
      Spread rate, double share, Fitting preload, Optional<Amount> held, boolean inside) {}

  /**
   * A preload, and whether it can be chosen: negative cannot be fitted, and a value beyond the
   * sheet's limits is not offered.
   *
   * @param turns of the collar from today's preload, more above zero; where its pitch is known
   */
  public record Fitting(Amount preload, Optional<Amount> turns, boolean fits) {}

  /**
   * A spring with race sag set to its target.
   *
   * @param fitted whether it is the one in the shock today
   * @param free the free sag it would come to; negative when the bike alone would not settle
   * @param inside whether the spring lies within the sheet's limits
   */
  public record AtHand(Amount rate, boolean fitted, Fitting preload, Amount free, boolean inside) {
    /** Whether it may be suggested: spring and preload inside their limits. */
    public boolean offered() {
      return inside && preload.fits();
    }
  }

  /**
   * What a turn of the collar does.
   *
   * @param sagPerTurn less race sag by one turn more, {@code pitch / MR}
   */
  public record Collar(Amount pitch, Amount sagPerTurn) {}

  /**
   * The worksheet of a measurement.
   *
   * @param weight the rider's in gear, when the measurement notes none
   */
  public static Figure<SagFigures> of(
      Sheet sheet, Setup setup, Entry.SagMeasured measured, Optional<Amount> weight) {
    return SagBuild.figures(sheet, setup, measured, weight);
  }
}
