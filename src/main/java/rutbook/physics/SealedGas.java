package rutbook.physics;

/** Gas in a rigid chamber that is warmed, cooled, or carried up a hill. */
public final class SealedGas {

  private SealedGas() {}

  /**
   * Absolute pressure in Pa at another temperature, {@code p2 = p1 T2 / T1} (law of Gay-Lussac,
   * constant volume).
   *
   * @param pressure absolute, Pa
   * @param from K, 200 to 500
   * @param to K, 200 to 500
   */
  public static double pressureAt(double pressure, double from, double to) {
    Given.pressure("pressure", pressure);
    Given.within("temperature", from, 200, 500);
    Given.within("temperature", to, 200, 500);
    return pressure * to / from;
  }

  /**
   * What the gauge reads in Pa after a move between two outside pressures at the same temperature,
   * {@code g2 = g1 + p_outside1 − p_outside2}. Negative when the outside wins.
   */
  public static double gaugeAt(double gauge, double outsideThen, double outsideNow) {
    Given.within("gauge pressure", gauge, -1e5, 4e7);
    Given.pressure("outside pressure", outsideThen);
    Given.pressure("outside pressure", outsideNow);
    return gauge + outsideThen - outsideNow;
  }

  /**
   * What the gauge reads in Pa after both moves: warmed or cooled as absolute pressure, then read
   * against the air outside.
   */
  public static double gaugeAt(
      double gauge, double outsideThen, double outsideNow, double kelvinThen, double kelvinNow) {
    Given.within("gauge pressure", gauge, -1e5, 4e7);
    double absolute = gauge + Given.pressure("outside pressure", outsideThen);
    double now = pressureAt(absolute, kelvinThen, kelvinNow);
    return now - Given.pressure("outside pressure", outsideNow);
  }
}
