package rutbook.drawing;

import java.util.ArrayList;
import java.util.List;

/** The marks of a ruler by themselves, for the line that says what they mean. */
public enum MarkGlyph {
  READING,
  BASELINE,
  PREVIOUS,
  OTHER_LEG,
  NEAR_STOP,
  FIRST,
  SECOND;

  private static final double WIDTH = 18;
  private static final double HEIGHT = 16;
  private static final double LINE = 8;
  private static final double MIDDLE = 9;

  public Drawing drawing() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Line(0, LINE, WIDTH, LINE, Ink.INK, 1.5));
    switch (this) {
      case READING -> shapes.add(new Shape.Dot(MIDDLE, LINE, 4.5, Ink.INK, true));
      case BASELINE -> shapes.add(triangle());
      case PREVIOUS -> shapes.add(new Shape.Dot(MIDDLE, LINE, 3, Ink.SOFT, false));
      case OTHER_LEG -> shapes.add(new Shape.Dot(MIDDLE, LINE, 4.5, Ink.BRICK, false));
      case NEAR_STOP -> shapes.add(new Shape.Box(0, LINE + 0.5, WIDTH, 4, Ink.SOFT));
      case FIRST -> shapes.add(new Shape.Dot(MIDDLE, LINE, 3.5, Ink.BLUE, true));
      case SECOND -> shapes.add(ComparedRuler.diamond(MIDDLE, LINE, 1));
    }
    return new Drawing(WIDTH, HEIGHT, shapes);
  }

  private static Shape triangle() {
    return new Shape.Polygon(
        List.of(
            new Shape.Point(MIDDLE, LINE + 1),
            new Shape.Point(MIDDLE + 4, LINE + 8),
            new Shape.Point(MIDDLE - 4, LINE + 8)),
        Ink.INK,
        false);
  }
}
