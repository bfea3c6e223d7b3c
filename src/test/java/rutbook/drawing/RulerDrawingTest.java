package rutbook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.floz;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.turns;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.notebook.Bench;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Side;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Numerals;
import rutbook.units.SpringRate;
import rutbook.units.Volume;

class RulerDrawingTest {
  private static Ruler ruler(
      Amount least, Amount most, Amount step, boolean stops, Amount reading) {
    return new Ruler(
        new Range(least, most),
        step,
        stops,
        Optional.of(reading),
        Optional.empty(),
        Ruler.Marks.NONE);
  }

  private static Ruler halfTurns() {
    return ruler(turns("0"), turns("4"), turns("0.5"), true, turns("1.5"));
  }

  private static Ruler fortyClicks() {
    return ruler(clicks(0), clicks(40), clicks(1), true, clicks(12));
  }

  private static Ruler oil() {
    return ruler(ml("250"), ml("420"), ml("5"), false, ml("335"));
  }

  static Stream<Arguments> rulersAndWidths() {
    return Stream.of(halfTurns(), fortyClicks(), oil(), oil().in(Display.US))
        .flatMap(
            ruler ->
                Stream.of(
                    Arguments.of(ruler, RulerDrawing.Size.bare(84, 1)),
                    Arguments.of(ruler, RulerDrawing.Size.bare(120, 1)),
                    Arguments.of(ruler, RulerDrawing.Size.numbered(120, Numerals.POINT, 1)),
                    Arguments.of(ruler, RulerDrawing.Size.numbered(900, Numerals.POINT, 1.5))));
  }

  @ParameterizedTest
  @MethodSource("rulersAndWidths")
  void everyShapeLiesInsideTheDrawing(Ruler plain, RulerDrawing.Size size) {
    Amount least = plain.limits().least();
    Amount most = plain.limits().most();
    Ruler full =
        plain
            .withReading(least)
            .withBaseline(Reading.of(most))
            .withPrevious(Reading.of(least))
            .withProposal(Reading.of(most));
    Drawing drawing = RulerDrawing.of(full, size);
    for (Shape.Dot dot : drawing.shapes(Shape.Dot.class)) {
      assertThat(dot.x() - dot.radius()).isGreaterThanOrEqualTo(0);
      assertThat(dot.x() + dot.radius()).isLessThanOrEqualTo(size.width());
      assertThat(dot.y() - dot.radius()).isGreaterThanOrEqualTo(0);
    }
    for (Shape.Polygon polygon : drawing.shapes(Shape.Polygon.class)) {
      assertThat(polygon.points())
          .allSatisfy(
              point -> {
                assertThat(point.x()).isBetween(0.0, size.width());
                assertThat(point.y()).isBetween(0.0, size.height());
              });
    }
    for (Shape.Text text : drawing.shapes(Shape.Text.class)) {
      double half = text.text().length() * text.size() * 0.25;
      assertThat(text.x() - half).isGreaterThanOrEqualTo(0);
      assertThat(text.x() + half).isLessThanOrEqualTo(size.width());
      assertThat(text.y()).isLessThanOrEqualTo(size.height());
    }
  }

  @ParameterizedTest
  @MethodSource("rulersAndWidths")
  void ticksAreFarEnoughApartToBeSeenAndThereAreAtLeastThree(Ruler ruler, RulerDrawing.Size size) {
    double[] x = ticks(RulerDrawing.of(ruler, size));
    assertThat(x.length).isGreaterThanOrEqualTo(3);
    for (int i = 1; i < x.length; i++) {
      assertThat(x[i] - x[i - 1]).isGreaterThanOrEqualTo(3.5);
    }
  }

  @ParameterizedTest
  @MethodSource("rulersAndWidths")
  void numbersDoNotTouch(Ruler ruler, RulerDrawing.Size size) {
    List<Shape.Text> texts =
        RulerDrawing.of(ruler, size).shapes(Shape.Text.class).stream()
            .sorted((a, b) -> Double.compare(a.x(), b.x()))
            .toList();
    for (int i = 1; i < texts.size(); i++) {
      Shape.Text a = texts.get(i - 1);
      Shape.Text b = texts.get(i);
      double half = (a.text().length() + b.text().length()) * a.size() * 0.25;
      assertThat(b.x() - a.x()).as(a.text() + " " + b.text()).isGreaterThan(half + 4);
    }
  }

