package rutbook.ui.fx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import rutbook.drawing.Drawing;
import rutbook.drawing.Ink;
import rutbook.drawing.Shape;

/** A {@link Drawing} as nodes; colours come from the style sheet, by the role of each ink. */
public class DrawingView extends Region {
  private Drawing shown;

  public DrawingView() {
    setMouseTransparent(false);
    setPickOnBounds(true);
  }

  public final void show(Drawing drawing) {
    if (drawing.equals(shown)) {
      return;
    }
    shown = drawing;
    List<Node> nodes = nodes(drawing.shapes());
    nodes.forEach(
        node -> {
          node.setManaged(false);
          node.setMouseTransparent(true);
        });
    getChildren().setAll(nodes);
  }

  /** Of lines that follow each other, those that look alike are one node: a ruler has dozens. */
  private static List<Node> nodes(List<Shape> shapes) {
    List<Node> nodes = new ArrayList<>();
    Map<LineStyle, Path> lines = new HashMap<>();
    for (Shape shape : shapes) {
      if (shape instanceof Shape.Line line) {
        LineStyle style = new LineStyle(line.ink(), line.width());
        Path path = lines.get(style);
        if (path == null) {
          path = path(style);
          lines.put(style, path);
          nodes.add(path);
        }
        add(line, path);
      } else {
        lines.clear();
        nodes.add(node(shape));
      }
    }
    return nodes;
  }

  private record LineStyle(Ink ink, double width) {}

  public final Drawing shown() {
    return shown;
  }

  @Override
  protected double computePrefWidth(double height) {
    return shown == null ? 0 : shown.width();
  }

  @Override
  protected double computePrefHeight(double width) {
    return shown == null ? 0 : shown.height();
  }

  private static Node node(Shape shape) {
    if (shape instanceof Shape.Box box) {
      return box(box);
    }
    if (shape instanceof Shape.Dot dot) {
      return dot(dot);
    }
    if (shape instanceof Shape.Polygon polygon) {
      return polygon(polygon);
    }
    return shape instanceof Shape.Polyline polyline ? polyline(polyline) : text((Shape.Text) shape);
  }

  private static Node box(Shape.Box box) {
    Rectangle node = new Rectangle(box.x(), box.y(), box.width(), box.height());
    node.getStyleClass().add(fill(box.ink()));
    return node;
  }

  private static String fill(Ink ink) {
    return "fill-" + ink.name().toLowerCase(Locale.ROOT);
  }

  private static String stroke(Ink ink) {
    return "draw-" + ink.name().toLowerCase(Locale.ROOT);
  }

  /** Upright and level lines are put on whole pixels, so that they are sharp. */
  private static void add(Shape.Line line, Path path) {
    boolean upright = line.x1() == line.x2();
    boolean level = line.y1() == line.y2();
    double x1 = upright ? sharp(line.x1()) : line.x1();
    double y1 = level ? sharp(line.y1()) : line.y1();
    double x2 = upright ? x1 : line.x2();
    double y2 = level ? y1 : line.y2();
    path.getElements().addAll(new MoveTo(x1, y1), new LineTo(x2, y2));
  }

  private static Path path(LineStyle style) {
    Path path = new Path();
    path.setFill(null);
    path.setStrokeWidth(style.width());
    path.setStrokeLineCap(StrokeLineCap.BUTT);
    path.getStyleClass().add(stroke(style.ink()));
    return path;
  }

  private static double sharp(double place) {
    return Math.floor(place) + 0.5;
  }

  private static Node dot(Shape.Dot dot) {
    double ring = dot.filled() ? 0 : 1.5;
    Circle circle = new Circle(dot.x(), dot.y(), dot.radius() - ring / 2);
    circle.getStyleClass().add(fill(dot.filled() ? dot.ink() : Ink.PAGE));
    if (!dot.filled()) {
      circle.setStrokeWidth(ring);
      circle.getStyleClass().add(stroke(dot.ink()));
    }
    return circle;
  }

  private static Node polygon(Shape.Polygon polygon) {
    javafx.scene.shape.Polygon node = new javafx.scene.shape.Polygon(numbers(polygon.points()));
    node.getStyleClass().add(fill(polygon.filled() ? polygon.ink() : Ink.PAGE));
    if (!polygon.filled()) {
      node.setStrokeWidth(1.4);
      node.getStyleClass().add(stroke(polygon.ink()));
    }
    return node;
  }

  private static Node polyline(Shape.Polyline polyline) {
    Polyline node = new Polyline(numbers(polyline.points()));
    node.setFill(null);
    node.setStrokeWidth(polyline.width());
    if (polyline.dashed()) {
      node.getStrokeDashArray().addAll(4.0, 3.0);
    }
    node.getStyleClass().add(stroke(polyline.ink()));
    return node;
  }

  private static double[] numbers(List<Shape.Point> points) {
    double[] numbers = new double[points.size() * 2];
    for (int i = 0; i < points.size(); i++) {
      numbers[2 * i] = points.get(i).x();
      numbers[2 * i + 1] = points.get(i).y();
    }
    return numbers;
  }

  private static Node text(Shape.Text text) {
    Text node = new Text(text.text());
    String family = text.bold() ? "IBM Plex Sans Cond SmBld" : "IBM Plex Sans Cond";
    node.setFont(Font.font(family, text.size()));
    node.setTextOrigin(VPos.BASELINE);
    double width = node.getLayoutBounds().getWidth();
    double x =
        switch (text.anchor()) {
          case START -> text.x();
          case MIDDLE -> text.x() - width / 2;
          case END -> text.x() - width;
        };
    node.setX(Math.round(x));
    node.setY(Math.round(text.y()));
    node.getStyleClass().add(fill(text.ink()));
    return node;
  }
}
