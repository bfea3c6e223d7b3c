package rutbook.physics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The rear end as it stands today: from two sags and the rider's weight to the spring and preload
 * that would meet both targets. Straight-line model {@code s = F/K − p}, an estimate on a linkage
 * whose ratio changes along its travel.
 *
 * @param riderLoad weight of the rider in gear on that wheel, N
 * @param raceSag rider aboard, m
 * @param freeSag bike alone, m; at least 10 mm less than race sag
 * @param springRate of the spring fitted, N/m
 * @param preload of the spring as fitted, m at the spring
 * @param ratio spring against wheel
 */
public record SagWorksheet(
    double riderLoad,
    double raceSag,
    double freeSag,
    double springRate,
    double preload,
    MotionRatio ratio) {

  /** How far off each measured sag may be, m: what a careful tape gives. */
  public static final double TAPE = 0.002;

  public SagWorksheet {
    Given.within("rider's load on the wheel", riderLoad, 50, 5000);
    Given.within("race sag", raceSag, 0, 1);
    Given.within("free sag", freeSag, 0, 1);
    apart(raceSag, freeSag);
    Given.within("spring rate", springRate, 1e2, 1e6);
    Given.within("preload", preload, 0, 0.2);
  }

  /** A number with the ends that the tape's error allows. */
  public record Range(double least, double middle, double most) {}

  /**
   * A spring and what it needs.
   *
   * @param rate N/m, with the range from the tape's error on both sags measured today
   * @param share of today's rate, less one (0.12 is twelve per cent stiffer)
   * @param preload at the spring, m; negative when even none is too much, so it cannot be fitted
   */
  public record Plan(Range rate, double share, double preload) {}

  /**
   * What a given spring would come to with race sag set right.
   *
   * @param rate N/m
   * @param preload at the spring, m; negative when it cannot be fitted
   * @param freeSag m; negative when the bike alone would not settle off its top stop
   */
  public record Fitted(double rate, double preload, double freeSag) {}

  /** Rate at the wheel from a rider's load in N and two sags in m, {@code W/(s_race − s_free)}. */
  public static double wheelRate(double riderLoad, double raceSag, double freeSag) {
    apart(raceSag, freeSag);
    return Given.within("rider's load", riderLoad, 1, 5000) / (raceSag - freeSag);
  }

  /** Rate at the wheel in N/m by the two sags, with what ±2 mm on each of them allows. */
  public Range wheelRate() {
    double apart = raceSag - freeSag;
    return new Range(
        riderLoad / (apart + 2 * TAPE), riderLoad / apart, riderLoad / (apart - 2 * TAPE));
  }

  /** Rate at the wheel in N/m by spring and motion ratio: a cross-check of the one by sags. */
  public double wheelRateOfSpring() {
    return ratio.wheelRate(springRate);
  }

  /** Load of bike and rider on the wheel in N, {@code K (s_free + p/MR) + W}. */
  public double load() {
    return bikeLoad() + riderLoad;
  }

  /** Load of the bike alone on the wheel in N. */
  public double bikeLoad() {
    return wheelRate().middle() * (freeSag + preload / ratio.springOverWheel());
  }

  /**
   * Spring and preload that meet both targets: {@code K' = W/(s_race' − s_free')}, {@code k' = k
   * K'/K}, {@code p' = (F/K' − s_race') MR}. Today's sags as targets give back today's spring.
   *
   * @param race target, m
   * @param free target, m, at least 10 mm less
   */
  public Plan meeting(double race, double free) {
    Given.within("target race sag", race, 0, 1);
    Given.within("target free sag", free, 0, 1);
    double wanted = wheelRate(riderLoad, race, free);
    Range now = wheelRate();
    double rate = springRate * wanted / now.middle();
    return new Plan(
        new Range(springRate * wanted / now.most(), rate, springRate * wanted / now.least()),
        wanted / now.middle() - 1,
        (load() / wanted - race) * ratio.springOverWheel());
  }

  /**
   * The plan that aims at the nearest edge of the free-sag window: the least change that serves.
   */
  public Plan meeting(double race, SagWindow free) {
    return meeting(race, free.nearest(freeSag));
  }

  /** What a spring in N/m would come to when preload sets race sag, m. */
  public Fitted with(double rate, double race) {
    Given.within("spring rate", rate, 1e2, 1e6);
    Given.within("target race sag", race, 0, 1);
    double wheel = wheelRate().middle() * rate / springRate;
    return fitted(rate, wheel, bikeLoad(), riderLoad, race, ratio);
  }

  /**
   * The same from loads in N that are known: {@code p_w = F/K − s_race}, {@code s_free = B/K −
   * p_w}.
   */
  public static Fitted with(
      double rate, MotionRatio ratio, double bikeLoad, double riderLoad, double race) {
    Given.within("bike's load", bikeLoad, 0, 5000);
    Given.within("rider's load", riderLoad, 0, 5000);
    Given.within("spring rate", rate, 1e2, 1e6);
    Given.within("target race sag", race, 0, 1);
    return fitted(rate, ratio.wheelRate(rate), bikeLoad, riderLoad, race, ratio);
  }

  private static Fitted fitted(
      double rate, double wheel, double bike, double rider, double race, MotionRatio ratio) {
    double atWheel = (bike + rider) / wheel - race;
    return new Fitted(rate, atWheel * ratio.springOverWheel(), bike / wheel - atWheel);
  }

  /** The springs of a list next below and next above a rate; one that equals it is both. */
  public record Neighbours(Optional<Double> softer, Optional<Double> stiffer) {}

  /** The nearest springs of the rider's list either side of a rate; none of an empty list. */
  public static Neighbours nearest(double rate, List<Double> springs) {
    Given.within("spring rate", rate, 1e2, 1e6);
    return new Neighbours(
        springs.stream().filter(s -> s <= rate).max(Comparator.naturalOrder()),
        springs.stream().filter(s -> s >= rate).min(Comparator.naturalOrder()));
  }

  private static void apart(double race, double free) {
    Given.within("race sag less free sag", race - free, 0.01, 1);
  }
}
