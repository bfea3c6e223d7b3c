package rutbook.drawing;

import java.util.ArrayList;
import java.util.List;
import rutbook.physics.Steering;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Unit;

/** Trail or rake against the height of the fork in its clamps. */
public final class SteeringChart {
  /** One height with how the bike steers there. */
  public record At(Amount tube, Steering steering) {}

  private final List<At> heights;
  private final Amount present;
  private final ChartText text;
  private final Unit length;

  /**
   * @param heights from the least tube to the most, two or more
   * @param present tube above the clamp today
   * @param text what is written on the chart
   * @param length unit of tube and trail
   */
  public SteeringChart(List<At> heights, Amount present, ChartText text, Unit length) {
    this.heights = List.copyOf(heights);
    this.present = present;
    this.text = text;
    this.length = length;
  }

  /** Trail along the ground. */
  public Chart trail() {
    double unit = length == Length.INCH ? 0.0254 : 1e-3;
    List<Chart.Place> places = new ArrayList<>();
    heights.forEach(at -> places.add(place(at, at.steering().trail() / unit)));
    return chart(ChartName.TRAIL, ", " + length.symbol(), places);
  }

  /** Rake from the vertical in degrees. */
  public Chart rake() {
    List<Chart.Place> places = new ArrayList<>();
    heights.forEach(at -> places.add(place(at, Math.toDegrees(at.steering().rake()))));
    return chart(ChartName.RAKE, ", °", places);
  }

  private Chart.Place place(At at, double up) {
    return new Chart.Place(at.tube().doubleIn(length), up);
  }

  private Chart chart(ChartName what, String unit, List<Chart.Place> places) {
    double low = places.stream().mapToDouble(Chart.Place::up).min().orElseThrow();
    double high = places.stream().mapToDouble(Chart.Place::up).max().orElseThrow();
    return new Chart(
        Axis.even(
            text.name(ChartName.TUBE_ABOVE_CLAMP) + ", " + length.symbol(),
            places.get(0).across(),
            places.get(places.size() - 1).across(),
            text.numerals()),
        Axis.around(text.name(what) + unit, low, high, text.numerals()),
        List.of(),
        List.of(new Chart.Curve(text.name(what), places, Ink.BLUE, Chart.Weight.STRONG)),
        List.of(new Chart.Mark(text.name(ChartName.NOW), present.doubleIn(length))));
  }
}
