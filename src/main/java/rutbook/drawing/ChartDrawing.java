package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws a chart: bands, grid, axes, curves with their names, marks; and a pointer over it. */
public final class ChartDrawing {
  private static final double DOT = 3.5;

  private final ChartLayout layout;
  private final Chart chart;
  private final List<Shape> shapes = new ArrayList<>();

  private ChartDrawing(ChartLayout layout) {
    this.layout = layout;
    this.chart = layout.chart();
  }

  public static Drawing of(Chart chart, ChartLayout.Size size) {
    return of(new ChartLayout(chart, size));
  }

  public static Drawing of(ChartLayout layout) {
    ChartDrawing drawing = new ChartDrawing(layout);
    drawing.bands();
    drawing.axes();
    drawing.marks();
    drawing.curves();
    drawing.keys();
    return new Drawing(layout.size().width(), layout.size().height(), drawing.shapes);
  }

  /** An upright line and a dot on every curve, to lie over the chart where a pointer is. */
  public static Drawing pointer(ChartLayout layout, Chart.Reading reading) {
    List<Shape> shapes = new ArrayList<>();
    double x = layout.x(reading.across());
    double scale = layout.size().scale();
    shapes.add(new Shape.Line(x, layout.top(), x, layout.bottom(), Ink.SOFT, scale));
    for (Chart.Value value : reading.values()) {
      shapes.add(new Shape.Dot(x, layout.y(value.up()), DOT * scale, value.ink(), true));
    }
    return new Drawing(layout.size().width(), layout.size().height(), shapes);
  }

  private double stroke(double width) {
    return width * layout.size().scale();
  }

  private void bands() {
    for (Chart.Band band : chart.bands()) {
      List<Shape.Point> outline = new ArrayList<>(points(band.upper()));
      List<Shape.Point> back = new ArrayList<>(points(band.lower()));
      java.util.Collections.reverse(back);
      outline.addAll(back);
      shapes.add(new Shape.Polygon(outline, Ink.HAIR, true));
    }
  }

  private List<Shape.Point> points(List<Chart.Place> places) {
    return places.stream()
        .filter(place -> chart.across().holds(place.across()))
        .map(place -> new Shape.Point(layout.x(place.across()), layout.y(place.up())))
        .toList();
  }

  private void axes() {
    upTicks(layout.upTicks());
    acrossTicks(layout.acrossTicks());
    shapes.add(
        new Shape.Line(
            layout.left(), layout.bottom(), layout.right(), layout.bottom(), Ink.INK, stroke(1)));
    text(layout.gap() / 2, layout.text() * 1.1, chart.up().title(), Shape.Anchor.START, Ink.INK);
    text(
        layout.right(),
        layout.bottom() + layout.gap() + layout.text() + layout.lineHeight(),
        chart.across().title(),
        Shape.Anchor.END,
        Ink.INK);
  }

  private void upTicks(List<BigDecimal> ticks) {
    List<String> labels = chart.up().labels(ticks);
    for (int i = 0; i < ticks.size(); i++) {
      double y = layout.y(ticks.get(i).doubleValue());
      shapes.add(new Shape.Line(layout.left(), y, layout.right(), y, Ink.HAIR, stroke(1)));
      double base = y + layout.text() * 0.35;
      text(layout.left() - layout.gap(), base, labels.get(i), Shape.Anchor.END, Ink.SOFT);
    }
  }

  private void acrossTicks(List<BigDecimal> ticks) {
    List<String> labels = chart.across().labels(ticks);
    double end = layout.bottom() + layout.gap() * 0.7;
    double base = layout.bottom() + layout.gap() + layout.text();
    for (int i = 0; i < ticks.size(); i++) {
      double x = layout.x(ticks.get(i).doubleValue());
      shapes.add(new Shape.Line(x, layout.bottom(), x, end, Ink.SOFT, stroke(1)));
      text(x, base, labels.get(i), Shape.Anchor.MIDDLE, Ink.SOFT);
    }
  }

