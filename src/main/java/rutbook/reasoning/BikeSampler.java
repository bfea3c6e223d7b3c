package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Draws plausible bikes by Gibbs' method on grids (each unknown in turn from its own chances, the
 * others as they stand). One setup is the most comfortable for all complaints: what one complaint
 * says of it helps to understand the others. A rule holds, does nothing or is reversed; how often
 * is learned from the notebook's own motos. The seed is fixed: the same notebook gives the same
 * bikes.
 */
final class BikeSampler {
  /** Effects that no rule speaks of are many and small: each is drawn in one sweep of so many. */
  private static final int SELDOM = 8;

  /** A place and an effect at once are dear: each setting in one sweep of so many. */
  private static final int TOGETHER = 4;

  /** A place so much less likely than the likeliest is not drawn together with an effect. */
  private static final double HARDLY = 1e-6;

  private final PriorCell[][] cells;

  /** Where each setting may be most comfortable inside its limits. */
  private final BeforeRiding.Values[] places;

  private final RecentRatings recent;

  /** Motos by day. */
  private final int[][] ofDay;

  private final OldEvidence[] old;
  private final Draw draw;
  private final BikeState at;

  /** How many of the rules hold, do nothing, are reversed on the bike as it is drawn. */
  private final double[] held = BeforeRiding.RULES.chance().clone();

  /** Complaints of which a rule speaks, by setting. */
  private final int[][] listed;

