package rutbook.reasoning;

import java.util.Arrays;

/**
 * One bike as it may be, while the sampler works on it: the severity of every complaint in every
 * recent moto is {@code left + Σ effect · (x − best) + day + roughens · order}, kept up to date.
 * Whole numbers are places in the lists of {@link BeforeRiding} and of the {@link PriorCell}s.
 */
final class BikeState {
  private final PriorCell[][] cells;
  private final RecentRatings recent;

  final int complaints;
  final int settings;
  final int motos;

  /** Doses from the baseline to the most comfortable setup, one for all complaints. */
  final int[] best;

  private final double[][] places;

  /** What is left of each complaint there. */
  final int[] left;

  /** Severity points per dose, by complaint and setting. */
  final int[][] effect;

  private final double[][] size;

  /** How much worse each complaint was on a day than usual, the setup apart; today first. */
  final int[][] day;

  /** How the track roughens. */
  int roughens = 2;

  /** Which of the noise sds. */
  private int noise = 1;

  /** What the ratings say, by complaint and moto; null where one is not mentioned. */
  private final float[][][] tables;

  /** Severity by complaint and moto. */
  final double[][] mean;

  /**
   * As the rules have it.
   *
   * @param places doses from the baseline at which each setting may be most comfortable
   * @param best which of them
   */
  BikeState(PriorCell[][] cells, double[][] places, int[] best, RecentRatings recent) {
    this.cells = cells;
    this.places = places;
    this.recent = recent;
    this.best = best;
    complaints = cells.length;
    settings = best.length;
    motos = recent.motos();
    left = new int[complaints];
    effect = new int[complaints][settings];
    size = new double[complaints][settings];
    day = new int[complaints][recent.days()];
    mean = new double[complaints][motos];
    tables = new float[complaints][motos][];
    Arrays.fill(left, 4);
    for (int s = 0; s < complaints; s++) {
      Arrays.fill(day[s], BeforeRiding.DAY.size() / 2);
      for (int j = 0; j < settings; j++) {
        effect[s][j] = cells[s][j].usual();
        size[s][j] = cells[s][j].value()[effect[s][j]];
      }
      for (int t = 0; t < motos; t++) {
        mean[s][t] = at(s, recent.x()[t], recent.order()[t]);
      }
    }
    setNoise(noise);
  }

  double best(int j) {
    return places[j][best[j]];
  }

  double left(int s) {
    return BeforeRiding.LEFT.value()[left[s]];
  }

  double effect(int s, int j) {
    return size[s][j];
  }

  /** All effects on a complaint, by setting; not to be changed. */
  double[] effects(int s) {
    return size[s];
  }

  int regime(int s, int j) {
    return cells[s][j].regime()[effect[s][j]];
  }

  double day(int s, int d) {
    return BeforeRiding.DAY.value()[day[s][d]];
  }

  double roughens() {
    return BeforeRiding.ROUGHENS.value()[roughens];
  }

  private double at(int s, double[] x, double order) {
    double sum = left(s) + roughens() * order;
    for (int j = 0; j < settings; j++) {
      sum += effect(s, j) * off(s, j, x[j]);
    }
    return sum;
  }

  /** Doses that count: from the most comfortable setup where a rule speaks, else from baseline. */
  double off(int s, int j, double x) {
    return cells[s][j].listed() ? x - best(j) : x;
  }

  boolean isRated(int s, int t) {
    return recent.code()[s][t] != RatingChances.NOT_MENTIONED;
  }

  /** What the ratings of a moto say; null when the complaint is not mentioned. */
  float[] table(int s, int t) {
    return tables[s][t];
  }

  /** What the rating of a moto says if ratings have another noise. */
  float[] table(int s, int t, int otherNoise) {
    return RatingChances.table(otherNoise + recent.unsure()[t], recent.code()[s][t]);
  }

  void setBest(int j, int next) {
    double before = best(j);
    best[j] = next;
    for (int s = 0; s < complaints; s++) {
      if (cells[s][j].listed()) {
        shift(s, effect(s, j) * (before - best(j)));
      }
    }
  }

  void setEffect(int s, int j, int next) {
    double before = effect(s, j);
    effect[s][j] = next;
    size[s][j] = cells[s][j].value()[next];
    double change = size[s][j] - before;
    if (change != 0) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += change * off(s, j, recent.x()[t][j]);
      }
    }
  }

  void setLeft(int s, int next) {
    double before = left(s);
    left[s] = next;
    shift(s, left(s) - before);
  }

  void setDay(int s, int d, int next) {
    double before = day(s, d);
    day[s][d] = next;
    for (int t = 0; t < motos; t++) {
      if (recent.day()[t] == d) {
        mean[s][t] += day(s, d) - before;
      }
    }
  }

  void setRoughens(int next) {
    double before = roughens();
    roughens = next;
    for (int s = 0; s < complaints; s++) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += (roughens() - before) * recent.order()[t];
      }
    }
  }

  int noise() {
    return noise;
  }

  void setNoise(int next) {
    noise = next;
    for (int s = 0; s < complaints; s++) {
      for (int t = 0; t < motos; t++) {
        tables[s][t] = isRated(s, t) ? table(s, t, next) : null;
      }
    }
  }

  private void shift(int s, double by) {
    if (by != 0) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += by;
      }
    }
  }

  /** As it is now, to keep. */
  PlausibleBikes.Bike bike(RuleTrust rules) {
    double[] here = new double[complaints];
    double[] leftToday = new double[complaints];
    double[][] effects = new double[complaints][];
    for (int s = 0; s < complaints; s++) {
      here[s] = at(s, recent.here(), recent.orderNow()) + day(s, 0);
      leftToday[s] = left(s) + day(s, 0);
      effects[s] = size[s].clone();
    }
    return new PlausibleBikes.Bike(here, effects, leftToday, rules);
  }
}
