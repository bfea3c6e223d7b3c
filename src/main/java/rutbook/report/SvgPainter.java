package rutbook.report;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Paints into a PDF the kinds of SVG that {@link SvgDrawing} writes, and no others. */
final class SvgPainter implements SVGDrawer {
  private final PrintFont regular;
  private final PrintFont bold;

  SvgPainter(PrintFont regular, PrintFont bold) {
    this.regular = regular;
    this.bold = bold;
  }

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext context, double width, double height, double dotsPerPixel) {
    double ownWidth = number(svg, "width");
    double ownHeight = number(svg, "height");
    double scale =
        height >= 0
            ? height / dotsPerPixel / ownHeight
            : width >= 0 ? width / dotsPerPixel / ownWidth : 1;
    return new Picture(
        svg, scale, ownWidth * scale * dotsPerPixel, ownHeight * scale * dotsPerPixel);
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext shared) {
    // Texts of drawings are set in the two fonts given.
  }

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {
    // Texts of drawings are set in the two fonts given.
  }

  @Override
  public void close() {
    // Nothing is held open.
  }

  /** One drawing, as large as the page wants it. */
  private final class Picture implements SVGImage {
    private final Element svg;
    private final double scale;
    private final double width;
    private final double height;

    Picture(Element svg, double scale, double width, double height) {
      this.svg = svg;
      this.scale = scale;
      this.width = width;
      this.height = height;
    }

    @Override
    public int getIntrinsicWidth() {
      return (int) Math.round(width);
    }

    @Override
    public int getIntrinsicHeight() {
      return (int) Math.round(height);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
      device.drawWithGraphics(
          (float) x, (float) y, (float) width, (float) height, graphics -> paint(graphics));
    }

    private void paint(Graphics2D graphics) {
      graphics.scale(scale, scale);
      for (Node child = svg.getFirstChild(); child != null; child = child.getNextSibling()) {
        if (child instanceof Element shape) {
          SvgPainter.this.paint(graphics, shape);
        }
      }
    }
  }

  private void paint(Graphics2D graphics, Element shape) {
    Shape outline = outline(shape);
    String fill = shape.getAttribute("fill");
    if (!fill.isEmpty() && !fill.equals("none")) {
      graphics.setPaint(Color.decode(fill));
      graphics.fill(outline);
    }
    String stroke = shape.getAttribute("stroke");
    if (!stroke.isEmpty()) {
      graphics.setPaint(Color.decode(stroke));
      graphics.setStroke(stroke(shape));
      graphics.draw(outline);
    }
  }

  private static BasicStroke stroke(Element shape) {
    float width = (float) number(shape, "stroke-width");
    return shape.hasAttribute("stroke-dasharray")
        ? new BasicStroke(
            width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0)
        : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }

  private Shape outline(Element shape) {
    return switch (shape.getTagName()) {
      case "line" ->
          new Line2D.Double(
              number(shape, "x1"), number(shape, "y1"), number(shape, "x2"), number(shape, "y2"));
      case "rect" ->
          new Rectangle2D.Double(
              number(shape, "x"),
              number(shape, "y"),
              number(shape, "width"),
              number(shape, "height"));
      case "circle" -> circle(number(shape, "cx"), number(shape, "cy"), number(shape, "r"));
      case "polygon" -> line(shape.getAttribute("points"), true);
      case "polyline" -> line(shape.getAttribute("points"), false);
      case "text" -> text(shape);
      default -> throw new IllegalArgumentException("not drawn here: " + shape.getTagName());
    };
  }

  private static Shape circle(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private static Shape line(String points, boolean closed) {
    Path2D line = new Path2D.Double();
    for (String point : points.split(" ")) {
      double x = Double.parseDouble(point.substring(0, point.indexOf(',')));
      double y = Double.parseDouble(point.substring(point.indexOf(',') + 1));
      if (line.getCurrentPoint() == null) {
        line.moveTo(x, y);
      } else {
        line.lineTo(x, y);
      }
    }
    if (closed) {
      line.closePath();
    }
    return line;
  }

  private Shape text(Element element) {
    PrintFont font = element.hasAttribute("font-weight") ? bold : regular;
    String text = element.getTextContent();
    double size = number(element, "font-size");
    double width = font.width(text, size);
    double before =
        switch (element.getAttribute("text-anchor")) {
          case "middle" -> width / 2;
          case "end" -> width;
          default -> 0;
        };
    return font.outlines(text, number(element, "x") - before, number(element, "y"), size);
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
