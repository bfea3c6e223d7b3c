package rutbook.compare;

import rutbook.notebook.Bounds;
import rutbook.notebook.Range;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;

/** How much room an adjuster has left; only clicks and quarter turns have stops in this sense. */
public enum Room {
  ENOUGH,
  NEAR_STOP,
  AT_STOP;

  /** The room at an amount: near the stop within two steps, at it when on it or beyond. */
  public static Room of(Sheet sheet, Setting setting, Amount amount) {
    if (!Bounds.isNearStop(sheet, setting, amount)) {
      return ENOUGH;
    }
    Range limits = sheet.limits(setting);
    boolean inside =
        amount.compareQuantity(limits.least()) > 0 && amount.compareQuantity(limits.most()) < 0;
    return inside ? NEAR_STOP : AT_STOP;
  }

  Room lesser(Room other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