  private void text(double x, double y, String text, Shape.Anchor anchor, Ink ink) {
    shapes.add(new Shape.Text(x, y, text, anchor, layout.text(), ink, false));
  }

  /** Names of marks stand over the plot, each beside its line, held inside the picture. */
  private void marks() {
    int row = 0;
    for (Chart.Mark mark : chart.marks()) {
      if (!chart.across().holds(mark.across())) {
        continue;
      }
      double x = layout.x(mark.across());
      double base = layout.top() - layout.gap() * 0.8 - row * layout.lineHeight();
      shapes.add(
          new Shape.Polyline(
              List.of(
                  new Shape.Point(x, base + layout.gap() * 0.4),
                  new Shape.Point(x, layout.bottom())),
              Ink.SOFT,
              stroke(1),
              true));
      double wide = layout.width(mark.name());
      boolean fits = x + wide <= layout.size().width() - layout.gap();
      text(
          fits ? x : layout.size().width() - layout.gap(),
          base,
          mark.name(),
          fits ? Shape.Anchor.START : Shape.Anchor.END,
          Ink.SOFT);
      row = layout.markRows() > 1 ? row + 1 : row;
    }
  }

  private void curves() {
    for (Chart.Curve curve : chart.curves()) {
      List<Shape.Point> points = points(curve.places());
      if (points.size() > 1) {
        shapes.add(
            new Shape.Polyline(
                points,
                curve.ink(),
                stroke(curve.weight() == Chart.Weight.STRONG ? 2.5 : 1.5),
                curve.weight() == Chart.Weight.DASHED));
      }
    }
    if (layout.namedAtEnds()) {
      names();
    }
  }

  private record End(Chart.Curve curve, double x, double y) {}

  /** Names at the right ends, pushed apart where ends lie close, with a hair to their curve. */
  private void names() {
    List<End> ends = new ArrayList<>();
    for (Chart.Curve curve : chart.curves()) {
      List<Shape.Point> points = points(curve.places());
      if (!points.isEmpty()) {
        Shape.Point last = points.get(points.size() - 1);
        ends.add(new End(curve, last.x(), last.y()));
      }
    }
    ends.sort(Comparator.comparingDouble(End::y));
    double[] places =
        Apart.places(
            ends.stream().mapToDouble(End::y).toArray(),
            layout.lineHeight(),
            layout.top() - layout.lineHeight() / 2,
            layout.bottom());
    for (int i = 0; i < ends.size(); i++) {
      End end = ends.get(i);
      double x = layout.right() + 2 * layout.gap();
      shapes.add(
          new Shape.Line(
              end.x(), end.y(), x - layout.gap() / 2, places[i], end.curve().ink(), stroke(0.75)));
      shapes.add(
          new Shape.Text(
              x,
              places[i] + layout.text() * 0.35,
              end.curve().name(),
              Shape.Anchor.START,
              layout.text(),
              end.curve().ink(),
              end.curve().weight() == Chart.Weight.STRONG));
    }
  }

  private void keys() {
    for (ChartLayout.Key key : layout.keys()) {
      double middle = key.y() - layout.text() * 0.33;
      double end = key.x() + layout.sample();
      if (key.band()) {
        double tall = layout.text() * 0.7;
        shapes.add(new Shape.Box(key.x(), middle - tall / 2, layout.sample(), tall, Ink.HAIR));
      } else {
        shapes.add(
            new Shape.Polyline(
                List.of(new Shape.Point(key.x(), middle), new Shape.Point(end, middle)),
                key.ink(),
                stroke(key.weight() == Chart.Weight.STRONG ? 2.5 : 1.5),
                key.weight() == Chart.Weight.DASHED));
      }
      text(end + layout.gap(), key.y(), key.name(), Shape.Anchor.START, Ink.INK);
    }
  }
}
