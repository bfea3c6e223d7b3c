package rutbook.figures;

import java.util.Optional;
import rutbook.notebook.SagLengths;
import rutbook.physics.Sag;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Unit;

/**
 * Sag from the three lengths of the procedure, in the unit they were measured in.
 *
 * @param sag extended less the middle of the two others
 * @param friction how far apart the two others are: what stiction holds
 */
public record SagByLengths(Amount sag, Amount friction) {
  private static final double LONGEST = 2;

  /** Empty where a length is longer than any bike. */
  public static Optional<SagByLengths> of(SagLengths lengths) {
    double extended = lengths.extended().si();
    double risen = lengths.pushedDown().si();
    double settled = lengths.liftedUp().si();
    if (Math.max(extended, Math.max(risen, settled)) > LONGEST) {
      return Optional.empty();
    }
    Unit unit = lengths.extended().unit();
    int decimals = unit == Length.INCH ? 2 : 1;
    Sag sag = Sag.of(extended, risen, settled);
    return Optional.of(
        new SagByLengths(
            Si.amount(sag.sag(), unit, decimals), Si.amount(sag.friction(), unit, decimals)));
  }
}