  private final SplittableRandom random;
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
    this.recent = recent;
    this.old = old;
    random = new SplittableRandom(seed);
    draw = new Draw(random);
    places =
        Arrays.stream(room)
            .map(each -> BeforeRiding.BEST.within(each[0], each[1]))
            .toArray(BeforeRiding.Values[]::new);
    double[][] place =
        Arrays.stream(places).map(BeforeRiding.Values::value).toArray(double[][]::new);
    int[] best = Arrays.stream(places).mapToInt(each -> random.nextInt(each.size())).toArray();
    at = new BikeState(cells, place, best, recent);
    ofDay = new int[recent.days()][];
    for (int d = 0; d < ofDay.length; d++) {
      int day = d;
      ofDay[d] = IntStream.range(0, at.motos).filter(t -> recent.day()[t] == day).toArray();
    }
    listed = new int[room.length][];
    for (int j = 0; j < listed.length; j++) {
      int setting = j;
      listed[j] =
          IntStream.range(0, cells.length).filter(s -> cells[s][setting].listed()).toArray();
    }
    for (int j = 0; j < listed.length; j++) {
      for (int s : listed[j]) {
        held[at.regime(s, j)]++;
      }
    }
  }

  /** The bikes after some sweeps that are thrown away. */
  List<PlausibleBikes.Bike> draw(int thrownAway, int kept) {
    List<PlausibleBikes.Bike> bikes = new ArrayList<>();
    for (int i = 0; i < thrownAway + kept; i++) {
      sweep();
      if (i >= thrownAway) {
        bikes.add(at.bike(RuleTrust.of(held)));
      }
    }
    return bikes;
  }

  private void sweep() {
    for (int j = 0; j < at.settings; j++) {
      if (listed[j].length > 1 && (sweeps + j) % TOGETHER == 2) {
        turnRound(j);
      } else if (listed[j].length > 0 && (sweeps + j) % TOGETHER == 0) {
        drawTogether(listed[j][random.nextInt(listed[j].length)], j);
      } else if (listed[j].length > 0) {
        drawBest(j);
      }
    }
    for (int s = 0; s < at.complaints; s++) {
      for (int j = 0; j < at.settings; j++) {
        if (cells[s][j].listed() || (sweeps + s + j) % SELDOM == 0) {
          drawEffect(s, j);
        }
      }
      drawLeft(s);
      for (int d = at.day[s].length == 1 ? 1 : 0; d < at.day[s].length; d++) {
        drawDay(s, d);
      }
    }
    drawRoughening();
    drawNoise();
    sweeps++;
  }

  private void drawBest(int j) {
    weighBest(j, -1);
    at.setBest(j, draw.drawn(at.best[j]));
  }

  /**
   * The most comfortable place of a setting and one effect of it at once: a rule that is reversed
   * has its comfort on the other side, and neither can turn round alone.
   */
  private void drawTogether(int s, int j) {
    double[] place = places[j].value();
    PriorCell cell = cells[s][j];
    weighBest(j, s);
    double[] placed = draw.likely(HARDLY);
    held[at.regime(s, j)]--;
    double[] known = known(s, j);
    draw.begin(placed, known);
    for (int t = 0; t < at.motos; t++) {
      float[] table = at.table(s, t);
      if (table != null) {
        double x = recent.x()[t][j];
        double from = at.mean[s][t] - at.effect(s, j) * (x - at.best(j));
        for (int b = 0; b < place.length; b++) {
          if (placed[b] > 0) {
            draw.rated(table, from, x - place[b], cell.value(), b);
          }
        }
      }
    }
    int drawn = draw.drawn(at.best[j] * known.length + at.effect[s][j]);
    at.setBest(j, drawn / known.length);
    at.setEffect(s, j, drawn % known.length);
    held[at.regime(s, j)]++;
  }

  /**
   * All effects of a setting the other way round at once, by Metropolis' rule with its place summed
   * over: where several rules of a setting are reversed none of them can turn round alone.
   */
  private void turnRound(int j) {
    weighBest(j, -1);
    double chance = 1 / draw.sum();
    for (int s : listed[j]) {
      chance /= takeOut(s, j);
    }
    turn(j);
    for (int i = listed[j].length - 1; i >= 0; i--) {
      chance *= putBack(listed[j][i], j);
    }
    weighBest(j, -1);
    if (random.nextDouble() < chance * draw.sum()) {
      at.setBest(j, draw.drawn(at.best[j]));
    } else {
      for (int s : listed[j]) {
        held[at.regime(s, j)]--;
      }
      turn(j);
      for (int s : listed[j]) {
        held[at.regime(s, j)]++;
      }
    }
  }

  private void turn(int j) {
    for (int s : listed[j]) {
      at.setEffect(s, j, cells[s][j].mirrored(at.effect[s][j]));
    }
  }

  /** How likely an effect is beside those that are counted; from then on it is not. */
  private double takeOut(int s, int j) {
    held[at.regime(s, j)]--;
    return known(s, j)[at.effect[s][j]];
  }

  /** How likely an effect is beside those that are counted; from then on it is. */
  private double putBack(int s, int j) {
    double known = known(s, j)[at.effect[s][j]];
    held[at.regime(s, j)]++;
    return known;
  }

  /** The chances of the most comfortable place of a setting, by all complaints but one. */
  private void weighBest(int j, int without) {
    double[] values = places[j].value();
    draw.begin(places[j].chance());
    for (int s : listed[j]) {
      double each = s != without ? at.effect(s, j) : 0;
      for (int t = 0; each != 0 && t < at.motos; t++) {
        float[] table = at.table(s, t);
        if (table != null) {
          draw.rated(table, at.mean[s][t] + each * at.best(j), -each, values);
        }
      }
    }
  }

  private void drawEffect(int s, int j) {
    PriorCell cell = cells[s][j];
    if (cell.listed()) {
      held[at.regime(s, j)]--;
    }
    draw.begin(known(s, j));
    for (int t = 0; t < at.motos; t++) {
      float[] table = at.table(s, t);
      double off = at.off(s, j, recent.x()[t][j]);
      if (table != null && off != 0) {
        draw.rated(table, at.mean[s][t] - at.effect(s, j) * off, off, cell.value());
      }
    }
    at.setEffect(s, j, draw.drawn(at.effect[s][j]));
    if (cell.listed()) {
      held[at.regime(s, j)]++;
    }
  }

  /** What is known of an effect from the rules, from how often they hold, and from older motos. */
  private double[] known(int s, int j) {
    PriorCell cell = cells[s][j];
    double[] known = cell.chance().clone();
    for (int v = 0; cell.listed() && v < known.length; v++) {
      known[v] *= held[cell.regime()[v]];
    }
    if (old[s] != null) {
      old[s].weigh(known, at, s, j, cell.value());
    }
    return known;
  }

  private void drawLeft(int s) {
    double[] values = BeforeRiding.LEFT.value();
    draw.begin(BeforeRiding.LEFT.chance());
    for (int t = 0; t < at.motos; t++) {
      float[] table = at.table(s, t);
      if (table != null) {
        draw.rated(table, at.mean[s][t] - at.left(s), 1, values);
      }
    }
    at.setLeft(s, draw.drawn(at.left[s]));
  }

  private void drawDay(int s, int d) {
    double[] values = BeforeRiding.DAY.value();
    draw.begin(BeforeRiding.DAY.chance());
    for (int t : ofDay[d]) {
      float[] table = at.table(s, t);
      if (table != null) {
        draw.rated(table, at.mean[s][t] - at.day(s, d), 1, values);
      }
    }
    at.setDay(s, d, draw.drawn(at.day[s][d]));
  }

  private void drawRoughening() {
    double[] values = BeforeRiding.ROUGHENS.value();
    draw.begin(BeforeRiding.ROUGHENS.chance());
    for (int s = 0; s < at.complaints; s++) {
      for (int t = 0; t < at.motos; t++) {
        float[] table = at.table(s, t);
        double order = recent.order()[t];
        if (table != null && order != 0) {
          draw.rated(table, at.mean[s][t] - at.roughens() * order, order, values);
        }
      }
    }
    at.setRoughens(draw.drawn(at.roughens));
  }

  private void drawNoise() {
    draw.begin(BeforeRiding.NOISE.chance());
    for (int s = 0; s < at.complaints; s++) {
      for (int t = 0; t < at.motos; t++) {
        for (int i = 0; at.isRated(s, t) && i < BeforeRiding.NOISE.size(); i++) {
          draw.times(i, RatingChances.at(at.table(s, t, i), at.mean[s][t]));
        }
      }
    }
    at.setNoise(draw.drawn(at.noise()));
  }
}
