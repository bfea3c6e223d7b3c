package rutbook.reasoning;

/**
 * One bike as it may be, while the sampler works on it: the severity of every complaint in every
 * recent moto is {@code left + Σ effect · (x − best) + day + roughens · order}, kept up to date.
 */
final class BikeState {
  private final PriorCell[][] cells;
  private final RecentRatings recent;

  final int complaints;
  final int settings;
  final int motos;

  /** Doses from the baseline to the most comfortable setup, one for all complaints. */
  final double[] best;

  /** What is left of each complaint there. */
  final double[] left;

  /** Severity points per dose, by complaint and setting, and whether its rule holds. */
  final double[][] effect;

  final int[][] regime;

  /** How much worse each complaint was on a day than usual, the setup apart; today first. */
  final double[][] day;

  /** Severity points that every complaint grows from moto to moto as the track roughens. */
  double roughens = 0.08;

  /** Which of the noise sds. */
  int noise = 1;

  /** Severity by complaint and moto. */
  final double[][] mean;

  BikeState(PriorCell[][] cells, double[] best, RecentRatings recent) {
    this.cells = cells;
    this.recent = recent;
    this.best = best;
    complaints = cells.length;
    settings = best.length;
    motos = recent.motos();
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
      for (int t = 0; t < motos; t++) {
        mean[s][t] = at(s, recent.x()[t], recent.order()[t]);
      }
    }
  }

  private double at(int s, double[] x, double order) {
    double sum = left[s] + roughens * order;
    for (int j = 0; j < settings; j++) {
      sum += effect[s][j] * off(s, j, x[j]);
    }
    return sum;
  }

  /** Doses that count: from the most comfortable setup where a rule speaks, else from baseline. */
  double off(int s, int j, double x) {
    return cells[s][j].isListed() ? x - best[j] : x;
  }

  /** What the ratings of a moto say; null when the complaint is not mentioned. */
  float[] table(int s, int t) {
    int code = recent.code()[s][t];
    return code == RatingChances.NOT_MENTIONED ? null : RatingChances.table(noise, code);
  }

  void setBest(int j, double next) {
    for (int s = 0; s < complaints; s++) {
      if (cells[s][j].isListed()) {
        shift(s, effect[s][j] * (best[j] - next));
      }
    }
    best[j] = next;
  }

  void setEffect(int s, int j, double next, int nextRegime) {
    double change = next - effect[s][j];
    effect[s][j] = next;
    regime[s][j] = nextRegime;
    if (change != 0) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += change * off(s, j, recent.x()[t][j]);
      }
    }
  }

  void setLeft(int s, double next) {
    shift(s, next - left[s]);
    left[s] = next;
  }

  void setDay(int s, int d, double next) {
    for (int t = 0; t < motos; t++) {
      if (recent.day()[t] == d) {
        mean[s][t] += next - day[s][d];
      }
    }
    day[s][d] = next;
  }

  void setRoughens(double next) {
    for (int s = 0; s < complaints; s++) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += (next - roughens) * recent.order()[t];
      }
    }
    roughens = next;
  }

  private void shift(int s, double by) {
    if (by != 0) {
      for (int t = 0; t < motos; t++) {
        mean[s][t] += by;
      }
    }
  }

  /** As it is now, to keep. */
  PlausibleBikes.Bike bike() {
    double[] here = new double[complaints];
    double[] leftToday = new double[complaints];
    double[][] effects = new double[complaints][];
    for (int s = 0; s < complaints; s++) {
      here[s] = at(s, recent.here(), recent.orderNow()) + day[s][0];
      leftToday[s] = left[s] + day[s][0];
      effects[s] = effect[s].clone();
    }
    return new PlausibleBikes.Bike(here, effects, leftToday);
  }
}
