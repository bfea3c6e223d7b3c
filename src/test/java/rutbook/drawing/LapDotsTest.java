package rutbook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.drawing.LapDots.Column;
import rutbook.units.Numerals;

/** Laps by moto: each lap a mark, the two sides told apart by shape. */
class LapDotsTest {
  private static Drawing drawn(List<Column> first, List<Column> second) {
    return LapDots.of(first, second, "s", Numerals.POINT, 600, 150);
  }

  private static Column moto(String name, Double... laps) {
    return new Column(name, List.of(laps));
  }

  @Test
  void everyLapIsOneMarkFilledDotsFirstHollowDiamondsSecond() {
    Drawing drawing = drawn(List.of(moto("a", 100.0, 101.0)), List.of(moto("b", 99.0, 98.5, 99.5)));
    assertThat(drawing.shapes(Shape.Dot.class)).hasSize(2).allMatch(Shape.Dot::filled);
    assertThat(drawing.shapes(Shape.Polygon.class)).hasSize(3).noneMatch(Shape.Polygon::filled);
  }

  @Test
  void aQuickerLapLiesLower() {
    List<Shape.Dot> dots =
        drawn(List.of(moto("a", 100.0, 90.0)), List.of(moto("b", 95.0))).shapes(Shape.Dot.class);
    assertThat(dots.get(1).y()).isGreaterThan(dots.get(0).y());
  }

  @Test
  void theMeanOfAMotoIsALineThroughItsMiddle() {
    Drawing drawing = drawn(List.of(moto("a", 100.0, 90.0)), List.of(moto("b", 95.0)));
    List<Shape.Line> means =
        drawing.shapes(Shape.Line.class).stream()
            .filter(line -> line.ink() == Ink.BLUE || line.ink() == Ink.OCHRE)
            .toList();
    List<Shape.Dot> dots = drawing.shapes(Shape.Dot.class);
    assertThat(means).hasSize(2);
    assertThat(means.get(0).y1()).isCloseTo((dots.get(0).y() + dots.get(1).y()) / 2, within(1e-9));
    assertThat(means.get(1).y1()).isCloseTo(means.get(0).y1(), within(1e-9));
  }

  @Test
  void oneLapOnEachSideIsDrawnToo() {
    Drawing drawing = drawn(List.of(moto("a", 100.0)), List.of(moto("b", 100.0)));
    assertThat(drawing.shapes(Shape.Dot.class)).hasSize(1);
    assertThat(drawing.shapes(Shape.Polygon.class)).hasSize(1);
  }

  @Test
  void aThousandMotosStayInsideAndTheirNamesAreLeftOut() {
    List<Column> many = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      many.add(moto("7 Mar 2026, moto " + i, 100.0 + i % 7, 101.0 + i % 5));
    }
    Drawing drawing = drawn(many, many);
    assertThat(drawing.shapes(Shape.Dot.class))
        .hasSize(2000)
        .allMatch(dot -> dot.x() > 0 && dot.x() < 600 && dot.y() > 0 && dot.y() < 150);
    assertThat(drawing.shapes(Shape.Text.class)).noneMatch(text -> text.text().contains("moto"));
  }

  @Test
  void aMotoWithoutLapsHasNoColumn() {
    assertThatThrownBy(() -> moto("a")).isInstanceOf(IllegalArgumentException.class);
  }
}
