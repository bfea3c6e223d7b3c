package rutbook.drawing;

import java.util.List;

/** A thing to draw; lengths in pixels of the screen or points of the page, y downwards. */
public sealed interface Shape {
  /** A point of a polyline or polygon. */
  record Point(double x, double y) {}

  record Line(double x1, double y1, double x2, double y2, Ink ink, double width) implements Shape {}

  /** A filled rectangle. */
  record Box(double x, double y, double width, double height, Ink ink) implements Shape {}

  /** A dot: filled, or hollow with its ring inside the radius. */
  record Dot(double x, double y, double radius, Ink ink, boolean filled) implements Shape {}

  /** A closed outline: filled, or hollow. */
  record Polygon(List<Point> points, Ink ink, boolean filled) implements Shape {
    public Polygon {
      points = List.copyOf(points);
    }
  }

  /** An open line through points, as for a curve. */
  record Polyline(List<Point> points, Ink ink, double width, boolean dashed) implements Shape {
    public Polyline {
      points = List.copyOf(points);
    }
  }

  /** A piece of text; y is its base line. */
  record Text(double x, double y, String text, Anchor anchor, double size, Ink ink, boolean bold)
      implements Shape {}

  /** Which part of a text stands at its x. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }
}
