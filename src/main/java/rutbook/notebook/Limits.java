package rutbook.notebook;

import rutbook.units.Amount;

/**
 * What bounds a setting: its own stops, or the limits of the chamber that it fills. There is one
 * truth for a fill.
 */
public sealed interface Limits {
  record Stops(Range range) implements Limits {}

  record Fill(ChamberId chamber) implements Limits {}

  static Limits stops(Amount least, Amount most) {
    return new Stops(new Range(least, most));
  }
}
