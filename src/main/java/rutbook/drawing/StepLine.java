package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import rutbook.units.Numerals;
import rutbook.units.Shown;
import rutbook.units.TurnUnit;

/**
 * How a number moved over time as a step line from left to right, with upright lines where
 * something happened beside it.
 */
public final class StepLine {
  private static final double LEFT = 46;
  private static final double RIGHT = 14;
  private static final double TOP = 20;
  private static final double BOTTOM = 20;

  /** Room below the least value for the triangle of a baseline. */
  private static final double FOOT = 13;

  private static final double TEXT = 11;
  private static final double TICK_GAP = 8;

  private static final List<BigDecimal> FRACTIONS =
      List.of(new BigDecimal("0.25"), new BigDecimal("0.5"), BigDecimal.ONE);

  /** More steps than this are a line without dots. */
  private static final int MOST_DOTS = 150;

  /**
   * A value from a time on.
   *
   * @param at any even measure of time, such as days
   */
  public record Step(double at, double value) {}

  /** What an upright line stands for, told apart by its mark at the top. */
  public enum MarkKind {
    /** A filled square. */
    REBUILD,
    /** A short bar. */
    SHEET,
    /** The hollow triangle of a ruler, at the baseline's value where that is known. */
    BASELINE
  }

  /**
   * Something that happened.
   *
   * @param value where a baseline stands; not a number for none
   */
  public record Mark(double at, MarkKind kind, double value) {}

  /** A place in time that is written below the line. */
  public record Tick(double at, String name) {}

  /**
   * What is drawn.
   *
   * @param steps one or more, in the order of time
   * @param ticks below the line, in the order of time; what has no room is left out
   * @param end up to where the last value holds
   * @param title of the numbers, with their unit
   * @param numerals in which they are written
   * @param fractions whether they are said in halves and quarters, as turns are
   */
  public record Season(
      List<Step> steps,
      List<Mark> marks,
      List<Tick> ticks,
      double end,
      String title,
      Numerals numerals,
      boolean fractions) {
    /** In decimals. */
    public Season(
        List<Step> steps,
        List<Mark> marks,
        List<Tick> ticks,
        double end,
        String title,
        Numerals numerals) {
      this(steps, marks, ticks, end, title, numerals, false);
    }

    public Season {
      steps = List.copyOf(steps);
      marks = List.copyOf(marks);
      ticks = List.copyOf(ticks);
      if (steps.isEmpty()) {
        throw new IllegalArgumentException("a step line without a step");
      }
    }
  }

  private final Season season;
  private final Axis time;
  private final Axis up;
  private final double width;
  private final double height;
  private final List<Shape> shapes = new ArrayList<>();

  /** The line laid out in a size. */
  public StepLine(Season season, double width, double height) {
    this.season = season;
    double least = season.steps().stream().mapToDouble(Step::value).min().orElseThrow();
    double most = season.steps().stream().mapToDouble(Step::value).max().orElseThrow();
    for (Mark mark : season.marks()) {
      if (!Double.isNaN(mark.value())) {
        least = Math.min(least, mark.value());
        most = Math.max(most, mark.value());
      }
    }
    double begin = season.steps().get(0).at();
    this.time = Axis.even("", begin, Math.max(season.end(), begin + 1), season.numerals());
    this.up = season.fractions() ? halves(least, most) : around(least, most);
    this.width = width;
    this.height = height;
  }

  private Axis around(double least, double most) {
    return Axis.around(season.title(), least, most, season.numerals());
  }

  private Axis halves(double least, double most) {
    double low = Math.floor(least * 2) / 2;
    return Axis.even(
        season.title(), low, Math.max(low + 0.5, Math.ceil(most * 2) / 2), season.numerals());
  }

  /** Quarters, halves or whole ones, as many as fit. */
  private List<BigDecimal> fractions(int atMost) {
    for (BigDecimal each : FRACTIONS) {
      List<BigDecimal> places = Ticks.multiples(each, up.least(), up.most());
      if (places.size() <= atMost) {
        return places;
      }
    }
    return up.ticks(atMost);
  }

  private List<String> written(List<BigDecimal> places) {
    return places.stream()
        .map(place -> season.numerals().text(new Shown(place, TurnUnit.TURN)))
        .toList();
  }

  /** The line from its first step to the end. */
  public Drawing drawing() {
    shapes.clear();
    grid();
    ticks();
    season.marks().forEach(this::mark);
    steps(season.steps());
    return new Drawing(width, height, shapes);
  }

