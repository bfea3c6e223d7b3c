package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import rutbook.units.Numerals;

/**
 * What a chart shows along one side, in the units that are shown.
 *
 * @param title with its unit
 * @param least at the left or at the bottom; above zero on an axis of powers
 * @param most above the least
 * @param numerals of the numbers beside its ticks
 */
public record Axis(String title, double least, double most, Kind kind, Numerals numerals) {
  /** How numbers lie along it. */
  public enum Kind {
    EVEN,
    /** By their logarithm: equal ratios are equally far apart. */
    POWERS
  }

  private static final int[] ROUND = {1, 2, 5};

  public Axis {
    boolean finite = Double.isFinite(least) && Double.isFinite(most);
    if (!finite || !(least < most) || kind == Kind.POWERS && !(least > 0)) {
      throw new IllegalArgumentException("an axis from " + least + " to " + most);
    }
  }

  /** An even axis from one number to another. */
  public static Axis even(String title, double least, double most, Numerals numerals) {
    return new Axis(title, least, most, Kind.EVEN, numerals);
  }

  /** An even axis from zero to a round number at or above the greatest; to one for nothing. */
  public static Axis fromZero(String title, double greatest, Numerals numerals) {
    return even(title, 0, greatest > 0 ? roundUp(greatest) : 1, numerals);
  }

  /** An even axis that holds both numbers between round ones. */
  public static Axis around(String title, double low, double high, Numerals numerals) {
    double span = Math.max(high - low, Math.abs(high) * 1e-3 + 1e-9);
    double step = step(span / 5).doubleValue();
    double least = Math.floor(low / step) * step;
    return even(title, least, Math.ceil(high / step + 1e-9) * step, numerals);
  }

  /** The next of 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8 times a power of ten. */
  private static double roundUp(double number) {
    double power = Math.pow(10, Math.floor(Math.log10(number)));
    for (double each : new double[] {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10}) {
      if (each * power >= number * (1 - 1e-9)) {
        return each * power;
      }
    }
    return 10 * power;
  }

  /** How far along a number lies: 0 at the least, 1 at the most; numbers beyond lie beyond. */
  public double share(double number) {
    return kind == Kind.EVEN
        ? (number - least) / (most - least)
        : Math.log(Math.max(number, Double.MIN_NORMAL) / least) / Math.log(most / least);
  }

  /** The number at a share: the inverse. */
  public double at(double share) {
    return kind == Kind.EVEN
        ? least + share * (most - least)
        : least * Math.pow(most / least, share);
  }

  /** Whether a number lies on it, ends included. */
  public boolean holds(double number) {
    double slack = 1e-9 * (most - least);
    return number >= least - slack && number <= most + slack;
  }

  /**
   * Round places, as many as fit.
   *
   * @param atMost ticks at the most, two or more
   */
  public List<BigDecimal> ticks(int atMost) {
    return kind == Kind.EVEN ? evenTicks(atMost) : powerTicks(atMost);
  }

  /** By the least round step that leaves few enough; a finer one where that would leave one. */
  private List<BigDecimal> evenTicks(int atMost) {
    double distance = (most - least) / Math.max(1, atMost);
    List<BigDecimal> ticks = Ticks.multiples(step(distance), least, most);
    while (ticks.size() > atMost) {
      distance *= 1.5;
      List<BigDecimal> fewer = Ticks.multiples(step(distance), least, most);
      if (fewer.size() < 2) {
        return ticks;
      }
      ticks = fewer;
    }
    while (ticks.size() < 2) {
      distance /= 2;
      ticks = Ticks.multiples(step(distance), least, most);
    }
    return ticks;
  }

  /** The least round step that is no less than a distance. */
  private static BigDecimal step(double distance) {
    int power = (int) Math.floor(Math.log10(distance) - 1e-9);
    for (int over = 0; over < 2; over++) {
      for (int round : ROUND) {
        BigDecimal step = BigDecimal.valueOf(round).scaleByPowerOfTen(power + over);
        if (step.doubleValue() >= distance * (1 - 1e-9)) {
          return step;
        }
      }
    }
    return BigDecimal.valueOf(1).scaleByPowerOfTen(power + 2);
  }

  /** 1, 2, 5 and their tenfolds; where those are too many, only the powers of ten. */
  private List<BigDecimal> powerTicks(int atMost) {
    List<BigDecimal> all = new ArrayList<>();
    List<BigDecimal> tens = new ArrayList<>();
    int first = (int) Math.floor(Math.log10(least));
    int last = (int) Math.ceil(Math.log10(most));
    for (int power = first; power <= last; power++) {
      for (int round : ROUND) {
        BigDecimal tick = BigDecimal.valueOf(round).scaleByPowerOfTen(power);
        if (holds(tick.doubleValue())) {
          all.add(tick);
          if (round == 1) {
            tens.add(tick);
          }
        }
      }
    }
    return all.size() <= atMost || tens.size() < 2 ? all : tens;
  }

  /** Numbers as they stand beside their ticks, all with as many decimals. */
  List<String> labels(List<BigDecimal> ticks) {
    int decimals =
        ticks.stream().mapToInt(tick -> tick.stripTrailingZeros().scale()).max().orElse(0);
    return ticks.stream().map(tick -> numerals.aligned(tick, Math.max(0, decimals))).toList();
  }
}
