package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * How a number moved over time as a step line from left to right, with upright lines where
 * something happened beside it.
 */
public final class StepLine {
  private static final double LEFT = 46;
  private static final double RIGHT = 14;
  private static final double TOP = 20;
  private static final double BOTTOM = 20;
  private static final double TEXT = 11;

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

  private final Axis time;
  private final Axis up;
  private final double width;
  private final double height;
  private final List<Shape> shapes = new ArrayList<>();

  private StepLine(Axis time, Axis up, double width, double height) {
    this.time = time;
    this.up = up;
    this.width = width;
    this.height = height;
  }

  /**
   * The line, from its first step to the end.
   *
   * @param steps one or more, in the order of time
   * @param end up to where the last value holds
   */
  public static Drawing of(
      List<Step> steps, List<Mark> marks, double end, String title, double width, double height) {
    double least = steps.stream().mapToDouble(Step::value).min().orElseThrow();
    double most = steps.stream().mapToDouble(Step::value).max().orElseThrow();
    double begin = steps.get(0).at();
    Axis time = Axis.even("", begin, Math.max(end, begin + 1));
    StepLine line = new StepLine(time, Axis.around(title, least, most), width, height);
    line.grid();
    marks.forEach(line::mark);
    line.steps(steps);
    return new Drawing(width, height, line.shapes);
  }

  private double x(double at) {
    double share = Math.max(0, Math.min(1, time.share(at)));
    return LEFT + share * (width - LEFT - RIGHT);
  }

  private double y(double value) {
    double share = Math.max(0, Math.min(1, up.share(value)));
    return height - BOTTOM - share * (height - TOP - BOTTOM);
  }

  private void grid() {
    List<BigDecimal> ticks = up.ticks((int) Math.max(2, (height - TOP - BOTTOM) / 26));
    List<String> labels = Axis.labels(ticks);
    for (int i = 0; i < ticks.size(); i++) {
      double level = y(ticks.get(i).doubleValue());
      shapes.add(new Shape.Line(LEFT, level, width - RIGHT, level, Ink.HAIR, 1));
      text(LEFT - 6, level + 4, labels.get(i), Shape.Anchor.END);
    }
    text(0, TEXT, up.title(), Shape.Anchor.START);
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
