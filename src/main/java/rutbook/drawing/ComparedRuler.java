package rutbook.drawing;

import java.util.ArrayList;
import java.util.List;
import rutbook.units.Amount;

/**
 * A ruler with two sides of a comparison on it: the first a filled blue dot, the second a hollow
 * ochre diamond around it, so that both are seen where they are the same and in print without
 * colour.
 */
public final class ComparedRuler {
  private static final double DOT = 3.5;
  private static final double DIAMOND = 6.5;

  private ComparedRuler() {}

  /**
   * The limits and steps of a ruler with its marks left out.
   *
   * @param first amounts of the first side, one or one a leg; empty when it is not known
   * @param second amounts of the second
   */
  public static Drawing of(
      Ruler ruler, List<Amount> first, List<Amount> second, RulerDrawing.Size size) {
    Ruler wide = reaching(ruler, first, second);
    RulerScale scale = RulerDrawing.scale(wide, size);
    List<Shape> shapes = new ArrayList<>(RulerDrawing.ground(wide, size));
    for (Amount amount : second) {
      shapes.add(diamond(scale.x(amount), size.line(), size.scale()));
    }
    for (Amount amount : first) {
      double radius = DOT * size.scale();
      shapes.add(new Shape.Dot(scale.x(amount), size.line(), radius, Ink.BLUE, true));
    }
    return new Drawing(size.width(), size.height(), shapes);
  }

  static Shape diamond(double x, double y, double unit) {
    double reach = DIAMOND * unit;
    return new Shape.Polygon(
        List.of(
            new Shape.Point(x, y - reach),
            new Shape.Point(x + reach, y),
            new Shape.Point(x, y + reach),
            new Shape.Point(x - reach, y)),
        Ink.OCHRE,
        false);
  }

  /** The ruler whose line reaches over everything that is compared. */
  private static Ruler reaching(Ruler ruler, List<Amount> first, List<Amount> second) {
    List<Amount> all = new ArrayList<>(first);
    all.addAll(second);
    return new Ruler(
        ruler.limits(),
        ruler.step(),
        ruler.hasStops(),
        all.stream().min(Amount::compareQuantity),
        all.stream().max(Amount::compareQuantity),
        Ruler.Marks.NONE);
  }
}