  @Test
  void aClickHasATickOfItsOwnWhereThereIsRoom() {
    assertThat(
            ticks(
                RulerDrawing.of(
                    fortyClicks(), RulerDrawing.Size.numbered(900, Numerals.POINT, 1.5))))
        .hasSize(41);
    assertThat(ticks(RulerDrawing.of(halfTurns(), RulerDrawing.Size.bare(120, 1)))).hasSize(9);
  }

  @Test
  void bothLimitsAndRoundNumbersAreWritten() {
    assertThat(labels(oil(), 900)).startsWith("250").endsWith("420").contains("300", "350", "400");
    assertThat(labels(halfTurns(), 900))
        .containsExactly("0", "½", "1", "1½", "2", "2½", "3", "3½", "4");
    assertThat(labels(fortyClicks(), 120)).containsExactly("0", "20", "40");
  }

  @Test
  void numbersHaveTheSignOfTheLanguageAndTurnsTheirFractions() {
    Numerals comma = new Numerals(',');
    assertThat(labels(oil().in(Display.US), 900, comma)).contains("8,46", "14,2", "10");
    assertThat(labels(halfTurns(), 900, comma)).containsExactlyElementsOf(labels(halfTurns(), 900));
  }

  @Test
  void theReadingIsAFilledDotInItsPlace() {
    Drawing drawing = RulerDrawing.of(fortyClicks(), RulerDrawing.Size.bare(112, 1));
    assertThat(drawing.shapes(Shape.Dot.class)).hasSize(1);
    Shape.Dot dot = drawing.shapes(Shape.Dot.class).get(0);
    assertThat(dot.filled()).isTrue();
    assertThat(dot.x()).isCloseTo(6 + 12 * 100 / 40.0, within(1e-9));
  }

  @Test
  void theOtherLegIsABrickRingAndOnlyWhereItDiffers() {
    Ruler differing = fork(Reading.of(clicks(12), clicks(14)));
    assertThat(rings(differing)).extracting(Shape.Dot::ink).containsExactly(Ink.BRICK);
    assertThat(rings(fork(Reading.bothLegs(clicks(12))))).isEmpty();
    assertThat(
            Ruler.ofLeg(
                    Bench.sheet(),
                    Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow(),
                    Reading.of(clicks(12), clicks(14)),
                    Side.RIGHT)
                .reading())
        .contains(clicks(14));
  }

  private static Ruler fork(Reading reading) {
    return Ruler.of(
        Bench.sheet(), Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow(), reading);
  }

  @Test
  void thePreviousReadingShowsOnlyWhereItIsAnother() {
    assertThat(rings(fortyClicks().withPrevious(Reading.of(clicks(10))))).hasSize(1);
    assertThat(rings(fortyClicks().withPrevious(Reading.of(clicks(12))))).isEmpty();
  }

  @Test
  void aProposalIsAnArrowFromTheReadingThatPointsItsWay() {
    Drawing drawing =
        RulerDrawing.of(
            fortyClicks().withProposal(Reading.of(clicks(10))), RulerDrawing.Size.bare(412, 1));
    Shape.Polygon head = drawing.shapes(Shape.Polygon.class).get(0);
    assertThat(head.ink()).isEqualTo(Ink.OCHRE);
    assertThat(head.points().get(0).x()).isCloseTo(106, within(1e-9));
    assertThat(head.points().get(1).x()).isGreaterThan(106);
  }

