package rutbook.reasoning;

import java.util.ArrayList;
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
  /** Effects that no rule speaks of are many and small: each is drawn in one sweep of so many. */
  private static final int SELDOM = 4;

  private final PriorCell[][] cells;
  private final double[][] room;
  private final RecentRatings recent;
  private final OldEvidence[] old;
  private final Draw draw;
  private final BikeState at;

  /** How many of the rules hold, do nothing, are reversed on the bike as it is drawn. */
  private final double[] held = BeforeRiding.RULES.chance().clone();

  private final double[] oldLogs = new double[PriorCell.MOST_VALUES];
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
    SplittableRandom random = new SplittableRandom(seed);
    draw = new Draw(random);
    double[] wish = BeforeRiding.BEST.value();
    int[] best = new int[room.length];
    for (int j = 0; j < best.length; j++) {
      int i = random.nextInt(wish.length);
      best[j] = wish[i] < room[j][0] || wish[i] > room[j][1] ? wish.length / 2 : i;
    }
    at = new BikeState(cells, best, recent);
    for (PriorCell[] ofComplaint : cells) {
      for (PriorCell cell : ofComplaint) {
        held[PriorCell.HOLDS] += cell.listed() ? 1 : 0;
      }
    }
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
    double[] values = BeforeRiding.BEST.value();
    draw.begin(BeforeRiding.BEST.chance());
    for (int i = 0; i < values.length; i++) {
      if (values[i] < room[j][0] || values[i] > room[j][1]) {
        draw.ruleOut(i);
      }
    }
    for (int s = 0; s < at.complaints; s++) {
      double each = cells[s][j].listed() ? at.effect(s, j) : 0;
      for (int t = 0; each != 0 && t < at.motos; t++) {
        float[] table = at.table(s, t);
        if (table != null) {
          draw.rated(table, at.mean[s][t] + each * at.best(j), -each, values);
        }
      }
    }
    at.setBest(j, draw.drawn(at.best[j]));
  }

  private void drawEffect(int s, int j) {
    PriorCell cell = cells[s][j];
    draw.begin(cell.chance());
    if (cell.listed()) {
      held[at.regime(s, j)]--;
      for (int i = 0; i < cell.value().length; i++) {
        draw.times(i, held[cell.regime()[i]]);
      }
    }
    if (old[s] != null) {
      old[s].logs(at, s, j, cell.value(), oldLogs);
      draw.timesExp(oldLogs);
    }
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
    for (int t = 0; t < at.motos; t++) {
      float[] table = recent.day()[t] == d ? at.table(s, t) : null;
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
    at.noise = draw.drawn(at.noise);
  }
}
