package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rutbook.physics.ForkCurve;
import rutbook.physics.ForkPoint;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Unit;

/** Force against travel of a fork: the band between slow and fast, fills, and springs alone. */
public final class ForkChart {
  private static final int POINTS = 101;

  /**
   * A curve with its name.
   *
   * @param name such as "most, 380 mL"
   */
  public record Fill(String name, ForkCurve curve) {}

  private final ChartText text;
  private final Unit length;

  /**
   * @param text what is written on the chart
   * @param length unit of travel
   */
  public ForkChart(ChartText text, Unit length) {
    this.text = text;
    this.length = length;
  }

  /**
   * The fork as it is, with its band and its springs alone, over the other fills.
   *
   * @param others least, nominal and most, as far as there are any
   * @param sag of the front with the rider
   */
  public Chart of(Fill present, List<Fill> others, Optional<Amount> sag) {
    List<Chart.Curve> curves = new ArrayList<>();
    for (Fill fill : others) {
      curves.add(curve(fill.name(), fill.curve(), ForkPoint::line, Ink.SOFT, Chart.Weight.PLAIN));
    }
    curves.add(
        curve(
            text.name(ChartName.SPRINGS),
            present.curve(),
            ForkPoint::coil,
            Ink.SOFT,
            Chart.Weight.DASHED));
    curves.add(
        curve(present.name(), present.curve(), ForkPoint::line, Ink.BLUE, Chart.Weight.STRONG));
    return chart(List.of(band(present.curve())), curves, sag, present.curve().travel());
  }

  /** Two forks over each other, each on its line. */
  public Chart compared(Fill left, Fill right) {
    return chart(
        List.of(),
        List.of(
            curve(left.name(), left.curve(), ForkPoint::line, Ink.BLUE, Chart.Weight.STRONG),
            curve(right.name(), right.curve(), ForkPoint::line, Ink.OCHRE, Chart.Weight.DASHED)),
        Optional.empty(),
        Math.max(left.curve().travel(), right.curve().travel()));
  }

  /**
   * Two fills over each other from a stroke on, where a change of oil can be seen.
   *
   * @param share of the travel at which it begins, at least 0 and below 1
   */
  public Chart ending(Fill baseline, Fill chosen, double share) {
    double travel = chosen.curve().travel();
    double from = share * travel;
    List<Chart.Curve> curves =
        List.of(
            from(from, baseline, Ink.BLUE, Chart.Weight.STRONG),
            from(from, chosen, Ink.OCHRE, Chart.Weight.DASHED));
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Chart.Curve curve : curves) {
      least = Math.min(least, curve.places().get(0).up());
      most = Math.max(most, curve.places().get(curve.places().size() - 1).up());
    }
    return new Chart(
        Axis.even(
            text.name(ChartName.TRAVEL) + ", " + length.symbol(),
            shown(from),
            shown(travel),
            text.numerals()),
        Axis.around(text.name(ChartName.FORCE) + ", N", least, most, text.numerals()),
        List.of(),
        curves,
        List.of());
  }

  private Chart.Curve from(double from, Fill fill, Ink ink, Chart.Weight weight) {
    List<Chart.Place> places =
        fill.curve().points(POINTS).stream()
            .filter(point -> point.stroke() >= from - 1e-9)
            .map(point -> new Chart.Place(shown(point.stroke()), point.line()))
            .toList();
    return new Chart.Curve(fill.name(), places, ink, weight);
  }

  private Chart chart(
      List<Chart.Band> bands, List<Chart.Curve> curves, Optional<Amount> sag, double travel) {
    double most = 0;
    for (Chart.Curve curve : curves) {
      most = Math.max(most, curve.places().get(curve.places().size() - 1).up());
    }
    for (Chart.Band band : bands) {
      most = Math.max(most, band.upper().get(band.upper().size() - 1).up());
    }
    List<Chart.Mark> marks =
        sag
            .map(Amount::si)
            .filter(stroke -> stroke > 0 && stroke < travel)
            .map(stroke -> mark(shown(stroke)))
            .stream()
            .toList();
    return new Chart(
        Axis.even(
            text.name(ChartName.TRAVEL) + ", " + length.symbol(),
            0,
            shown(travel),
            text.numerals()),
        Axis.fromZero(text.name(ChartName.FORCE) + ", N", most, text.numerals()),
        bands,
        curves,
        marks);
  }

  private Chart.Mark mark(double sag) {
    int decimals = length == Length.INCH ? 1 : 0;
    String shown = text.numerals().aligned(BigDecimal.valueOf(sag), decimals);
    return new Chart.Mark(
        text.name(ChartName.FRONT_SAG) + ", " + shown + " " + length.symbol(), sag);
  }

  private Chart.Curve curve(
      String name,
      ForkCurve curve,
      ToDoubleFunction<ForkPoint> force,
      Ink ink,
      Chart.Weight weight) {
    return new Chart.Curve(name, places(curve, force), ink, weight);
  }

  private Chart.Band band(ForkCurve curve) {
    return new Chart.Band(
        text.name(ChartName.BAND), places(curve, ForkPoint::slow), places(curve, ForkPoint::fast));
  }

  private List<Chart.Place> places(ForkCurve curve, ToDoubleFunction<ForkPoint> force) {
    return curve.points(POINTS).stream()
        .map(point -> new Chart.Place(shown(point.stroke()), force.applyAsDouble(point)))
        .toList();
  }

  private double shown(double metres) {
    return length == Length.INCH ? metres / 0.0254 : metres * 1000;
  }
}
