package rutbook.notebook;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
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
    return differ(setting, reading, Optional.empty());
  }

  /**
   * Whether the legs of a reading differ otherwise than they are meant to: a fork that is set two
   * clicks apart on purpose is not unequal, and is so when both legs are alike.
   *
   * @param meant what the baseline or a target has in both legs; where it does not know both, they
   *     are meant to be alike
   */
  public static boolean differ(Setting setting, Reading reading, Optional<Reading> meant) {
    Optional<Amount> apart = apart(reading);
    if (apart.isEmpty()) {
      return false;
    }
    Amount off = meant.flatMap(Legs::apart).map(apart.get()::minus).orElse(apart.get());
    return off.withValue(off.value().abs()).compareQuantity(tolerance(setting)) > 0;
  }

  /**
   * What the legs of a setting were chosen to be, if both were chosen: found ones mean nothing.
   *
   * @param setup a baseline, or another setup that says what is wanted
   */
  public static Optional<Reading> meant(Setup setup, Setting setting) {
    return setup
        .placed(setting.id())
        .filter(placed -> placed.how() == How.SET)
        .map(Placed::reading);
  }

  /** Right minus left, when both are known. */
  private static Optional<Amount> apart(Reading reading) {
    List<Amount> legs = reading.amounts();
    return legs.size() == 2 ? Optional.of(legs.get(1).minus(legs.get(0))) : Optional.empty();
  }

  /** How far apart the legs of a setting may be and still count as alike; none for counts. */
  public static Amount tolerance(Setting setting) {
    if (setting.dimension() == Dimension.VOLUME) {
      return FILL_VOLUME;
    }
    return setting.dimension() == Dimension.LENGTH
        ? FILL_LEVEL
        : setting.scale().step().withValue(BigDecimal.ZERO);
  }
}
