package rutbook.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Force against travel of a fork: {@code F(x) = Σ over legs (k (x + preload) + F_air) + bump stop}.
 *
 * <p>Our model on published laws, an estimate: no friction, no damping, along the fork's axis.
 *
 * @param legs one or two; they may differ
 * @param stop the bump stop of the whole end, when known
 * @param travel full stroke, m; the air of every leg must reach it
 */
public record ForkCurve(List<ForkLeg> legs, Optional<BumpStop> stop, double travel) {

  private static final double GRAVITY = 9.80665;

  public ForkCurve {
    legs = List.copyOf(legs);
    Given.within("number of legs", legs.size(), 1, 2);
    Given.within("travel", travel, 1e-3, 1);
    for (ForkLeg leg : legs) {
      leg.air().ifPresent(air -> Given.within("travel of the air", air.travel(), travel, 2));
    }
  }

  /** Total force in N at a stroke of 0 to full travel. */
  public double force(double stroke, double exponent) {
    return coilForce(stroke)
        + airForce(stroke, exponent)
        + (stop.isPresent() ? stop.get().force(stroke) : 0);
  }

  /** Force in N of the coils alone. */
  public double coilForce(double stroke) {
    inside(stroke);
    return legs.stream().mapToDouble(leg -> leg.coilForce(stroke)).sum();
  }

  /** Force in N of the air alone; the figure that a fill changes. */
  public double airForce(double stroke, double exponent) {
    inside(stroke);
    return legs.stream().mapToDouble(leg -> leg.airForce(stroke, exponent)).sum();
  }

  /** Work in J from one stroke to another, closed form. */
  public double energy(double from, double to, double exponent) {
    inside(from);
    inside(to);
    double sum = stop.isPresent() ? stop.get().energy(from, to) : 0;
    for (ForkLeg leg : legs) {
      sum += leg.energy(from, to, exponent);
    }
    return sum;
  }

  /** Stroke in m at which the bump stop is touched; full travel when none is known. */
  public double end() {
    return stop.isPresent() ? Math.min(stop.get().from(), travel) : travel;
  }

  /**
   * Reserve in J: the work that the fork still takes from a stroke to its bump stop. Zero from the
   * bump stop on.
   */
  public double reserve(double from, double exponent) {
    inside(from);
    return from >= end() ? 0 : energy(from, end(), exponent);
  }

  /**
   * Height in m from which the reserve could catch a mass, {@code h = E/(m g) − Δx cos ε}: an
   * estimate without damping. Negative when the mass alone, let go gently, would use up the stroke.
   *
   * @param from stroke at which it lands, m
   * @param mass carried by the front, kg, 10 to 1000
   * @param rake of the fork from the vertical, rad, 0 to 1
   */
  public double dropHeight(double from, double exponent, double mass, double rake) {
    Given.within("front mass", mass, 10, 1000);
    Given.within("rake", rake, 0, 1);
    double left = Math.max(0, end() - from);
    return reserve(from, exponent) / (mass * GRAVITY) - left * Math.cos(rake);
  }

  /**
   * The stroke in m at which the fork carries a force in N along its axis, slowly or fast by the
   * exponent; empty when the force is below that at full extension or above that at full stroke.
   */
  public Optional<Double> strokeUnder(double load, double exponent) {
    Given.within("load", load, 0, 1e6);
    double least = force(0, exponent) - load;
    double most = force(travel, exponent) - load;
    if (least > 0 || most < 0) {
      return Optional.empty();
    }
    if (least == 0 || most == 0) {
      return Optional.of(least == 0 ? 0 : travel);
    }
    BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(1e-14, 1e-9, 1e-9, 5);
    return Optional.of(solver.solve(200, x -> force(x, exponent) - load, 0, travel));
  }

  /** The curve at evenly spaced strokes from full extension to full travel, 2 to 2000 points. */
  public List<ForkPoint> points(int count) {
    Given.within("number of points", count, 2, 2000);
    List<ForkPoint> points = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      points.add(point(i == count - 1 ? travel : travel * i / (count - 1)));
    }
    return List.copyOf(points);
  }

  /** The forces at one stroke, m. */
  public ForkPoint point(double stroke) {
    return new ForkPoint(
        stroke,
        coilForce(stroke),
        airForce(stroke, Polytropic.LINE),
        force(stroke, Polytropic.SLOW),
        force(stroke, Polytropic.LINE),
        force(stroke, Polytropic.FAST));
  }

  private void inside(double stroke) {
    Given.within("stroke", stroke, 0, travel);
  }
}
