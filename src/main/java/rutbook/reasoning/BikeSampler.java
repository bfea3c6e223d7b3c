package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws plausible bikes by Gibbs' method on grids (each unknown in turn from its own chances, the
 * others as they stand). One setup is the most comfortable for all complaints: what one complaint
 * says of it helps to understand the others. A rule holds, does nothing or is reversed; how often
 * is learned from the notebook's own motos. The seed is fixed: the same notebook gives the same
 * bikes.
 */
final class BikeSampler {
  private static final double[] BEST = {-7.5, -6, -5, -4, -3, -1.5, 0, 1.5, 3, 4, 5, 6, 7.5};
  private static final double[] BEST_LOG =
      logs(0.01, 0.05, 0.055, 0.06, 0.06, 0.025, 0.48, 0.025, 0.06, 0.06, 0.055, 0.05, 0.01);
  private static final double[] LEFT = {
    -1.05, -0.9, -0.75, -0.6, -0.45, -0.3, -0.15, 0, 0.3, 1, 2, 3
  };
  private static final double[] LEFT_LOG = {-2.2, -1, -0.4, 0, 0, -0.3, -1, -2, -3.5, -5, -6, -6.5};
  private static final double[] ROUGHENS = {0, 0.04, 0.08, 0.12, 0.16, 0.24, 0.32};
  private static final double[] ROUGHENS_LOG = {-0.3, -0.4, -0.3, -0.2, -0.5, -1.2, -2.2};
  private static final double[] DAYS = {-1.8, -1.2, -0.8, -0.4, 0, 0.4, 0.8, 1.2, 1.8};
  private static final double DAY_SD = 0.6;
  private static final double[] DAYS_LOG =
      Arrays.stream(DAYS).map(day -> -day * day / (2 * DAY_SD * DAY_SD)).toArray();
  private static final double[] NOISE_LOG = {-0.7, 0, 0, -1, -2.5};

  /** Effects that no rule speaks of are many and small: each is drawn in one sweep of so many. */
  private static final int SELDOM = 4;

  private static final double[] USUAL = {9.6, 1.44, 0.96};

  private final PriorCell[][] cells;
  private final double[][] room;
  private final RecentRatings recent;
  private final OldEvidence[] old;
  private final SplittableRandom random;
  private final double[] log = new double[40];
  private final double[] logShare = new double[3];
  private final BikeState at;
  private int sweeps;

  /**
   * A chain.
   *
   * @param cells what may be true of a dose, by complaint and setting
   * @param room least and most doses from the baseline, by setting
   * @param old what older motos say, by complaint; null where there are none
   */
  BikeSampler(
      PriorCell[][] cells, double[][] room, RecentRatings recent, OldEvidence[] old, long seed) {
    this.cells = cells;
    this.room = room;
    this.recent = recent;
    this.old = old;
    random = new SplittableRandom(seed);
    double[] best = new double[room.length];
    for (int j = 0; j < best.length; j++) {
      double wish = BEST[random.nextInt(BEST.length)];
      best[j] = Math.max(room[j][0], Math.min(room[j][1], wish));
    }
    at = new BikeState(cells, best, recent);
    drawShares();
  }

  /** The bikes after some sweeps that are thrown away. */
  List<PlausibleBikes.Bike> draw(int thrownAway, int kept) {
    List<PlausibleBikes.Bike> bikes = new ArrayList<>();
    for (int i = 0; i < thrownAway + kept; i++) {
      sweep();
      if (i >= thrownAway) {
        bikes.add(at.bike());
      }
    }
    return bikes;
  }

  private void sweep() {
    for (int j = 0; j < at.settings; j++) {
      drawBest(j);
    }
    for (int s = 0; s < at.complaints; s++) {
      for (int j = 0; j < at.settings; j++) {
        if (cells[s][j].isListed() || (sweeps + s + j) % SELDOM == 0) {
          drawEffect(s, j);
        }
      }
      begin(LEFT_LOG);
      addShifted(s, -1, LEFT, at.left[s]);
      at.setLeft(s, LEFT[drawn(LEFT.length)]);
      for (int d = at.day[s].length == 1 ? 1 : 0; d < at.day[s].length; d++) {
        begin(DAYS_LOG);
        addShifted(s, d, DAYS, at.day[s][d]);
        at.setDay(s, d, DAYS[drawn(DAYS.length)]);
      }
    }
    drawRoughening();
    drawNoise();
    drawShares();
    sweeps++;
  }

  private void begin(double[] logs) {
    System.arraycopy(logs, 0, log, 0, logs.length);
  }

