package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws plausible bikes by Gibbs' method on grids. A complaint's severity in a moto is {@code e + Σ
 * β (x − b) + day + δ · order}: b is the most comfortable setup, one for all complaints, e what is
 * left of the complaint there, β the effect of a dose, δ how a track roughens from moto to moto. A
 * rule holds, does nothing or is reversed; how often is learned from the notebook's own motos. The
 * seed is fixed: the same notebook gives the same bikes.
 */
final class BikeSampler {
  private static final double[] BEST = {-7.5, -6, -5, -4, -3, -1.5, 0, 1.5, 3, 4, 5, 6, 7.5};
  private static final double[] BEST_CHANCE = {
    0.01, 0.05, 0.055, 0.06, 0.06, 0.025, 0.48, 0.025, 0.06, 0.06, 0.055, 0.05, 0.01
  };
  private static final double[] LEFT = {
    -1.05, -0.9, -0.75, -0.6, -0.45, -0.3, -0.15, 0, 0.3, 1, 2, 3
  };
  private static final double[] LEFT_LOG = {-2.2, -1, -0.4, 0, 0, -0.3, -1, -2, -3.5, -5, -6, -6.5};
  private static final double[] ROUGHENS = {0, 0.04, 0.08, 0.12, 0.16, 0.24, 0.32};
  private static final double[] ROUGHENS_LOG = {-0.3, -0.4, -0.3, -0.2, -0.5, -1.2, -2.2};
  private static final double[] DAYS = {-1.8, -1.2, -0.8, -0.4, 0, 0.4, 0.8, 1.2, 1.8};
  private static final double DAY_SD = 0.8;
  private static final double[] NOISE_LOG = {-0.7, 0, 0, -1, -2.5};
  private static final double[] TRUST = {16, 2.4, 1.6};

  private final PriorCell[][] cells;
  private final double[][] room;
  private final RecentRatings recent;
  private final OldEvidence[] old;
  private final SplittableRandom random;
  private final double[] log = new double[40];

  private final int complaints;
  private final int settings;
  private final int motos;
  private final double[] best;
  private final double[] left;
  private final double[][] effect;
  private final int[][] regime;
  private final double[][] day;
  private double roughens = 0.08;
  private int noise = 1;
  private final double[][] mean;
  private final double[] share = {0.8, 0.12, 0.08};

