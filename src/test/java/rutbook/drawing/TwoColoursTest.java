package rutbook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.notebook.Bench;
import rutbook.notebook.Setting;
import rutbook.units.Numerals;

/**
 * The two colours of a comparison stay apart for people who see fewer colours, and its two marks
 * without any colour.
 *
 * <p>Machado, Oliveira and Fernandes, A Physiologically-based Model for Simulation of Color Vision
 * Deficiency, IEEE TVCG 15(6), 2009: the matrices for severity 1.0, in linear RGB, from memory;
 * that white stays white is tested. CIELAB of D65 as in CIE 15 and sRGB as in IEC 61966-2-1, also
 * from memory. A distance of 20 as clearly apart: our own choice, no source; 2.3 is the usual just
 * noticeable one.
 */
class TwoColoursTest {
  private static final double CLEARLY_APART = 20;

  /** A way of seeing, as a matrix over linear red, green and blue. */
  private enum Sight {
    FULL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTANOPIA(
        0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116,
        1.051998),
    DEUTERANOPIA(
        0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(
        1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367,
        0.303900);

    private final double[] matrix;

    Sight(double... matrix) {
      this.matrix = matrix;
    }

    double[] seen(double... linear) {
      double[] seen = new double[3];
      for (int row = 0; row < 3; row++) {
        for (int column = 0; column < 3; column++) {
          seen[row] += matrix[3 * row + column] * linear[column];
        }
        seen[row] = Math.max(0, Math.min(1, seen[row]));
      }
      return seen;
    }
  }

  private static double[] linear(String hex) {
    double[] linear = new double[3];
    for (int i = 0; i < 3; i++) {
      double part = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      linear[i] = part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
    return linear;
  }

  private static double[] lab(double... rgb) {
    double x = 0.4124564 * rgb[0] + 0.3575761 * rgb[1] + 0.1804375 * rgb[2];
    double y = 0.2126729 * rgb[0] + 0.7151522 * rgb[1] + 0.0721750 * rgb[2];
    double z = 0.0193339 * rgb[0] + 0.1191920 * rgb[1] + 0.9503041 * rgb[2];
    double fx = root(x / 0.95047);
    double fy = root(y);
    double fz = root(z / 1.08883);
    return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
  }

  private static double root(double share) {
    return share > 216.0 / 24389 ? Math.cbrt(share) : (24389.0 / 27 * share + 16) / 116;
  }

  private static double apart(Sight sight, String one, String other) {
    double[] a = lab(sight.seen(linear(one)));
    double[] b = lab(sight.seen(linear(other)));
    double squares = 0;
    for (int i = 0; i < 3; i++) {
      squares += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(squares);
  }

  private static String colour(String theme, String role) throws IOException {
    String css = Files.readString(Path.of("src/main/resources/rutbook/ui", theme + ".css"));
    Matcher found = Pattern.compile("-rb-" + role + ": *(#[0-9A-Fa-f]{6})").matcher(css);
    assertThat(found.find()).as(theme + " " + role).isTrue();
    return found.group(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "sun"})
  void blueAndOchreStayApartHoweverTheyAreSeen(String theme) throws IOException {
    String blue = colour(theme, "blue");
    String ochre = colour(theme, "ochre");
    for (Sight sight : Sight.values()) {
      assertThat(apart(sight, blue, ochre)).as(theme + " " + sight).isGreaterThan(CLEARLY_APART);
      assertThat(apart(sight, blue, colour(theme, "page"))).isGreaterThan(CLEARLY_APART);
      assertThat(apart(sight, ochre, colour(theme, "page"))).isGreaterThan(CLEARLY_APART);
    }
  }

  @Test
  void whiteStaysWhiteAndRedAndGreenOfOneLightnessDoNot() {
    for (Sight sight : Sight.values()) {
      assertThat(sight.seen(1, 1, 1)).containsExactly(new double[] {1, 1, 1}, within(2e-6));
    }
    String red = "#B04A3A";
    String green = "#6E7A2E";
    assertThat(apart(Sight.FULL, red, green)).isGreaterThan(2 * CLEARLY_APART);
    assertThat(apart(Sight.DEUTERANOPIA, red, green)).isLessThan(CLEARLY_APART);
  }

  @Test
  void withoutColourTheSidesDifferByShape() {
    Setting setting = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    Drawing drawing =
        ComparedRuler.of(
            Ruler.of(Bench.sheet(), setting, rutbook.notebook.Reading.bothLegs(Bench.clicks(12))),
            List.of(Bench.clicks(10)),
            List.of(Bench.clicks(14)),
            RulerDrawing.Size.numbered(300, Numerals.POINT, 1));
    assertThat(drawing.shapes(Shape.Dot.class)).hasSize(1).allMatch(Shape.Dot::filled);
    assertThat(drawing.shapes(Shape.Polygon.class)).hasSize(1).noneMatch(Shape.Polygon::filled);
  }

  @Test
  void withoutColourTheLapsOfTheSidesDifferByShape() {
    Drawing drawing =
        LapDots.of(
            List.of(new LapDots.Column("a", List.of(100.0, 101.0))),
            List.of(new LapDots.Column("b", List.of(99.0))),
            "s",
            Numerals.POINT,
            400,
            150);
    assertThat(drawing.shapes(Shape.Dot.class)).hasSize(2).allMatch(Shape.Dot::filled);
    assertThat(drawing.shapes(Shape.Polygon.class)).hasSize(1).noneMatch(Shape.Polygon::filled);
  }
}