  private void drawBest(int j) {
    int n = BEST.length;
    begin(BEST_LOG);
    for (int i = 0; i < n; i++) {
      if (BEST[i] < room[j][0] || BEST[i] > room[j][1]) {
        log[i] = Double.NEGATIVE_INFINITY;
      }
    }
    for (int s = 0; s < at.complaints; s++) {
      double each = cells[s][j].isListed() ? at.effect[s][j] : 0;
      for (int t = 0; each != 0 && t < at.motos; t++) {
        float[] table = at.table(s, t);
        if (table != null) {
          double from = at.mean[s][t] + each * at.best[j];
          double weight = recent.weight()[t];
          for (int i = 0; i < n; i++) {
            log[i] += weight * RatingChances.at(table, from - each * BEST[i]);
          }
        }
      }
    }
    at.setBest(j, BEST[drawn(n)]);
  }

  private void drawEffect(int s, int j) {
    PriorCell cell = cells[s][j];
    int n = cell.value().length;
    for (int i = 0; i < n; i++) {
      log[i] = cell.log()[i] + (cell.isListed() ? logShare[cell.regime()[i]] : 0);
      if (old[s] != null) {
        log[i] += old[s].log(at.effect[s], j, cell.value()[i]);
      }
    }
    for (int t = 0; t < at.motos; t++) {
      float[] table = at.table(s, t);
      double off = at.off(s, j, recent.x()[t][j]);
      if (table != null && off != 0) {
        double from = at.mean[s][t] - at.effect[s][j] * off;
        double weight = recent.weight()[t];
        for (int i = 0; i < n; i++) {
          log[i] += weight * RatingChances.at(table, from + cell.value()[i] * off);
        }
      }
    }
    int i = drawn(n);
    at.setEffect(s, j, cell.value()[i], cell.regime()[i]);
  }

  /** Adds what the ratings of a complaint, of one day or all, say of a term that shifts them. */
  private void addShifted(int s, int ofDay, double[] values, double now) {
    for (int t = 0; t < at.motos; t++) {
      float[] table = ofDay < 0 || recent.day()[t] == ofDay ? at.table(s, t) : null;
      if (table != null) {
        double from = at.mean[s][t] - now;
        for (int i = 0; i < values.length; i++) {
          log[i] += recent.weight()[t] * RatingChances.at(table, from + values[i]);
        }
      }
    }
  }

  private void drawRoughening() {
    begin(ROUGHENS_LOG);
    for (int s = 0; s < at.complaints; s++) {
      for (int t = 0; t < at.motos; t++) {
        float[] table = at.table(s, t);
        double order = recent.order()[t];
        if (table != null && order != 0) {
          double from = at.mean[s][t] - at.roughens * order;
          for (int i = 0; i < ROUGHENS.length; i++) {
            log[i] += recent.weight()[t] * RatingChances.at(table, from + ROUGHENS[i] * order);
          }
        }
      }
    }
    at.setRoughens(ROUGHENS[drawn(ROUGHENS.length)]);
  }

  private void drawNoise() {
    begin(NOISE_LOG);
    for (int s = 0; s < at.complaints; s++) {
      for (int t = 0; t < at.motos; t++) {
        int code = recent.code()[s][t];
        if (code != RatingChances.NOT_MENTIONED) {
          for (int i = 0; i < NOISE_LOG.length; i++) {
            float[] table = RatingChances.table(i, code);
            log[i] += recent.weight()[t] * RatingChances.at(table, at.mean[s][t]);
          }
        }
      }
    }
    at.noise = drawn(NOISE_LOG.length);
  }

  /** How often rules hold, from how often they do on this bike and from what is usual. */
  private void drawShares() {
    double[] count = USUAL.clone();
    double sum = 0;
    for (int s = 0; s < at.complaints; s++) {
      for (int j = 0; j < at.settings; j++) {
        if (cells[s][j].isListed()) {
          count[at.regime[s][j]]++;
        }
      }
    }
    for (double each : count) {
      sum += each;
    }
    for (int i = 0; i < logShare.length; i++) {
      logShare[i] = StrictMath.log(count[i] / sum);
    }
  }

  private int drawn(int n) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      most = Math.max(most, log[i]);
    }
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double less = log[i] - most;
      log[i] = less < -20 ? 0 : StrictMath.exp(less);
      sum += log[i];
    }
    double share = random.nextDouble() * sum;
    for (int i = 0; i < n; i++) {
      share -= log[i];
      if (share <= 0) {
        return i;
      }
    }
    return n - 1;
  }

  private static double[] logs(double... chances) {
    return Arrays.stream(chances).map(StrictMath::log).toArray();
  }
}
