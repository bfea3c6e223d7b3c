package rutbook.physics;

/**
 * Viscosity of two oils mixed, both at one temperature: an estimate, least sure for oils with
 * viscosity improvers; a measured blend makes it exact.
 *
 * @param doubleLog mm²/s by volume, {@code log10 log10 (ν + 0.7)} mixed straight (ASTM form)
 * @param refutas mm²/s by the Refutas index, a second opinion that shows how far methods differ
 */
public record Blend(double doubleLog, double refutas) {

  private static final double REFUTAS_SLOPE = 14.534;
  private static final double REFUTAS_START = 10.975;

  /**
   * The blend of two oils. All of one gives that one; equal oils give themselves.
   *
   * @param first mm²/s, 1 to 1e5
   * @param second mm²/s, 1 to 1e5
   * @param part of the first by volume, 0 to 1 (taken as mass for the second opinion: mineral oils
   *     differ in density by a few per cent)
   */
  public static Blend of(double first, double second, double part) {
    Given.within("part of the first oil", part, 0, 1);
    double y = part * doubleLog(first) + (1 - part) * doubleLog(second);
    double index = part * refutasIndex(first) + (1 - part) * refutasIndex(second);
    return new Blend(Math.pow(10, Math.pow(10, y)) - 0.7, refutasViscosity(index));
  }

  /** Refutas blending index, {@code 14.534 ln ln (ν + 0.8) + 10.975} (Maples 2000). */
  public static double refutasIndex(double viscosity) {
    return REFUTAS_SLOPE * Math.log(Math.log(oil(viscosity) + 0.8)) + REFUTAS_START;
  }

  private static double refutasViscosity(double index) {
    return Math.exp(Math.exp((index - REFUTAS_START) / REFUTAS_SLOPE)) - 0.8;
  }

  private static double doubleLog(double viscosity) {
    return Math.log10(Math.log10(oil(viscosity) + 0.7));
  }

  private static double oil(double viscosity) {
    return Given.within("viscosity", viscosity, 1, 1e5);
  }
}
