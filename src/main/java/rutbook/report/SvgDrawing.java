package rutbook.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import rutbook.drawing.Drawing;
import rutbook.drawing.Ink;
import rutbook.drawing.Shape;

/** A drawing as SVG that stands inside a page; colours are fixed, so that it prints alike. */
public final class SvgDrawing {
  private static final String SPACE = "http://www.w3.org/2000/svg";
  private static final double RING = 1.5;
  private static final Map<Ink, String> COLOURS =
      Map.of(
          Ink.PAGE, "#FFFFFF",
          Ink.INK, "#14212B",
          Ink.SOFT, "#50606C",
          Ink.HAIR, "#C9D2D8",
          Ink.BLUE, "#0A5AA8",
          Ink.OCHRE, "#A84600",
          Ink.BRICK, "#A1242B");

  private SvgDrawing() {}

  /**
   * The drawing with its own size and a name for those who cannot see it.
   *
   * @param said what it shows, in words
   */
  public static Markup.Element of(Drawing drawing, String said) {
    String box = "0 0 " + Numbers.plain(drawing.width()) + " " + Numbers.plain(drawing.height());
    return Markup.element("svg")
        .with("xmlns", SPACE)
        .with("width", drawing.width())
        .with("height", drawing.height())
        .with("viewBox", box)
        .with("role", "img")
        .with("aria-label", said)
        .holding(drawing.shapes().stream().map(SvgDrawing::shape).toList());
  }

  /** A picture file of its own. */
  public static String file(Drawing drawing, String said) {
    return MarkupText.of(of(drawing, said)) + "\n";
  }

  static String colour(Ink ink) {
    return COLOURS.get(ink);
  }

  private static Markup.Element shape(Shape shape) {
    if (shape instanceof Shape.Line line) {
      return stroked(Markup.element("line"), line.ink(), line.width())
          .with("x1", line.x1())
          .with("y1", line.y1())
          .with("x2", line.x2())
          .with("y2", line.y2());
    } else if (shape instanceof Shape.Box box) {
      return Markup.element("rect")
          .with("x", box.x())
          .with("y", box.y())
          .with("width", box.width())
          .with("height", box.height())
          .with("fill", colour(box.ink()));
    } else if (shape instanceof Shape.Dot dot) {
      return dot(dot);
    } else if (shape instanceof Shape.Polygon polygon) {
      Markup.Element outline = filled(Markup.element("polygon"), polygon.ink(), polygon.filled());
      return outline.with("points", points(polygon.points()));
    } else if (shape instanceof Shape.Polyline line) {
      return polyline(line);
    }
    return text((Shape.Text) shape);
  }

  private static Markup.Element dot(Shape.Dot dot) {
    double radius = dot.radius() - (dot.filled() ? 0 : RING / 2);
    return filled(Markup.element("circle"), dot.ink(), dot.filled())
        .with("cx", dot.x())
        .with("cy", dot.y())
        .with("r", radius);
  }

  private static Markup.Element polyline(Shape.Polyline line) {
    Markup.Element drawn =
        stroked(Markup.element("polyline"), line.ink(), line.width())
            .with("fill", "none")
            .with("points", points(line.points()));
    return line.dashed() ? drawn.with("stroke-dasharray", "4 3") : drawn;
  }

  private static Markup.Element text(Shape.Text text) {
    Markup.Element drawn =
        Markup.element("text")
            .with("x", text.x())
            .with("y", text.y())
            .with("font-size", text.size())
            .with("text-anchor", text.anchor().name().toLowerCase(Locale.ROOT))
            .with("fill", colour(text.ink()));
    return (text.bold() ? drawn.with("font-weight", "600") : drawn).saying(text.text());
  }

  private static Markup.Element stroked(Markup.Element element, Ink ink, double width) {
    return element.with("stroke", colour(ink)).with("stroke-width", width);
  }

  private static Markup.Element filled(Markup.Element element, Ink ink, boolean filled) {
    return filled
        ? element.with("fill", colour(ink))
        : stroked(element.with("fill", colour(Ink.PAGE)), ink, RING);
  }

  private static String points(List<Shape.Point> points) {
    return points.stream()
        .map(point -> Numbers.plain(point.x()) + "," + Numbers.plain(point.y()))
        .collect(Collectors.joining(" "));
  }
}
