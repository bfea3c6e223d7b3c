package rutbook.physics;

/** Oil level and oil volume of a round tube, {@code dV = A dh}, with or without a rod in it. */
public final class OilLevel {

  private OilLevel() {}

  /**
   * Volume in m³ of a change of level.
   *
   * @param change m, of either sign, within 1 m; zero gives zero
   * @param bore inner diameter, m
   * @param rod diameter of the rod that stands in it, m; zero for none, less than the bore
   */
  public static double volume(double change, double bore, double rod) {
    return Given.within("change of level", change, -1, 1) * area(bore, rod);
  }

  /** Change of level in m of a volume in m³, of either sign, within 10 L: the inverse. */
  public static double level(double volume, double bore, double rod) {
    return Given.within("oil", volume, -1e-2, 1e-2) / area(bore, rod);
  }

  private static double area(double bore, double rod) {
    Given.diameter("bore", bore);
    Given.within("rod", rod, 0, 0.99 * bore);
    return Bore.area(bore) - Bore.area(rod);
  }
}
