package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What one dose of a setting may do to a complaint before any moto: values with their chances. A
 * rule holds as a rule, more or less strongly; on some bikes it does nothing, on a few the reverse.
 *
 * @param listed whether a rule speaks of it
 * @param rule severity points per dose that the rules say, the mean while a question is open
 * @param value severity points per dose
 * @param regime of each value: {@link #HOLDS}, {@link #NOTHING} or {@link #REVERSED}
 * @param chance of each value within its regime
 */
record PriorCell(boolean listed, double rule, double[] value, int[] regime, double[] chance) {
  static final int HOLDS = 0;
  static final int NOTHING = 1;
  static final int REVERSED = 2;

  /** More than any cell has: four answers to two questions, each with every spread both ways. */
  static final int MOST_VALUES = 64;

  private static final double[] TURNS = {-1.5, -0.75, 0, 0.75, 1.5};
  private static final double SPREAD = 0.4;
  private static final double[] UNLISTED = {-0.24, -0.12, 0, 0.12, 0.24};
  private static final double[] UNLISTED_CHANCE = {0.03, 0.05, 0.84, 0.05, 0.03};

  /**
   * The cell for what the rules say of a dose.
   *
   * @param sizes severity points per dose with their chances, which sum to 1: several while a
   *     deciding question is open
   */
  static PriorCell of(SortedMap<Double, Double> sizes, boolean disputed) {
    return sizes.keySet().stream().allMatch(size -> size == 0)
        ? unlisted()
        : listed(sizes, disputed);
  }

  private static PriorCell listed(SortedMap<Double, Double> sizes, boolean disputed) {
    double spread = disputed ? SPREAD * 1.25 : SPREAD;
    double turns = 0;
    for (double turn : TURNS) {
      turns += StrictMath.exp(-turn * turn / 2);
    }
    List<double[]> points = new ArrayList<>();
    points.add(new double[] {0, NOTHING, 1});
    double mean = 0;
    for (Map.Entry<Double, Double> each : sizes.entrySet()) {
      double size = each.getKey();
      double open = each.getValue();
      mean += size * open;
      for (double turn : size == 0 ? new double[1] : TURNS) {
        double value = size * StrictMath.exp(spread * turn);
        double chance = size == 0 ? open : open * StrictMath.exp(-turn * turn / 2) / turns;
        points.add(new double[] {value, HOLDS, chance});
        points.add(new double[] {-value, REVERSED, chance});
      }
    }
    double[] value = points.stream().mapToDouble(each -> each[0]).toArray();
    int[] regime = points.stream().mapToInt(each -> (int) each[1]).toArray();
    double[] chance = points.stream().mapToDouble(each -> each[2]).toArray();
    return new PriorCell(true, mean, value, regime, chance);
  }

  private static PriorCell unlisted() {
    return new PriorCell(false, 0, UNLISTED, new int[UNLISTED.length], UNLISTED_CHANCE);
  }

  /** The place of the same value the other way round: it stands beside it. */
  int mirrored(int place) {
    return regime[place] == HOLDS ? place + 1 : regime[place] == REVERSED ? place - 1 : place;
  }

  /** The place of the value nearest to what the rules say. */
  int usual() {
    int usual = 0;
    for (int i = 1; i < value.length; i++) {
      usual = Math.abs(value[i] - rule) < Math.abs(value[usual] - rule) ? i : usual;
    }
    return usual;
  }
}
