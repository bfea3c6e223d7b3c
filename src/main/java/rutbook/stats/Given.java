package rutbook.stats;

/** Refuses numbers that would make every answer meaningless, saying which and how much. */
final class Given {

  /** No measurement of a rider comes near this. */
  static final double MOST = 1e9;

  private Given() {}

  /** The value itself when it lies in [least, most]; NaN never does. */
  static double within(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what + " must lie in " + least + " to " + most + ", was " + value);
    }
    return value;
  }

  /** A copy of numbers that all lie within ±1e9. */
  static double[] numbers(String what, double[] values) {
    for (double value : values) {
      within(what, value, -MOST, MOST);
    }
    return values.clone();
  }

  /** Refuses a length that does not fit. */
  static void size(String what, int actual, int wanted) {
    if (actual != wanted) {
      throw new IllegalArgumentException(what + " must be " + wanted + ", was " + actual);
    }
  }
}
