package rutbook.physics;

/** Refuses a number that no bike has, saying which and how much. */
final class Given {

  private Given() {}

  /** The value itself when it lies in [least, most]; NaN never does. */
  static double within(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what + " must lie in " + least + " to " + most + ", was " + value);
    }
    return value;
  }

  /** A length in metres from nothing to two metres: every travel, gap and sag of a bike. */
  static double length(String what, double metres) {
    return within(what, metres, 0, 2);
  }

  /** A diameter in metres, 1 mm to 0.3 m. */
  static double diameter(String what, double metres) {
    return within(what, metres, 1e-3, 0.3);
  }

  /** An absolute pressure in Pa, 1 kPa to 50 MPa. */
  static double pressure(String what, double pascals) {
    return within(what, pascals, 1e3, 5e7);
  }

  /** A volume in m³, zero to 10 L. */
  static double volume(String what, double cubicMetres) {
    return within(what, cubicMetres, 0, 1e-2);
  }

  /** An area in m², zero to 0.1. */
  static double area(String what, double squareMetres) {
    return within(what, squareMetres, 0, 0.1);
  }
}
