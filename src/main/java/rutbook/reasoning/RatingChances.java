package rutbook.reasoning;

import rutbook.stats.Normal;

/**
 * The chance of what was written when the true severity is known, from a table: whole numbers from
 * 0 (anything up to a half) to 5 (anything from 4.5 up), or the coarser habits of some riders. One
 * rating in fifty is taken to say nothing, so that a slip of the pen is never decisive.
 */
final class RatingChances {
  /** Noise sds that are considered, severity points. */
  private static final double[] NOISE = {0.5, 0.65, 0.8, 1.0, 1.3, 1.65, 2.1, 2.6, 3.3};

  /** Steps of noise that a moto can be less sure by. */
  static final int MOST_UNSURE = NOISE.length - BeforeRiding.NOISE.size();

  static final int NOT_MENTIONED = -1;

  /** Ends of what each code stands for: six whole numbers, three coarse ones, two silences. */
  private static final double[][] ENDS = {
    {-99, 0.5},
    {0.5, 1.5},
    {1.5, 2.5},
    {2.5, 3.5},
    {3.5, 4.5},
    {4.5, 99},
    {-99, 1},
    {1, 3},
    {3, 99},
    {-99, 1.5},
    {-99, 1}
  };

  private static final int COARSE = 6;
  private static final int SILENT = 9;
  private static final double SLIP = 0.02;

  /** Keeps the product of hundreds of chances from vanishing; the same for all, so it cancels. */
  private static final double SCALE = 2;

  private static final double LEAST = -12;
  private static final double MOST = 14;
  private static final double STEPS = 25;
  private static final float[][][] CHANCES = chances();

  private RatingChances() {}

  /** The code of a rating from 0 to 5 by a rider who writes every number, or only even ones. */
  static int code(int severity, boolean coarse) {
    return coarse ? COARSE + Math.min(2, severity / 2) : severity;
  }

  /** The code of a silence that means that there was little. */
  static int silence(boolean coarse) {
    return coarse ? SILENT + 1 : SILENT;
  }

  /** The table of a noise and a code, to be read with {@link #at}. */
  static float[] table(int noise, int code) {
    return CHANCES[noise][code];
  }

  static float at(float[] table, double severity) {
    return read(table, (severity - LEAST) * STEPS);
  }

  /** Multiplies chances with those of a rating whose severity is {@code from + step · value}. */
  static void weigh(
      double[] chances, int first, float[] table, double from, double step, double[] values) {
    double place = (from - LEAST) * STEPS;
    double each = step * STEPS;
    for (int i = 0; i < values.length; i++) {
      chances[first + i] *= read(table, place + each * values[i]);
    }
  }

  private static float read(float[] table, double place) {
    return table[Math.max(0, Math.min(table.length - 1, (int) place))];
  }

  private static float[][][] chances() {
    int steps = (int) Math.round((MOST - LEAST) * STEPS);
    float[][][] chances = new float[NOISE.length][ENDS.length][steps];
    for (int n = 0; n < NOISE.length; n++) {
      for (int code = 0; code < ENDS.length; code++) {
        for (int i = 0; i < steps; i++) {
          double mean = LEAST + (i + 0.5) / STEPS;
          double chance =
              Normal.cumulative((ENDS[code][1] - mean) / NOISE[n])
                  - Normal.cumulative((ENDS[code][0] - mean) / NOISE[n]);
          chances[n][code][i] = (float) (SCALE * ((1 - SLIP) * chance + SLIP / 6));
        }
      }
    }
    return chances;
  }
}