  /** The place among the steps of the one nearest to an x, counted from 0. */
  public int nearest(double x) {
    int nearest = 0;
    for (int i = 1; i < season.steps().size(); i++) {
      double apart = Math.abs(x(season.steps().get(i).at()) - x);
      if (apart <= Math.abs(x(season.steps().get(nearest).at()) - x)) {
        nearest = i;
      }
    }
    return nearest;
  }

  /** A ring around one step and an upright line through it, to lay over the drawing. */
  public Drawing pointer(int place) {
    Step step = season.steps().get(place);
    double x = x(step.at());
    return new Drawing(
        width,
        height,
        List.of(
            new Shape.Line(x, TOP, x, height - BOTTOM, Ink.BLUE, 1),
            new Shape.Dot(x, y(step.value()), 6.5, Ink.BLUE, false),
            new Shape.Dot(x, y(step.value()), 3, Ink.BLUE, true)));
  }

  private double x(double at) {
    double share = Math.max(0, Math.min(1, time.share(at)));
    return LEFT + share * (width - LEFT - RIGHT);
  }

  private double y(double value) {
    double share = Math.max(0, Math.min(1, up.share(value)));
    return height - BOTTOM - FOOT - share * (height - TOP - BOTTOM - FOOT);
  }

  private void grid() {
    int fit = (int) Math.max(2, (height - TOP - BOTTOM - FOOT) / 26);
    List<BigDecimal> ticks = season.fractions() ? fractions(Math.max(3, fit)) : up.ticks(fit);
    List<String> labels = season.fractions() ? written(ticks) : up.labels(ticks);
    for (int i = 0; i < ticks.size(); i++) {
      double level = y(ticks.get(i).doubleValue());
      shapes.add(new Shape.Line(LEFT, level, width - RIGHT, level, Ink.HAIR, 1));
      text(LEFT - 6, level + 4, labels.get(i), Shape.Anchor.END);
    }
    text(0, TEXT, up.title(), Shape.Anchor.START);
  }

  private void ticks() {
    double free = LEFT - TICK_GAP;
    for (Tick tick : season.ticks()) {
      double x = x(tick.at());
      double wide = TextWidth.of(tick.name(), TEXT);
      boolean inside = time.holds(tick.at()) && x + wide <= width;
      if (inside && x >= free + TICK_GAP) {
        shapes.add(new Shape.Line(x, height - BOTTOM, x, height - BOTTOM + 4, Ink.SOFT, 1));
        text(x, height - 5, tick.name(), Shape.Anchor.START);
        free = x + wide;
      }
    }
  }

  private void steps(List<Step> steps) {
    List<Shape.Point> points = new ArrayList<>();
    for (Step step : steps) {
      if (!points.isEmpty()) {
        points.add(new Shape.Point(x(step.at()), points.get(points.size() - 1).y()));
      }
      points.add(new Shape.Point(x(step.at()), y(step.value())));
    }
    points.add(new Shape.Point(x(time.most()), points.get(points.size() - 1).y()));
    shapes.add(new Shape.Polyline(points, Ink.INK, 2, false));
    if (steps.size() > MOST_DOTS) {
      return;
    }
    for (Step step : steps) {
      shapes.add(new Shape.Dot(x(step.at()), y(step.value()), 3, Ink.INK, true));
    }
  }

  private void mark(Mark mark) {
    double x = x(mark.at());
    switch (mark.kind()) {
      case REBUILD -> {
        upright(x, Ink.SOFT);
        shapes.add(new Shape.Box(x - 4, TOP - 9, 8, 8, Ink.SOFT));
      }
      case SHEET -> {
        upright(x, Ink.HAIR);
        shapes.add(new Shape.Box(x - 5, TOP - 5, 10, 3, Ink.SOFT));
      }
      case BASELINE -> {
        if (!Double.isNaN(mark.value())) {
          shapes.add(triangle(x, y(mark.value()) + 4));
        }
      }
    }
  }

  private void upright(double x, Ink ink) {
    shapes.add(new Shape.Line(x, TOP, x, height - BOTTOM, ink, 1));
  }

  private static Shape triangle(double x, double top) {
    return new Shape.Polygon(
        List.of(
            new Shape.Point(x, top),
            new Shape.Point(x + 4.5, top + 8),
            new Shape.Point(x - 4.5, top + 8)),
        Ink.INK,
        false);
  }

  private void text(double x, double y, String said, Shape.Anchor anchor) {
    shapes.add(new Shape.Text(x, y, said, anchor, TEXT, Ink.SOFT, false));
  }
}
