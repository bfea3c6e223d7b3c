package rutbook.notebook;

import java.math.BigDecimal;
import java.util.Optional;
import rutbook.units.Amount;

/** The bounds of product and model in one place: what may be chosen, and what is held where. */
public final class Bounds {
  private Bounds() {}

  /**
   * Whether a reading fits the setting at all: unit and legs. Holds for found readings too.
   *
   * @throws NotebookException naming the setting when it does not
   */
  public static void requireFits(Setting setting, Reading reading) {
    boolean pair = reading instanceof Reading.Pair;
    if (pair != (setting.carrier() == Carrier.PAIR)) {
      throw new NotebookException(Fault.WRONG_LEGS, setting.name(), setting.carrier());
    }
    for (Amount amount : reading.amounts()) {
      if (amount.dimension() != setting.dimension()) {
        throw new NotebookException(
            Fault.WRONG_UNIT,
            setting.name(),
            amount.unit().symbol(),
            setting.scale().step().unit().symbol());
      }
      Sizes.check(setting.name(), amount);
    }
  }

  /**
   * Whether a reading may be chosen: inside the limits of the sheet, and on a step where there are
   * clicks.
   *
   * @throws NotebookException with setting, value and limit when it may not
   */
  public static void requireChoosable(Sheet sheet, Setting setting, Reading reading) {
    requireFits(setting, reading);
    for (Amount amount : reading.amounts()) {
      refusal(sheet, setting, amount)
          .ifPresent(
              refused -> {
                throw refused;
              });
    }
  }

  /** Why an amount may not be chosen for a setting; empty when it may. */
  public static Optional<NotebookException> refusal(Sheet sheet, Setting setting, Amount amount) {
    Range limits = sheet.limits(setting);
    if (amount.dimension() != limits.least().dimension()) {
      return Optional.of(
          new NotebookException(
              Fault.WRONG_UNIT,
              setting.name(),
              amount.unit().symbol(),
              limits.least().unit().symbol()));
    }
    if (amount.compareQuantity(limits.least()) < 0) {
      return Optional.of(
          new NotebookException(Fault.BELOW_LEAST, setting.name(), amount, limits.least()));
    }
    if (amount.compareQuantity(limits.most()) > 0) {
      return Optional.of(
          new NotebookException(Fault.ABOVE_MOST, setting.name(), amount, limits.most()));
    }
    if (setting.scale().isGrid() && !onGrid(setting, amount)) {
      return Optional.of(
          new NotebookException(
              Fault.OFF_THE_STEPS, setting.name(), amount, setting.scale().step()));
    }
    return Optional.empty();
  }

  private static boolean onGrid(Setting setting, Amount amount) {
    return amount.value().remainder(setting.scale().step().value()).signum() == 0;
  }

  /** Whether what was found lies inside the limits; unknown values count as inside. */
  public static boolean isInside(Sheet sheet, Setting setting, Reading reading) {
    Range limits = sheet.limits(setting);
    return reading.amounts().stream()
        .allMatch(
            amount -> amount.dimension() == limits.least().dimension() && limits.contains(amount));
  }

  /** The reading with each amount held inside the limits, on the grid where there is one. */
  public static Reading hold(Sheet sheet, Setting setting, Reading reading) {
    Range limits = sheet.limits(setting);
    return reading.map(amount -> onGridInside(setting, limits, limits.hold(amount)));
  }

  private static Amount onGridInside(Setting setting, Range limits, Amount held) {
    if (!setting.scale().isGrid() || onGrid(setting, held)) {
      return held;
    }
    BigDecimal step = setting.scale().step().value();
    BigDecimal down = Scale.onGrid(held.value(), step);
    Amount lower = held.withValue(down);
    return limits.contains(lower) ? lower : held.withValue(down.add(step));
  }

  /** Whether an amount stands within two steps of a stop; only adjusters with a grid have one. */
  public static boolean isNearStop(Sheet sheet, Setting setting, Amount amount) {
    if (!setting.scale().isGrid()) {
      return false;
    }
    Range limits = sheet.limits(setting);
    Amount near = setting.nearStop();
    return amount.minus(limits.least()).compareQuantity(near) <= 0
        || limits.most().minus(amount).compareQuantity(near) <= 0;
  }
}
