package rutbook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Places reckoned by hand: 109 wide leaves 100 between the dots' middles, 20 to a point. */
class EffectLineTest {
  private static List<Shape> drawn(double now, double mean, double low, double high) {
    return EffectLine.of(now, mean, low, high, 109, 18).shapes();
  }

  private static Shape.Dot dot(List<Shape> shapes, boolean filled) {
    return shapes.stream()
        .filter(Shape.Dot.class::isInstance)
        .map(Shape.Dot.class::cast)
        .filter(dot -> dot.filled() == filled)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void betterIsBlueAndLeftOfWhereItIsNow() {
    List<Shape> shapes = drawn(3, -1.2, -1.5, -0.9);
    assertThat(dot(shapes, false).x()).isCloseTo(64.5, within(1e-9));
    assertThat(dot(shapes, true).x()).isCloseTo(40.5, within(1e-9));
    assertThat(dot(shapes, true).ink()).isEqualTo(Ink.BLUE);
    Shape.Box band = (Shape.Box) shapes.get(0);
    assertThat(band.x()).isCloseTo(34.5, within(1e-9));
    assertThat(band.width()).isCloseTo(12, within(1e-9));
  }

  @Test
  void worseIsOchreAndRight() {
    Shape.Dot worse = dot(drawn(0, 0.5, 0, 1), true);
    assertThat(worse.ink()).isEqualTo(Ink.OCHRE);
    assertThat(worse.x()).isCloseTo(14.5, within(1e-9));
  }

  @Test
  void nothingLiesBeyondTheEndsOfTheScale() {
    for (Shape shape : drawn(0.5, -2, -4, 9)) {
      if (shape instanceof Shape.Dot dot) {
        assertThat(dot.x()).isBetween(4.5, 104.5);
      } else if (shape instanceof Shape.Box box) {
        assertThat(box.x()).isGreaterThanOrEqualTo(4.5);
        assertThat(box.x() + box.width()).isLessThanOrEqualTo(104.5 + 1e-9);
      }
    }
  }
}
