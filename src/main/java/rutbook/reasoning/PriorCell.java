package rutbook.reasoning;

/**
 * What one dose of a setting may do to a complaint before any moto: values with their chances. A
 * rule holds as a rule, more or less strongly; on some bikes it does nothing, on a few the reverse.
 *
 * @param rule severity points per dose that the rules say, 0 where there is none
 * @param value severity points per dose
 * @param regime of each value: {@link #HOLDS}, {@link #NOTHING} or {@link #REVERSED}
 * @param log of the chance of each value within its regime
 */
record PriorCell(double rule, double[] value, int[] regime, double[] log) {
  static final int HOLDS = 0;
  static final int NOTHING = 1;
  static final int REVERSED = 2;

  private static final double[] TURNS = {-1.5, -1, -0.5, 0, 0.5, 1, 1.5};
  private static final double SPREAD = 0.4;
  private static final double[] UNLISTED = {-0.24, -0.12, 0, 0.12, 0.24};
  private static final double[] UNLISTED_CHANCE = {0.03, 0.05, 0.84, 0.05, 0.03};

  static PriorCell of(double rule, boolean disputed) {
    return rule == 0 ? unlisted() : listed(rule, disputed);
  }

  boolean isListed() {
    return rule != 0;
  }

  private static PriorCell listed(double rule, boolean disputed) {
    int n = TURNS.length;
    double spread = disputed ? SPREAD * 1.25 : SPREAD;
    double[] value = new double[2 * n + 1];
    int[] regime = new int[2 * n + 1];
    double[] log = new double[2 * n + 1];
    double sum = 0;
    for (double turn : TURNS) {
      sum += StrictMath.exp(-turn * turn / 2);
    }
    regime[0] = NOTHING;
    for (int i = 0; i < n; i++) {
      double size = rule * StrictMath.exp(spread * TURNS[i]);
      double chance = -TURNS[i] * TURNS[i] / 2 - StrictMath.log(sum);
      value[1 + i] = size;
      regime[1 + i] = HOLDS;
      log[1 + i] = chance;
      value[1 + n + i] = -size;
      regime[1 + n + i] = REVERSED;
      log[1 + n + i] = chance;
    }
    return new PriorCell(rule, value, regime, log);
  }

  private static PriorCell unlisted() {
    double[] log = new double[UNLISTED.length];
    for (int i = 0; i < log.length; i++) {
      log[i] = StrictMath.log(UNLISTED_CHANCE[i]);
    }
    return new PriorCell(0, UNLISTED.clone(), new int[UNLISTED.length], log);
  }
}