  @Test
  void adjustersWithStopsAreGreyNearThemAndFillsAreNot() {
    Drawing clicks = RulerDrawing.of(fortyClicks(), RulerDrawing.Size.bare(412, 1));
    assertThat(clicks.shapes(Shape.Box.class))
        .extracting(Shape.Box::x, Shape.Box::width)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(6.0, 20.0),
            org.assertj.core.groups.Tuple.tuple(386.0, 20.0));
    assertThat(RulerDrawing.of(oil(), RulerDrawing.Size.bare(412, 1)).shapes(Shape.Box.class))
        .isEmpty();
  }

  @Test
  void whatWasFoundBeyondTheLimitsHasItsPlaceAndABrickLineToIt() {
    Drawing drawing =
        RulerDrawing.of(fortyClicks().withReading(clicks(44)), RulerDrawing.Size.bare(452, 1));
    assertThat(drawing.shapes(Shape.Line.class))
        .filteredOn(line -> line.ink() == Ink.BRICK)
        .hasSize(1);
    assertThat(drawing.shapes(Shape.Dot.class).get(0).x()).isCloseTo(446, within(1e-9));
  }

  @Test
  void aPlaceOnTheLineIsTheNearestStepAndHeldAtTheLimits() {
    RulerScale scale = new RulerScale(oil(), 0, 170);
    assertThat(scale.at(83)).isEqualTo(ml("335"));
    assertThat(scale.at(-50)).isEqualTo(ml("250"));
    assertThat(scale.at(500)).isEqualTo(ml("420"));
  }

  @Test
  void stepsGoToTheNextTickAndStopAtTheLimit() {
    RulerScale scale = new RulerScale(oil(), 0, 170);
    assertThat(scale.stepped(ml("333"), 1)).isEqualTo(ml("335"));
    assertThat(scale.stepped(ml("333"), -1)).isEqualTo(ml("330"));
    assertThat(scale.stepped(ml("418"), 2)).isEqualTo(ml("420"));
    assertThat(new RulerScale(halfTurns(), 0, 100).stepped(turns("4"), 1)).isEqualTo(turns("4"));
  }

  @Test
  void aFillTypedInOuncesHasItsPlaceAmongMillilitres() {
    RulerScale scale = new RulerScale(oil(), 0, 170);
    assertThat(scale.x(floz("10"))).isCloseTo(45.735, within(0.001)); // 295.735 mL
  }

  @Test
  void oneAllowedAmountStillHasALine() {
    Ruler only = ruler(clicks(3), clicks(3), clicks(1), true, clicks(3));
    assertThat(RulerDrawing.of(only, RulerDrawing.Size.numbered(120, Numerals.POINT, 1)).shapes())
        .isNotEmpty();
  }

  private static List<Shape.Dot> rings(Ruler ruler) {
    return RulerDrawing.of(ruler, RulerDrawing.Size.bare(200, 1)).shapes(Shape.Dot.class).stream()
        .filter(dot -> !dot.filled())
        .toList();
  }

  private static List<String> labels(Ruler ruler, double width) {
    return labels(ruler, width, Numerals.POINT);
  }

  private static List<String> labels(Ruler ruler, double width, Numerals numerals) {
    return RulerDrawing.of(ruler, RulerDrawing.Size.numbered(width, numerals, 1))
        .shapes(Shape.Text.class)
        .stream()
        .sorted((a, b) -> Double.compare(a.x(), b.x()))
        .map(Shape.Text::text)
        .toList();
  }

  private static double[] ticks(Drawing drawing) {
    return drawing.shapes(Shape.Line.class).stream()
        .filter(line -> line.x1() == line.x2())
        .mapToDouble(Shape.Line::x1)
        .sorted()
        .distinct()
        .toArray();
  }

  @Test
  void aRulerInTheRidersUnitHasRoundStepsThereAndItsLimitsWhereTheyWere() {
    Ruler us = oil().in(Display.US);
    assertThat(us.limits()).isEqualTo(oil().limits());
    // 5 mL are 0.169 US fl oz: the round number nearest by ratio is 0.2.
    assertThat(us.step()).isEqualTo(Amount.of("0.2", Volume.US_FLUID_OUNCE));
    RulerScale scale = new RulerScale(us, 0, 100);
    assertThat(scale.at(50)).isEqualTo(floz("11.4"));
    assertThat(scale.at(0)).isEqualTo(ml("250"));
    assertThat(scale.stepped(floz("14.2"), 1)).isEqualTo(ml("420"));
    assertThat(oil().in(Display.METRIC)).isEqualTo(oil());
    assertThat(fortyClicks().in(Display.US)).isEqualTo(fortyClicks());
  }

  /** 250 mL are 8.4535 US fl oz and 420 mL 14.2019: neither number may lie outside. */
  @Test
  void limitsWrittenInTheRidersUnitAreRoundedInwards() {
    Drawing drawing =
        RulerDrawing.of(oil().in(Display.US), RulerDrawing.Size.numbered(900, Numerals.POINT, 1));
    assertThat(drawing.shapes(Shape.Text.class))
        .extracting(Shape.Text::text)
        .contains("8.46", "14.2");
  }

  @Test
  void roundStepsAreNearestByRatio() {
    assertThat(Ticks.round(Amount.of("0.571", SpringRate.POUND_FORCE_PER_INCH)).value())
        .isEqualByComparingTo("0.5");
    assertThat(Ticks.round(Amount.of("8.1", SpringRate.POUND_FORCE_PER_INCH)).value())
        .isEqualByComparingTo("10");
    assertThat(Ticks.round(Amount.of(1, SpringRate.POUND_FORCE_PER_INCH)).value())
        .isEqualByComparingTo("1");
  }
}
