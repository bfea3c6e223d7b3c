package rutbook.physics;

import java.util.OptionalDouble;

/**
 * The two reference oils of ASTM D2270 at 40 °C against the viscosity at 100 °C: L has index 0, H
 * has index 100.
 *
 * <p>Up to 70 mm²/s they are a table, of which only a few rows are carried here: those printed in
 * public copies of D2270-10(2016), and two that the standard's worked examples fix by interpolation
 * (5.1 for H only; 8.8). Between neighbours of the standard's own table (5.0 and 5.1, 8.8 and 8.9)
 * it is read as the standard says. Between other rows H/Y is taken as straight in Y: an estimate of
 * ours, which puts an index above 100 wrong by up to about ten points; L bends too much for that
 * and is left out. Above 70 mm²/s the standard's equations hold.
 */
final class ReferenceOils {

  /** Below this viscosity at 100 °C, mm²/s, there is no index. */
  static final double THINNEST = 2;

  private static final double LAST = 70;
  private static final double NONE = -1;

  /** Viscosity at 100 °C, L, H, all mm²/s. */
  private static final double[][] ROWS = {
    {2.0, 7.994, 6.394},
    {3.0, 15.49, 12.15},
    {4.0, 25.32, 19.56},
    {5.0, 40.23, 28.49},
    {5.1, NONE, 29.46},
    {7.8, 95.43, 57.31},
    {8.8, 118.5, 68.79},
    {8.9, 120.9, 69.94},
    {15.0, 296.5, 149.7},
    {40.0, 1730.0, 651.8},
    {70.0, 4905.0, 1558.0},
  };

  /** The standard's own rows stand 0.1 apart where two neighbours are carried. */
  private static final double NEIGHBOURS = 0.1001;

  private ReferenceOils() {}

  /**
   * L and H at one viscosity.
   *
   * @param l empty where only an estimate could be had
   * @param estimate H came from between rows that are no neighbours
   */
  record Reference(OptionalDouble l, double h, boolean estimate) {}

  /** The reference at a viscosity at 100 °C of 2 mm²/s or more. */
  static Reference at(double kv100) {
    Given.within("viscosity at 100 °C", kv100, THINNEST, 1000);
    if (kv100 > LAST) {
      double l = 0.8353 * kv100 * kv100 + 14.67 * kv100 - 216;
      double h = 0.1684 * kv100 * kv100 + 11.85 * kv100 - 97;
      return new Reference(OptionalDouble.of(l), h, false);
    }
    int above = 0;
    while (ROWS[above][0] < kv100) {
      above++;
    }
    double[] next = ROWS[above];
    return next[0] == kv100
        ? new Reference(carried(next[1]), next[2], false)
        : between(ROWS[above - 1], next, kv100);
  }

  private static Reference between(double[] below, double[] above, double kv100) {
    double part = (kv100 - below[0]) / (above[0] - below[0]);
    if (above[0] - below[0] > NEIGHBOURS) {
      double perY = mix(below[2] / below[0], above[2] / above[0], part);
      return new Reference(OptionalDouble.empty(), perY * kv100, true);
    }
    boolean both = below[1] != NONE && above[1] != NONE;
    return new Reference(
        both ? OptionalDouble.of(mix(below[1], above[1], part)) : OptionalDouble.empty(),
        mix(below[2], above[2], part),
        false);
  }

  private static double mix(double from, double to, double part) {
    return from + part * (to - from);
  }

  private static OptionalDouble carried(double l) {
    return l == NONE ? OptionalDouble.empty() : OptionalDouble.of(l);
  }
}
