package rutbook.drawing;

import java.util.ArrayList;
import java.util.List;

/** Trust over time as a thin line from 1 to 10, the last one as a dot. */
public final class TrustLine {
  private static final double LEAST = 1;
  private static final double MOST = 10;
  private static final double DOT = 3;

  private TrustLine() {}

  /**
   * The values evenly along the width; where there are more than two pixels hold, the latest. One
   * value is a dot, none an empty picture.
   */
  public static Drawing of(List<Double> trust, double width, double height) {
    int room = Math.max(2, (int) (width / 2));
    List<Double> shown = trust.subList(Math.max(0, trust.size() - room), trust.size());
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Line(0, height - 0.5, width, height - 0.5, Ink.HAIR, 1));
    List<Shape.Point> points = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      double share = shown.size() == 1 ? 1 : i / (double) (shown.size() - 1);
      double x = DOT + share * (width - 2 * DOT);
      double up = (shown.get(i) - LEAST) / (MOST - LEAST);
      points.add(new Shape.Point(x, DOT + (1 - up) * (height - 2 * DOT)));
    }
    if (points.size() > 1) {
      shapes.add(new Shape.Polyline(points, Ink.INK, 1.5, false));
    }
    if (!points.isEmpty()) {
      Shape.Point last = points.get(points.size() - 1);
      shapes.add(new Shape.Dot(last.x(), last.y(), DOT, Ink.INK, true));
    }
    return new Drawing(width, height, shapes);
  }
}
