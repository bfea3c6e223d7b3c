package rutbook.stats;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One slope shared by groups that each have a level of their own: least squares on what is left
 * when every group's mean is taken off, which is the fit with a column of ones for each group
 * (theorem of Frisch, Waugh and Lovell) without making those columns.
 *
 * @param slope in units of y for one of x
 * @param standardError of the slope
 * @param degreesOfFreedom points less groups less one, at least one
 */
public record CommonSlope(double slope, double standardError, int degreesOfFreedom) {

  /** Sums of one group, from which its mean comes. */
  private static final class Group {
    private final Sum x = new Sum();
    private final Sum y = new Sum();
    private int count;

    void add(double nextX, double nextY) {
      x.add(nextX);
      y.add(nextY);
      count++;
    }

    double meanX() {
      return x.value() / count;
    }

    double meanY() {
      return y.value() / count;
    }
  }

  /**
   * The fit.
   *
   * @param group of each point, any numbers
   * @param x of each point, within ±1e9; not the same all over in every group
   * @param y of each point, within ±1e9
   * @throws IllegalArgumentException when there are fewer points than groups and two, or x does not
   *     vary within any group
   */
  public static CommonSlope fit(int[] group, double[] x, double[] y) {
    Given.size("number of groups' places", group.length, y.length);
    Given.size("number of x", x.length, y.length);
    Given.numbers("x", x);
    Given.numbers("y", y);
    Map<Integer, Group> groups = new LinkedHashMap<>();
    for (int i = 0; i < y.length; i++) {
      groups.computeIfAbsent(group[i], number -> new Group()).add(x[i], y[i]);
    }
    Given.within("number of points", y.length, groups.size() + 2, Integer.MAX_VALUE);
    double[] offX = new double[x.length];
    double[] offY = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      Group own = groups.get(group[i]);
      offX[i] = x[i] - own.meanX();
      offY[i] = y[i] - own.meanY();
    }
    double squares = products(offX, offX);
    double slope = products(offX, offY) / squares;
    if (!Double.isFinite(slope)) {
      throw new IllegalArgumentException("x does not vary within any group");
    }
    int freedom = y.length - groups.size() - 1;
    Sum left = new Sum();
    for (int i = 0; i < y.length; i++) {
      double off = offY[i] - slope * offX[i];
      left.add(off * off);
    }
    return new CommonSlope(slope, Math.sqrt(left.value() / freedom / squares), freedom);
  }

  private static double products(double[] one, double[] other) {
    Sum sum = new Sum();
    for (int i = 0; i < one.length; i++) {
      sum.add(one[i] * other[i]);
    }
    return sum.value();
  }

  /** Half the width of the slope's 95 % interval. */
  public double halfInterval() {
    return new StudentT(degreesOfFreedom).of95() * standardError;
  }

  /** Chance of a slope at least this far from zero, either way, when it is truly zero. */
  public double chance() {
    return new StudentT(degreesOfFreedom).twoSided(slope / standardError);
  }
}
