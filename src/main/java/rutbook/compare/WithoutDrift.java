package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Entry;
import rutbook.notebook.Hours;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Timeline;
import rutbook.stats.LeastSquares;
import rutbook.units.Amount;
import rutbook.units.Unit;

/**
 * What of a difference between two tracks is left when ageing oil and a roughening track are taken
 * off: least squares on the track, the hours since that end's oil, and the moto's place in its day.
 *
 * @param by second track less first
 * @param low lower end of the 95 % interval
 * @param high upper end
 * @param taken what was taken off; only what varied could be
 */
public record WithoutDrift(Amount by, Amount low, Amount high, Set<Drift> taken) {
  /** What moves a setup over time by itself. */
  public enum Drift {
    HOURS,
    ROUGHENING
  }

  public WithoutDrift {
    taken = Set.copyOf(taken);
  }

  /** Whether the interval leaves out zero. */
  public boolean beyondNoise() {
    return low.value().signum() > 0 || high.value().signum() < 0;
  }

  /** Hours since its end's oil, for every entry of a timeline. */
  static final class OilAge {
    private final Timeline timeline;
    private final double[] front;
    private final double[] rear;

    OilAge(Timeline timeline) {
      this.timeline = timeline;
      Hours hours = timeline.hours();
      front = at(timeline, hours, ServiceKind.FORK_OIL);
      rear = at(timeline, hours, ServiceKind.SHOCK_OIL);
    }

    /** All zero where the sheet has no such item. */
    private static double[] at(Timeline timeline, Hours hours, ServiceKind kind) {
      return timeline.bike().latestSheet().services().stream()
          .filter(each -> each.kind() == kind)
          .findFirst()
          .map(hours::sinceAtEach)
          .orElseGet(() -> new double[timeline.entries().size()]);
    }

    /** Where sessions of the timeline, in its order, stand among its entries: found in one pass. */
    int[] places(List<BestMoto> motos) {
      List<Entry> entries = timeline.entries();
      int[] places = new int[motos.size()];
      int place = 0;
      for (int i = 0; i < places.length; i++) {
        while (entries.get(place) != motos.get(i).session()) {
          place++;
        }
        places[i] = place;
      }
      return places;
    }

    double front(int place) {
      return front[place];
    }

    double rear(int place) {
      return rear[place];
    }
  }

  /** Empty when there are too few sessions, or the track cannot be told from the drift. */
  static Optional<WithoutDrift> of(Unit unit, Settled.Points points) {
    boolean hours = points.hoursVary();
    boolean order = points.orderVaries();
    int columns = 1 + (hours ? 1 : 0) + (order ? 1 : 0);
    if (columns == 1 || points.size() < columns + 3) {
      return Optional.empty();
    }
    double[][] x = new double[points.size()][columns];
    double[] y = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      y[i] = points.value()[i];
      x[i][0] = points.isSecond(i) ? 1 : 0;
      if (hours) {
        x[i][1] = points.hours()[i];
      }
      if (order) {
        x[i][columns - 1] = points.order()[i];
      }
    }
    try {
      LeastSquares fit = LeastSquares.fit(x, y);
      double by = fit.coefficients()[1];
      double half = fit.halfInterval(1);
      return Optional.of(
          new WithoutDrift(
              Spread.amount(by, unit),
              Spread.amount(by - half, unit),
              Spread.amount(by + half, unit),
              taken(hours, order)));
    } catch (IllegalArgumentException cannotBeToldApart) {
      return Optional.empty();
    }
  }

  private static Set<Drift> taken(boolean hours, boolean order) {
    List<Drift> taken = new ArrayList<>();
    if (hours) {
      taken.add(Drift.HOURS);
    }
    if (order) {
      taken.add(Drift.ROUGHENING);
    }
    return Set.copyOf(taken);
  }
}
