package rutbook.reasoning;

import java.util.Optional;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.TurnUnit;
import rutbook.units.Volume;

/** Readings in doses fixed per role, whatever steps a bike's own adjusters have. */
public final class Doses {
  private Doses() {}

  /** One dose as an amount in the setting's dimension; empty where a dose is not defined. */
  public static Optional<Amount> dose(Setting setting) {
    Dimension dimension = setting.dimension();
    if (setting.role() == Role.OTHER) {
      return Optional.empty();
    }
    return Optional.ofNullable(
        switch (dimension) {
          case CLICKS -> Amount.of(1, ClickUnit.CLICK);
          case TURNS -> Amount.of("0.25", TurnUnit.TURN);
          case VOLUME ->
              Amount.of(setting.role() == Role.FORK_CARTRIDGE_OIL ? 1 : 5, Volume.MILLILITRE);
          case LENGTH -> Amount.of(setting.role() == Role.FORK_OIL ? 5 : 1, Length.MILLIMETRE);
          case PRESSURE ->
              Amount.of(setting.role() == Role.FORK_AIR ? "0.2" : "0.05", Pressure.BAR);
          case SPRING_RATE ->
              Amount.of(
                  setting.role() == Role.SHOCK_SPRING ? "3" : "0.2",
                  SpringRate.NEWTON_PER_MILLIMETRE);
          default -> null;
        });
  }

  /** +1 when a greater number is more of the setting (damping, oil, tube, preload), else −1. */
  public static int sign(Setting setting) {
    Sense greater = setting.scale().greater();
    return greater == Sense.FIRMER || greater == Sense.SLOWER || greater == Sense.LOWER ? 1 : -1;
  }

  /** Doses towards more of the setting, the mean of both legs; empty where a leg is unknown. */
  public static Optional<Double> of(Setting setting, Reading reading) {
    Optional<Amount> dose = dose(setting);
    if (dose.isEmpty() || !reading.isKnown()) {
      return Optional.empty();
    }
    double mean = reading.amounts().stream().mapToDouble(Amount::si).average().orElse(0);
    return Optional.of(sign(setting) * mean / dose.get().si());
  }

  /** A reading moved by whole doses towards more of the setting, on both legs alike. */
  public static Reading moved(Setting setting, Reading reading, int doses) {
    Amount dose = dose(setting).orElseThrow();
    Amount by =
        dose.withValue(
            dose.value().multiply(java.math.BigDecimal.valueOf((long) doses * sign(setting))));
    return reading.map(amount -> amount.plus(by));
  }
}
