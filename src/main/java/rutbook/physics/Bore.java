package rutbook.physics;

/** Areas of round things. */
final class Bore {

  private Bore() {}

  /** Area in m² of a circle of a diameter in m. */
  static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}
