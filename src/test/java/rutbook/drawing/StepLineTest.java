package rutbook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import rutbook.drawing.StepLine.Mark;
import rutbook.drawing.StepLine.MarkKind;
import rutbook.drawing.StepLine.Season;
import rutbook.drawing.StepLine.Step;
import rutbook.drawing.StepLine.Tick;
import rutbook.units.Numerals;

/** A setting over time: level until it is moved, then upright. */
class StepLineTest {
  private static final double WIDTH = 400;
  private static final double HEIGHT = 160;

  private static StepLine line(List<Step> steps, Mark... marks) {
    return new StepLine(
        new Season(steps, List.of(marks), List.of(), 100, "mm", Numerals.POINT), WIDTH, HEIGHT);
  }

  private static Shape.Polyline drawn(StepLine line) {
    return line.drawing().shapes(Shape.Polyline.class).get(0);
  }

  @Test
  void aValueHoldsUntilItIsMovedAndTheLastToTheEnd() {
    List<Shape.Point> points = drawn(line(List.of(new Step(0, 5), new Step(50, 3)))).points();
    assertThat(points).hasSize(4);
    assertThat(points.get(1).y()).isEqualTo(points.get(0).y());
    assertThat(points.get(2).x()).isEqualTo(points.get(1).x());
    assertThat(points.get(2).y()).isGreaterThan(points.get(1).y());
    assertThat(points.get(3).y()).isEqualTo(points.get(2).y());
    assertThat(points.get(1).x() - points.get(0).x())
        .isCloseTo(points.get(3).x() - points.get(2).x(), within(1e-9));
  }

  @Test
  void oneReadingIsALevelLine() {
    List<Shape.Point> points = drawn(line(List.of(new Step(0, 5)))).points();
    assertThat(points).hasSize(2);
    assertThat(points.get(0).y()).isEqualTo(points.get(1).y());
  }

  /** As a rider says turns: never "2.2". */
  @Test
  void turnsAreWrittenInHalvesAndQuarters() {
    for (double height : new double[] {92, HEIGHT, 260}) {
      List<Step> steps = List.of(new Step(0, 1.75), new Step(50, 2.25));
      Drawing drawing =
          new StepLine(
                  new Season(steps, List.of(), List.of(), 100, "turns", new Numerals(','), true),
                  WIDTH,
                  height)
              .drawing();
      List<String> numbers =
          drawing.shapes(Shape.Text.class).stream()
              .map(Shape.Text::text)
              .filter(text -> !text.equals("turns"))
              .toList();
      assertThat(numbers).hasSizeGreaterThan(1).isSubsetOf("1½", "1¾", "2", "2¼", "2½");
    }
  }

  @Test
  void nothingIsNoLine() {
    assertThatThrownBy(() -> line(List.of())).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void eachKindOfMarkHasAShapeOfItsOwn() {
    List<Step> steps = List.of(new Step(0, 5), new Step(50, 3));
    Drawing rebuild = line(steps, new Mark(20, MarkKind.REBUILD, Double.NaN)).drawing();
    Drawing sheet = line(steps, new Mark(20, MarkKind.SHEET, Double.NaN)).drawing();
    Drawing baseline = line(steps, new Mark(20, MarkKind.BASELINE, 4)).drawing();
    Shape.Box square = rebuild.shapes(Shape.Box.class).get(0);
    Shape.Box bar = sheet.shapes(Shape.Box.class).get(0);
    assertThat(square.width()).isEqualTo(square.height());
    assertThat(bar.width()).isGreaterThan(2 * bar.height());
    assertThat(baseline.shapes(Shape.Polygon.class)).hasSize(1);
    assertThat(baseline.shapes(Shape.Box.class)).isEmpty();
  }

  @Test
  void aBaselineThatDoesNotNameTheSettingIsNotDrawn() {
    Drawing drawing =
        line(List.of(new Step(0, 5)), new Mark(20, MarkKind.BASELINE, Double.NaN)).drawing();
    assertThat(drawing.shapes(Shape.Polygon.class)).isEmpty();
  }

  @Test
  void monthsThatHaveNoRoomAreLeftOutAndNoneOverlap() {
    List<Tick> ticks = IntStream.range(0, 100).mapToObj(day -> new Tick(day, "Sept")).toList();
    Drawing drawing =
        new StepLine(
                new Season(List.of(new Step(0, 5)), List.of(), ticks, 100, "mm", Numerals.POINT),
                WIDTH,
                HEIGHT)
            .drawing();
    List<Shape.Text> names =
        drawing.shapes(Shape.Text.class).stream()
            .filter(text -> text.text().equals("Sept"))
            .toList();
    assertThat(names).hasSizeBetween(5, 20);
    for (int i = 1; i < names.size(); i++) {
      assertThat(names.get(i).x())
          .isGreaterThan(names.get(i - 1).x() + TextWidth.of("Sept", names.get(i).size()));
    }
  }

  @Property(tries = 200)
  void everythingLiesInsideAndEveryStepIsFoundWhereItIsDrawn(
      @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = -50, max = 500) Double> values,
      @ForAll @IntRange(min = 240, max = 2000) int width) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      steps.add(new Step(3 * i, values.get(i)));
    }
    StepLine line =
        new StepLine(
            new Season(steps, List.of(), List.of(), 3 * values.size(), "mm", Numerals.POINT),
            width,
            HEIGHT);
    for (Shape.Point point : drawn(line).points()) {
      assertThat(point.x()).isBetween(0.0, (double) width);
      assertThat(point.y()).isBetween(0.0, HEIGHT);
    }
    for (int i = 0; i < steps.size(); i++) {
      Shape.Dot ring = line.pointer(i).shapes(Shape.Dot.class).get(0);
      assertThat(line.nearest(ring.x())).isEqualTo(i);
    }
  }

  @Test
  void tenThousandStepsAreALineWithoutDots() {
    List<Step> steps = IntStream.range(0, 10_000).mapToObj(i -> new Step(i, i % 20)).toList();
    Drawing drawing =
        new StepLine(
                new Season(steps, List.of(), List.of(), 10_000, "mm", Numerals.POINT),
                WIDTH,
                HEIGHT)
            .drawing();
    assertThat(drawing.shapes(Shape.Dot.class)).isEmpty();
    assertThat(drawing.shapes(Shape.Polyline.class)).hasSize(1);
  }
}
