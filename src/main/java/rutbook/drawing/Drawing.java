package rutbook.drawing;

import java.util.List;

/** Shapes in the order they are drawn, and the size they were laid out for. */
public record Drawing(double width, double height, List<Shape> shapes) {
  public Drawing {
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a drawing of " + width + " by " + height);
    }
    shapes = List.copyOf(shapes);
  }

  public <T extends Shape> List<T> shapes(Class<T> kind) {
    return shapes.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
