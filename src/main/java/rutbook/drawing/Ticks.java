package rutbook.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rutbook.units.Amount;

/** Round places along a line, close enough to read and far enough apart to see. */
final class Ticks {
  private static final int[] ROUND = {1, 2, 5};
  private static final int DECADES = 6;

  private Ticks() {}

  /**
   * The distances that ticks may have, rising: the step itself, then the round numbers that are
   * whole steps; for a step that no round number holds, such as 3, its own 2, 5, 10 and so on.
   */
  static List<BigDecimal> distances(BigDecimal step) {
    List<BigDecimal> distances = new ArrayList<>(List.of(step));
    int exponent = step.precision() - step.scale() - 1;
    for (int power = exponent; power <= exponent + DECADES; power++) {
      for (int round : ROUND) {
        BigDecimal number = BigDecimal.valueOf(round).scaleByPowerOfTen(power);
        if (number.compareTo(step) > 0 && isMultiple(number, step)) {
          distances.add(number);
        }
      }
    }
    if (distances.size() == 1) {
      for (int power = 0; power <= DECADES; power++) {
        for (int round : ROUND) {
          distances.add(step.multiply(BigDecimal.valueOf(round).scaleByPowerOfTen(power)));
        }
      }
    }
    return distances;
  }

  /** The round number, 1, 2 or 5 with noughts, that is nearest by ratio: 0.17 fl oz is 0.2. */
  static Amount round(Amount step) {
    double exact = step.value().doubleValue();
    int power = (int) Math.floor(Math.log10(exact));
    BigDecimal nearest = BigDecimal.ONE.scaleByPowerOfTen(power + 1);
    for (int each : ROUND) {
      BigDecimal candidate = BigDecimal.valueOf(each).scaleByPowerOfTen(power);
      if (farness(candidate, exact) < farness(nearest, exact)) {
        nearest = candidate;
      }
    }
    return step.withValue(nearest);
  }

  private static double farness(BigDecimal candidate, double exact) {
    return Math.abs(Math.log(candidate.doubleValue() / exact));
  }

  /** The least distance, a multiple of another, that keeps ticks so many pixels apart. */
  static BigDecimal distance(
      BigDecimal step, BigDecimal multipleOf, double pixelsEach, double least) {
    List<BigDecimal> distances = distances(step);
    return distances.stream()
        .filter(each -> isMultiple(each, multipleOf))
        .filter(each -> each.doubleValue() * pixelsEach >= least)
        .findFirst()
        .orElse(distances.get(distances.size() - 1));
  }

  /** The multiples of a distance from the least to the most, both included. */
  static List<BigDecimal> multiples(BigDecimal distance, double least, double most) {
    List<BigDecimal> places = new ArrayList<>();
    double slack = distance.doubleValue() * 1e-9;
    BigDecimal at =
        BigDecimal.valueOf(least - slack)
            .divide(distance, 0, RoundingMode.CEILING)
            .multiply(distance);
    while (at.doubleValue() <= most + slack) {
      places.add(at);
      at = at.add(distance);
    }
    return places;
  }

  static boolean isMultiple(BigDecimal place, BigDecimal distance) {
    return place.remainder(distance).signum() == 0;
  }
}
