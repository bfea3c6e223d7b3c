package rutbook.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import rutbook.notebook.Section;

/** A section of a lap as a small line: what the ground does there. */
public final class SectionGlyph {
  private static final int POINTS = 40;

  private SectionGlyph() {}

  /** A line across the width; y is 0 at the top of the ground's play and 1 at its bottom. */
  public static Drawing of(Section section, double width, double height) {
    List<Shape.Point> points = new ArrayList<>();
    DoubleUnaryOperator ground = ground(section);
    for (int i = 0; i <= POINTS; i++) {
      double at = i / (double) POINTS;
      double y = 1.5 + ground.applyAsDouble(at) * (height - 3);
      points.add(new Shape.Point(1 + at * (width - 2), y));
    }
    return new Drawing(width, height, List.of(new Shape.Polyline(points, Ink.INK, 1.6, false)));
  }

  private static DoubleUnaryOperator ground(Section section) {
    return switch (section) {
      case STRAIGHT -> at -> 0.7;
      case BRAKING_BUMPS -> at -> 0.55 + 0.4 * wave(at, 4);
      case SQUARE_EDGES -> at -> at % 0.34 < 0.17 ? 0.8 : 0.3;
      case CORNER_ENTRY -> at -> 0.15 + 0.75 * at * at;
      case MID_CORNER -> at -> 0.1 + 3.2 * (at - 0.5) * (at - 0.5);
      case RUTS -> at -> Math.abs(at - 0.5) < 0.17 ? 0.95 : 0.25 + 0.1 * wave(at, 3);
      case CORNER_EXIT -> at -> 0.9 - 0.75 * at * at;
      case ACCELERATION_BUMPS -> at -> 0.6 + 0.3 * wave(at, 6);
      case WHOOPS -> at -> 0.5 + 0.45 * wave(at, 2.5);
      case ROLLERS -> at -> 0.6 + 0.28 * wave(at, 2);
      case JUMP_FACE -> at -> at < 0.35 ? 0.9 : 0.9 - 0.85 * Math.pow((at - 0.35) / 0.65, 1.7);
      case LANDING -> at -> at > 0.65 ? 0.9 : 0.05 + 0.85 * Math.pow(at / 0.65, 1.4);
      case G_OUT -> at -> 0.95 - 3.4 * (at - 0.5) * (at - 0.5);
      case DOWNHILL -> at -> 0.1 + 0.8 * at;
      case ROCKS_AND_ROOTS -> at -> 0.6 - 0.5 * Math.abs(Math.sin(at * 13) * Math.cos(at * 7));
      case SAND -> at -> 0.7 + 0.12 * wave(at, 9);
    };
  }

  private static double wave(double at, double times) {
    return Math.cos(at * times * 2 * Math.PI);
  }
}
