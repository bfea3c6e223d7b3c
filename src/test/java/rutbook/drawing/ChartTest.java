package rutbook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import rutbook.physics.Atmosphere;
import rutbook.physics.ForkCurve;
import rutbook.physics.ForkLeg;
import rutbook.physics.OilLine;
import rutbook.physics.OpenBath;
import rutbook.physics.TrappedAir;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Numerals;
import rutbook.units.Temperature;

class ChartTest {
  private static final Chart.Curve LINE =
      new Chart.Curve(
          "line",
          List.of(new Chart.Place(0, 0), new Chart.Place(100, 50), new Chart.Place(200, 250)),
          Ink.BLUE,
          Chart.Weight.STRONG);
  private static final Chart.Curve SHORT =
      new Chart.Curve(
          "short",
          List.of(new Chart.Place(50, 10), new Chart.Place(150, 10)),
          Ink.SOFT,
          Chart.Weight.PLAIN);

  private static final ChartText TEXT = new ChartText(ChartTest::name, Numerals.POINT);

  private static Chart chart(Chart.Curve... curves) {
    return new Chart(
        Axis.even("Travel, mm", 0, 200, Numerals.POINT),
        Axis.fromZero("Force, N", 250, Numerals.POINT),
        List.of(new Chart.Band("band", LINE.places(), LINE.places())),
        List.of(curves),
        List.of(new Chart.Mark("sag", 70)));
  }

  /** The fork of the outside checks (rows b.fork): 48 mm, 300 mm of travel. */
  static ForkCurve fork(double gap) {
    OpenBath bath =
        new OpenBath(0.048, 0.048, gap, 0, 0.3, TrappedAir.bledAt(Atmosphere.SEA_LEVEL));
    ForkLeg leg = new ForkLeg(4600, 0, Optional.of(bath.spring()));
    return new ForkCurve(List.of(leg, leg), Optional.empty(), 0.3);
  }

  @Test
  void underThePointerIsWhatTheCurvesHaveThere() {
    assertThat(chart(LINE, SHORT).at(125))
        .isEqualTo(
            new Chart.Reading(
                125,
                List.of(
                    new Chart.Value("line", Ink.BLUE, 100),
                    new Chart.Value("short", Ink.SOFT, 10))));
    assertThat(chart(LINE, SHORT).at(20).values())
        .as("a curve that does not reach there is left out")
        .containsExactly(new Chart.Value("line", Ink.BLUE, 10));
    assertThat(chart(LINE).at(-5).across()).as("held within the axis").isZero();
    assertThat(chart(LINE).at(999).values().get(0).up()).isEqualTo(250);
  }

  @Test
  void aPixelAndItsNumberAreInverse() {
    ChartLayout layout = new ChartLayout(chart(LINE), new ChartLayout.Size(600, 300, 1));
    for (double across = 0; across <= 200; across += 12.5) {
      assertThat(layout.across(layout.x(across))).isCloseTo(across, within(1e-9));
    }
    assertThat(layout.under(layout.x(125)).values().get(0).up()).isCloseTo(100, within(1e-6));
    assertThat(layout.across(-50)).isZero();
  }

  @Test
  void theTableHoldsTheSameValuesAsTheCurve() {
    List<Chart.Reading> table = chart(LINE).table(5);
    assertThat(table)
        .extracting(Chart.Reading::across)
        .containsExactly(0.0, 50.0, 100.0, 150.0, 200.0);
    assertThat(table)
        .extracting(row -> row.values().get(0).up())
        .containsExactly(0.0, 25.0, 50.0, 150.0, 250.0);
    assertThatThrownBy(() -> chart(LINE).table(1)).hasMessageContaining("1 rows");
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    assertThatThrownBy(() -> new Chart.Place(Double.NaN, 0)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> Axis.even("x", 2, 2, Numerals.POINT)).hasMessageContaining("2.0");
    assertThatThrownBy(() -> new Axis("x", 0, 2, Axis.Kind.POWERS, Numerals.POINT))
        .hasMessageContaining("0.0");
    assertThatThrownBy(
            () ->
                new Chart.Curve(
                    "back",
                    List.of(new Chart.Place(1, 0), new Chart.Place(1, 1)),
                    Ink.INK,
                    Chart.Weight.PLAIN))
        .hasMessageContaining("back turns back at 1.0");
    assertThatThrownBy(() -> new ChartLayout.Size(100, 300, 1)).hasMessageContaining("100.0");
  }

