package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.drawing.Drawing;
import rutbook.drawing.Ink;
import rutbook.drawing.Shape;

class SvgDrawingTest {

  private static String svg(Shape shape) {
    String file = SvgDrawing.file(new Drawing(40, 20, List.of(shape)), "a picture");
    return file.substring(file.indexOf('>') + 1, file.lastIndexOf("</svg>"));
  }

  @Test
  void aDrawingHasItsSizeAndItsName() {
    assertThat(SvgDrawing.file(new Drawing(40.5, 20, List.of()), "Fork \"A\": 14 out"))
        .isEqualTo(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40.5\" height=\"20\""
                + " viewBox=\"0 0 40.5 20\" role=\"img\""
                + " aria-label=\"Fork &quot;A&quot;: 14 out\"></svg>\n");
  }

  @Test
  void everyKindOfShapeIsDrawn() {
    List<Shape.Point> points = List.of(new Shape.Point(0, 0.123), new Shape.Point(1, 2));
    assertThat(svg(new Shape.Line(0, 1, 2, 1, Ink.BLUE, 1.5)))
        .isEqualTo(
            "<line stroke=\"#0A5AA8\" stroke-width=\"1.5\" x1=\"0\" y1=\"1\" x2=\"2\""
                + " y2=\"1\"></line>");
    assertThat(svg(new Shape.Box(0, 1, 2, 3, Ink.HAIR))).contains("<rect x=\"0\" y=\"1\"");
    assertThat(svg(new Shape.Dot(5, 5, 4, Ink.INK, true))).contains("fill=\"#14212B\"", "r=\"4\"");
    assertThat(svg(new Shape.Dot(5, 5, 4, Ink.BRICK, false)))
        .contains("fill=\"#FFFFFF\"", "stroke=\"#A1242B\"", "r=\"3.25\"");
    assertThat(svg(new Shape.Polygon(points, Ink.OCHRE, false)))
        .contains("points=\"0,0.12 1,2\"", "stroke=\"#A84600\"");
    assertThat(svg(new Shape.Polyline(points, Ink.SOFT, 1, true)))
        .contains("fill=\"none\"", "stroke-dasharray");
    assertThat(svg(new Shape.Text(1, 2, "<5", Shape.Anchor.MIDDLE, 11, Ink.SOFT, true)))
        .contains("text-anchor=\"middle\"", "font-weight=\"600\"", ">&lt;5</text>");
  }
}
