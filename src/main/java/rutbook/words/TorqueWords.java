package rutbook.words;

import java.math.RoundingMode;
import rutbook.units.Amount;
import rutbook.units.Torque;
import rutbook.units.Unit;

/** A torque as the manual has it, with the other unit system beside it. */
final class TorqueWords {
  private TorqueWords() {}

  static String both(Phrases phrases, Amount torque) {
    Unit other =
        torque.unit() == Torque.NEWTON_METRE ? Torque.POUND_FORCE_FOOT : Torque.NEWTON_METRE;
    Amount converted = torque.in(other, 1, RoundingMode.HALF_EVEN);
    return "%s %s (%s %s)"
        .formatted(
            phrases.amounts().number(torque.value().doubleValue(), 1),
            torque.unit().symbol(),
            phrases.amounts().number(converted.value().doubleValue(), 1),
            other.symbol());
  }
}
