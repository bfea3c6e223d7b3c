package rutbook.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Curves over one quantity, before anything is laid out: the same values for the picture, for the
 * pointer and for the table.
 *
 * @param bands under the curves, in the order they are drawn
 * @param marks upright lines, such as today's sag
 */
public record Chart(Axis across, Axis up, List<Band> bands, List<Curve> curves, List<Mark> marks) {

  public Chart {
    bands = List.copyOf(bands);
    curves = List.copyOf(curves);
    marks = List.copyOf(marks);
  }

  /** A place of a curve in the units of the axes. */
  public record Place(double across, double up) {
    public Place {
      if (!Double.isFinite(across) || !Double.isFinite(up)) {
        throw new IllegalArgumentException("a place at " + across + ", " + up);
      }
    }
  }

  /** How a curve is drawn. */
  public enum Weight {
    /** What the chart is about. */
    STRONG,
    PLAIN,
    /** What it is held against. */
    DASHED
  }

  /**
   * A named curve.
   *
   * @param places from the least across to the most, two or more
   */
  public record Curve(String name, List<Place> places, Ink ink, Weight weight) {
    public Curve {
      places = List.copyOf(places);
      requireRising(name, places);
    }

    /** The value at a place across, between two places in a straight line; none beyond the ends. */
    public OptionalDouble at(double across) {
      return between(places, across);
    }
  }

  /** A named band between a lower and an upper curve over the same places across. */
  public record Band(String name, List<Place> lower, List<Place> upper) {
    public Band {
      lower = List.copyOf(lower);
      upper = List.copyOf(upper);
      requireRising(name, lower);
      requireRising(name, upper);
    }
  }

  /** An upright line at a place across. */
  public record Mark(String name, double across) {}

  /** The values of every curve at one place across; those that do not reach there are left out. */
  public record Reading(double across, List<Value> values) {
    public Reading {
      values = List.copyOf(values);
    }
  }

  /** What a curve, or an edge of a band, has there. */
  public record Value(String name, Ink ink, double up) {}

  private static void requireRising(String name, List<Place> places) {
    if (places.size() < 2) {
      throw new IllegalArgumentException(name + " has " + places.size() + " places");
    }
    for (int i = 1; i < places.size(); i++) {
      if (!(places.get(i).across() > places.get(i - 1).across())) {
        throw new IllegalArgumentException(name + " turns back at " + places.get(i).across());
      }
    }
  }

  private static OptionalDouble between(List<Place> places, double across) {
    int low = 0;
    int high = places.size() - 1;
    if (!(across >= places.get(low).across() && across <= places.get(high).across())) {
      return OptionalDouble.empty();
    }
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (places.get(middle).across() <= across) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Place from = places.get(low);
    Place to = places.get(high);
    double part = (across - from.across()) / (to.across() - from.across());
    return OptionalDouble.of(from.up() + part * (to.up() - from.up()));
  }

  /** What every curve has at a place across, held within the axis. */
  public Reading at(double across) {
    double held = Math.max(this.across.least(), Math.min(this.across.most(), across));
    List<Value> values = new ArrayList<>();
    for (Curve curve : curves) {
      curve.at(held).ifPresent(up -> values.add(new Value(curve.name(), curve.ink(), up)));
    }
    return new Reading(held, values);
  }

  /** The chart as a table: readings evenly spaced over the axis, ends included, two or more. */
  public List<Reading> table(int rows) {
    if (rows < 2) {
      throw new IllegalArgumentException("a table of " + rows + " rows");
    }
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      readings.add(at(across.at(i / (rows - 1.0))));
    }
    return readings;
  }
}
