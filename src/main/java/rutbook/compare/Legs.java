package rutbook.compare;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.units.Volume;

/** When two legs count as set differently: any click, but more than a fill can be measured to. */
public final class Legs {
  /** Fills are alike within 2 mL or 1 mm: closer than that, nobody measures. */
  public static final Amount FILL_VOLUME = Amount.of(2, Volume.MILLILITRE);

  public static final Amount FILL_LEVEL = Amount.of(1, Length.MILLIMETRE);

  private Legs() {}

  /** Whether the legs of a reading differ; unknown legs do not. */
  public static boolean differ(Setting setting, Reading reading) {
    if (!reading.legsDiffer()) {
      return false;
    }
    List<Amount> legs = reading.amounts();
    Amount apart = legs.get(1).minus(legs.get(0));
    Amount size = apart.withValue(apart.value().abs());
    return tolerance(setting).map(most -> size.compareQuantity(most) > 0).orElse(true);
  }

  private static Optional<Amount> tolerance(Setting setting) {
    if (setting.dimension() == Dimension.VOLUME) {
      return Optional.of(FILL_VOLUME);
    }
    return setting.dimension() == Dimension.LENGTH ? Optional.of(FILL_LEVEL) : Optional.empty();
  }
}