  @Property(tries = 500, seed = "31")
  void ticksAreRoundInsideAndNeverTooMany(
      @ForAll @Scale(3) @DoubleRange(min = -1000, max = 1000) double least,
      @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 10000) double span,
      @ForAll @IntRange(min = 2, max = 12) int atMost) {
    Axis axis = Axis.even("x", least, least + span, Numerals.POINT);
    List<BigDecimal> ticks = axis.ticks(atMost);
    assertThat(ticks).hasSizeBetween(2, Math.max(5, atMost));
    assertThat(ticks).allMatch(tick -> axis.holds(tick.doubleValue()));
    assertThat(axis.labels(ticks)).allMatch(label -> label.length() <= 9).doesNotHaveDuplicates();
    assertThat(Axis.fromZero("x", span, Numerals.POINT).most())
        .isBetween(span * (1 - 1e-9), span * 2.0 + 1e-9);
    Axis around = Axis.around("x", least, least + span, Numerals.POINT);
    assertThat(around.least()).isLessThanOrEqualTo(least + 1e-6);
    assertThat(around.most()).isGreaterThanOrEqualTo(least + span - 1e-6);
  }

  @Property(tries = 500, seed = "32")
  void namesAreKeptApartAndInside(
      @ForAll @Size(min = 1, max = 8)
          List<@Scale(3) @DoubleRange(min = -50, max = 350) Double> wanted) {
    double[] sorted = wanted.stream().mapToDouble(each -> each).sorted().toArray();
    double[] places = Apart.places(sorted, 16, 0, 300);
    for (int i = 1; i < places.length; i++) {
      assertThat(places[i] - places[i - 1]).isGreaterThanOrEqualTo(16 - 1e-9);
    }
    if (places.length > 1) {
      assertThat(places[0]).isGreaterThanOrEqualTo(-1e-9);
      assertThat(places[places.length - 1]).isLessThanOrEqualTo(300 + 1e-9);
    }
  }

  private record Frame(String text, double left, double right, double top, double bottom) {
    boolean over(Frame other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  private static List<Frame> frames(Drawing drawing) {
    List<Frame> frames = new ArrayList<>();
    for (Shape.Text text : drawing.shapes(Shape.Text.class)) {
      double wide = TextWidth.of(text.text(), text.size());
      double left =
          switch (text.anchor()) {
            case START -> text.x();
            case MIDDLE -> text.x() - wide / 2;
            case END -> text.x() - wide;
          };
      frames.add(
          new Frame(
              text.text(),
              left,
              left + wide,
              text.y() - 0.75 * text.size(),
              text.y() + 0.2 * text.size()));
    }
    return frames;
  }

  private static void holdsTogether(Chart chart, ChartLayout.Size size) {
    Drawing drawing = ChartDrawing.of(chart, size);
    List<Frame> frames = frames(drawing);
    for (int i = 0; i < frames.size(); i++) {
      Frame frame = frames.get(i);
      assertThat(frame.left()).as("%s of %s", frame, size).isGreaterThanOrEqualTo(-0.01);
      assertThat(frame.right())
          .as("%s of %s", frame, size)
          .isLessThanOrEqualTo(size.width() + 0.01);
      assertThat(frame.top()).as("%s of %s", frame, size).isGreaterThanOrEqualTo(-0.01);
      assertThat(frame.bottom())
          .as("%s of %s", frame, size)
          .isLessThanOrEqualTo(size.height() + 0.01);
      for (int k = i + 1; k < frames.size(); k++) {
        assertThat(frame.over(frames.get(k)))
            .as("%s over %s in %s", frame, frames.get(k), size)
            .isFalse();
      }
    }
    for (Shape.Polyline line : drawing.shapes(Shape.Polyline.class)) {
      for (Shape.Point point : line.points()) {
        assertThat(point.x()).isBetween(0.0, size.width());
        assertThat(point.y()).isBetween(0.0, size.height());
      }
    }
  }

  private static String name(ChartName name) {
    return name == ChartName.BAND ? "slow (n = 1.0) to fast (n = 1.4)" : name.name().toLowerCase();
  }

  private static Chart forkChart(Length unit) {
    return new ForkChart(TEXT, unit)
        .of(
            new ForkChart.Fill("present, 105 mm", fork(0.105)),
            List.of(
                new ForkChart.Fill("least, 130 mm", fork(0.13)),
                new ForkChart.Fill("nominal, 106 mm", fork(0.106)),
                new ForkChart.Fill("most, 80 mm", fork(0.08))),
            Optional.of(Amount.of(72, Length.MILLIMETRE)));
  }

  private static Chart oilChart() {
    return OilChart.of(
        List.of(
            new OilChart.Line("thin", OilLine.of(13.1, 3.2), false),
            new OilChart.Line("summer", OilLine.of(18.6, 4.4), true)),
        Amount.of(50, Temperature.CELSIUS),
        TEXT,
        Temperature.FAHRENHEIT);
  }

  @Property(tries = 150, seed = "33")
  void nothingWrittenOverlapsOrLeavesThePicture(
      @ForAll @IntRange(min = 300, max = 1600) int width,
      @ForAll @IntRange(min = 260, max = 1000) int height,
      @ForAll @Scale(2) @DoubleRange(min = 0.8, max = 1.3) double scale) {
    ChartLayout.Size size = new ChartLayout.Size(width, height, scale);
    if (width < 300 * scale || height < 260 * scale) {
      return;
    }
    holdsTogether(forkChart(Length.MILLIMETRE), size);
    holdsTogether(forkChart(Length.INCH), size);
    holdsTogether(oilChart(), size);
    holdsTogether(chart(LINE), size);
    holdsTogether(
        new ForkChart(TEXT, Length.MILLIMETRE)
            .compared(
                new ForkChart.Fill("17 May 2026, moto 2", fork(0.1)),
                new ForkChart.Fill("baseline of 1 March 2026", fork(0.1))),
        size);
  }

  /** The figures of the design, read off the chart as a mechanic would: 10 mm more oil. */
  @Test
  void tenMillimetresMoreOilAreSeenAtTheEndAndHardlyInTheMiddle() {
    Chart chart =
        new ForkChart(TEXT, Length.MILLIMETRE)
            .compared(
                new ForkChart.Fill("110 mm", fork(0.11)), new ForkChart.Fill("100 mm", fork(0.10)));
    double coils = 2 * 4600;
    double middle = air(chart, 150, 1, coils) / air(chart, 150, 0, coils) - 1;
    double end = air(chart, 300, 1, coils) / air(chart, 300, 0, coils) - 1;
    assertThat(middle).isBetween(0.04, 0.05);
    assertThat(end).isBetween(0.09, 0.14);
  }

  private static double air(Chart chart, double stroke, int curve, double coils) {
    return chart.at(stroke).values().get(curve).up() - coils * stroke / 1000;
  }

  @Test
  void thePointerStandsOnEveryCurve() {
    ChartLayout layout =
        new ChartLayout(forkChart(Length.MILLIMETRE), new ChartLayout.Size(760, 430, 1));
    Chart.Reading reading = layout.under(layout.x(200));
    Drawing pointer = ChartDrawing.pointer(layout, reading);
    assertThat(pointer.shapes(Shape.Dot.class)).hasSize(5);
    assertThat(pointer.shapes(Shape.Dot.class))
        .allSatisfy(dot -> assertThat(dot.x()).isCloseTo(layout.x(200), within(1e-9)));
  }

  @Test
  void theBandHoldsThePresentFillBetweenSlowAndFast() {
    Chart chart = forkChart(Length.MILLIMETRE);
    Chart.Band band = chart.bands().get(0);
    Chart.Curve present = chart.curves().get(4);
    for (int i = 1; i < present.places().size(); i++) {
      assertThat(present.places().get(i).up())
          .isBetween(band.lower().get(i).up(), band.upper().get(i).up());
    }
  }
}