  /**
   * A chain.
   *
   * @param cells what may be true of a dose, by complaint and setting
   * @param room least and most doses from the baseline, by setting
   * @param old what older motos say, by complaint
   */
  BikeSampler(
      PriorCell[][] cells, double[][] room, RecentRatings recent, OldEvidence[] old, long seed) {
    this.cells = cells;
    this.room = room;
    this.recent = recent;
    this.old = old;
    random = new SplittableRandom(seed);
    complaints = cells.length;
    settings = room.length;
    motos = recent.motos();
    best = new double[settings];
    left = new double[complaints];
    effect = new double[complaints][settings];
    regime = new int[complaints][settings];
    day = new double[complaints][recent.days()];
    mean = new double[complaints][motos];
    for (int s = 0; s < complaints; s++) {
      left[s] = -0.5;
      for (int j = 0; j < settings; j++) {
        effect[s][j] = cells[s][j].rule();
        regime[s][j] = cells[s][j].isListed() ? PriorCell.HOLDS : PriorCell.NOTHING;
      }
    }
    for (int j = 0; j < settings; j++) {
      best[j] = held(j, BEST[random.nextInt(BEST.length)]);
    }
    for (int s = 0; s < complaints; s++) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] = left[s] + roughens * recent.order()[t];
        for (int j = 0; j < settings; j++) {
          mean[s][t] += effect[s][j] * off(s, j, recent.x()[t][j]);
        }
      }
    }
  }

  private double held(int j, double wish) {
    return Math.max(room[j][0], Math.min(room[j][1], wish));
  }

  /** Doses that count: from the most comfortable setup where a rule speaks, else from baseline. */
  private double off(int s, int j, double x) {
    return cells[s][j].isListed() ? x - best[j] : x;
  }

  /** The bikes after some sweeps that are thrown away. */
  List<PlausibleBikes.Bike> draw(int thrownAway, int kept) {
    List<PlausibleBikes.Bike> bikes = new ArrayList<>();
    for (int i = 0; i < thrownAway + kept; i++) {
      sweep();
      if (i >= thrownAway) {
        bikes.add(bike());
      }
    }
    return bikes;
  }

  private void sweep() {
    for (int j = 0; j < settings; j++) {
      drawBest(j);
    }
    for (int s = 0; s < complaints; s++) {
      for (int j = 0; j < settings; j++) {
        drawEffect(s, j);
      }
      drawLeft(s);
      for (int d = 1; d < day[s].length; d++) {
        drawDay(s, d);
      }
    }
    drawRoughening();
    drawNoise();
    drawShares();
  }

  private void drawBest(int j) {
    int n = BEST.length;
    for (int i = 0; i < n; i++) {
      log[i] =
          BEST[i] < room[j][0] || BEST[i] > room[j][1]
              ? Double.NEGATIVE_INFINITY
              : Math.log(BEST_CHANCE[i]);
    }
    for (int s = 0; s < complaints; s++) {
      double each = cells[s][j].isListed() ? effect[s][j] : 0;
      if (each != 0) {
        for (int t = 0; t < motos; t++) {
          float[] table = table(s, t);
          if (table != null) {
            double from = mean[s][t] + each * best[j];
            double weight = recent.weight()[t];
            for (int i = 0; i < n; i++) {
              log[i] += weight * RatingChances.at(table, from - each * BEST[i]);
            }
          }
        }
      }
    }
    double next = BEST[drawn(n)];
    for (int s = 0; s < complaints; s++) {
      if (cells[s][j].isListed() && effect[s][j] != 0) {
        shift(s, effect[s][j] * (best[j] - next));
      }
    }
    best[j] = next;
  }

  private void drawEffect(int s, int j) {
    PriorCell cell = cells[s][j];
    int n = cell.value().length;
    for (int i = 0; i < n; i++) {
      log[i] = cell.log()[i] + (cell.isListed() ? Math.log(share[cell.regime()[i]]) : 0);
      if (old[s] != null) {
        log[i] += old[s].log(effect[s], j, cell.value()[i]);
      }
    }
    boolean moved = false;
    for (int t = 0; t < motos; t++) {
      float[] table = table(s, t);
      double off = off(s, j, recent.x()[t][j]);
      if (table != null && off != 0) {
        moved = true;
        double from = mean[s][t] - effect[s][j] * off;
        for (int i = 0; i < n; i++) {
          log[i] += recent.weight()[t] * RatingChances.at(table, from + cell.value()[i] * off);
        }
      }
    }
    int i = drawn(n);
    double change = cell.value()[i] - effect[s][j];
    effect[s][j] = cell.value()[i];
    regime[s][j] = cell.regime()[i];
    if (change != 0 && moved) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += change * off(s, j, recent.x()[t][j]);
      }
    }
  }

  private void drawLeft(int s) {
    System.arraycopy(LEFT_LOG, 0, log, 0, LEFT.length);
    addShifted(s, -1, LEFT, left[s]);
    double next = LEFT[drawn(LEFT.length)];
    shift(s, next - left[s]);
    left[s] = next;
  }

  private void drawDay(int s, int d) {
    for (int i = 0; i < DAYS.length; i++) {
      log[i] = -DAYS[i] * DAYS[i] / (2 * DAY_SD * DAY_SD);
    }
    addShifted(s, d, DAYS, day[s][d]);
    double next = DAYS[drawn(DAYS.length)];
    for (int t = 0; t < motos; t++) {
      if (recent.day()[t] == d) {
        mean[s][t] += next - day[s][d];
      }
    }
    day[s][d] = next;
  }

  /** Adds what the ratings of a complaint, of one day or all, say of a term that shifts them. */
  private void addShifted(int s, int ofDay, double[] values, double now) {
    for (int t = 0; t < motos; t++) {
      float[] table = ofDay < 0 || recent.day()[t] == ofDay ? table(s, t) : null;
      if (table != null) {
        for (int i = 0; i < values.length; i++) {
          log[i] += recent.weight()[t] * RatingChances.at(table, mean[s][t] + values[i] - now);
        }
      }
    }
  }

  private void drawRoughening() {
    System.arraycopy(ROUGHENS_LOG, 0, log, 0, ROUGHENS.length);
    for (int s = 0; s < complaints; s++) {
      for (int t = 0; t < motos; t++) {
        float[] table = table(s, t);
        double order = recent.order()[t];
        if (table != null && order != 0) {
          double from = mean[s][t] - roughens * order;
          for (int i = 0; i < ROUGHENS.length; i++) {
            log[i] += recent.weight()[t] * RatingChances.at(table, from + ROUGHENS[i] * order);
          }
        }
      }
    }
    double next = ROUGHENS[drawn(ROUGHENS.length)];
    for (int s = 0; s < complaints; s++) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += (next - roughens) * recent.order()[t];
      }
    }
    roughens = next;
  }

  private void drawNoise() {
    System.arraycopy(NOISE_LOG, 0, log, 0, NOISE_LOG.length);
    for (int s = 0; s < complaints; s++) {
      for (int t = 0; t < motos; t++) {
        int code = recent.code()[s][t];
        if (code != RatingChances.NOT_MENTIONED) {
          for (int i = 0; i < NOISE_LOG.length; i++) {
            log[i] +=
                recent.weight()[t] * RatingChances.at(RatingChances.table(i, code), mean[s][t]);
          }
        }
      }
    }
    noise = drawn(NOISE_LOG.length);
  }

  /** How often rules hold, from how often they do in this bike and from what is usual. */
  private void drawShares() {
    double[] count = TRUST.clone();
    for (int s = 0; s < complaints; s++) {
      for (int j = 0; j < settings; j++) {
        if (cells[s][j].isListed()) {
          count[regime[s][j]]++;
        }
      }
    }
    double sum = 0;
    for (double each : count) {
      sum += each;
    }
    for (int i = 0; i < share.length; i++) {
      share[i] = count[i] / sum;
    }
  }

  private float[] table(int s, int t) {
    int code = recent.code()[s][t];
    return code == RatingChances.NOT_MENTIONED ? null : RatingChances.table(noise, code);
  }

  private void shift(int s, double by) {
    if (by != 0) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += by;
      }
    }
  }

  private int drawn(int n) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      most = Math.max(most, log[i]);
    }
    double sum = 0;
    for (int i = 0; i < n; i++) {
      log[i] = Math.exp(log[i] - most);
      sum += log[i];
    }
    double at = random.nextDouble() * sum;
    for (int i = 0; i < n; i++) {
      at -= log[i];
      if (at <= 0) {
        return i;
      }
    }
    return n - 1;
  }

  private PlausibleBikes.Bike bike() {
    double[] here = new double[complaints];
    double[][] effects = new double[complaints][];
    for (int s = 0; s < complaints; s++) {
      here[s] = left[s] + roughens * recent.orderNow();
      for (int j = 0; j < settings; j++) {
        here[s] += effect[s][j] * off(s, j, recent.here()[j]);
      }
      effects[s] = effect[s].clone();
    }
    return new PlausibleBikes.Bike(here, effects, left.clone());
  }
}
