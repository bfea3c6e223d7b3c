package rutbook.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import rutbook.drawing.Drawing;
import rutbook.drawing.Ink;
import rutbook.drawing.Shape;

/** A drawing painted into a picture file, in the light theme, with the window's own letters. */
final class PaintedDrawing {
  private static final Map<Ink, Color> COLOURS =
      Map.of(
          Ink.PAGE, Color.WHITE,
          Ink.INK, new Color(0x14212B),
          Ink.SOFT, new Color(0x50606C),
          Ink.HAIR, new Color(0xC9D2D8),
          Ink.BLUE, new Color(0x0A5AA8),
          Ink.OCHRE, new Color(0xA84600),
          Ink.BRICK, new Color(0xA1242B));

  private final Graphics2D graphics;

  private PaintedDrawing(Graphics2D graphics) {
    this.graphics = graphics;
  }

  /** The drawing at so many pixels for each of its own. */
  static BufferedImage of(Drawing drawing, double zoom) {
    int width = (int) Math.ceil(drawing.width() * zoom);
    int height = (int) Math.ceil(drawing.height() * zoom);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.scale(zoom, zoom);
    drawing.shapes().forEach(new PaintedDrawing(graphics)::paint);
    graphics.dispose();
    return image;
  }

  private static Font font(boolean bold) {
    String name = "IBMPlexSansCondensed-" + (bold ? "SemiBold" : "Regular");
    try {
      return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(Resources.font(name)));
    } catch (IOException | FontFormatException damaged) {
      throw new IllegalStateException(name, damaged);
    }
  }

  private void paint(Shape shape) {
    if (shape instanceof Shape.Line line) {
      stroke(line.ink(), line.width(), false);
      graphics.draw(new Line2D.Double(line.x1(), line.y1(), line.x2(), line.y2()));
    } else if (shape instanceof Shape.Box box) {
      graphics.setColor(COLOURS.get(box.ink()));
      graphics.fill(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
    } else if (shape instanceof Shape.Dot dot) {
      graphics.setColor(COLOURS.get(dot.ink()));
      double wide = 2 * dot.radius();
      graphics.fill(
          new Ellipse2D.Double(dot.x() - dot.radius(), dot.y() - dot.radius(), wide, wide));
    } else if (shape instanceof Shape.Polygon polygon) {
      graphics.setColor(COLOURS.get(polygon.ink()));
      Path2D path = path(polygon.points());
      path.closePath();
      graphics.fill(path);
    } else if (shape instanceof Shape.Polyline line) {
      stroke(line.ink(), line.width(), line.dashed());
      graphics.draw(path(line.points()));
    } else {
      text((Shape.Text) shape);
    }
  }

  private void stroke(Ink ink, double width, boolean dashed) {
    graphics.setColor(COLOURS.get(ink));
    float[] dashes = dashed ? new float[] {4, 3} : null;
    graphics.setStroke(
        new BasicStroke(
            (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0));
  }

  private static Path2D path(List<Shape.Point> points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points.get(0).x(), points.get(0).y());
    points.forEach(point -> path.lineTo(point.x(), point.y()));
    return path;
  }

  private void text(Shape.Text text) {
    graphics.setColor(COLOURS.get(text.ink()));
    graphics.setFont(font(text.bold()).deriveFont((float) text.size()));
    double width = graphics.getFontMetrics().stringWidth(text.text());
    double x =
        switch (text.anchor()) {
          case START -> text.x();
          case MIDDLE -> text.x() - width / 2;
          case END -> text.x() - width;
        };
    graphics.drawString(text.text(), (float) x, (float) text.y());
  }
}
