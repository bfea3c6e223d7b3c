package rutbook.drawing;

import java.util.ArrayList;
import java.util.List;
import rutbook.physics.OilLine;
import rutbook.units.Amount;
import rutbook.units.Temperature;
import rutbook.units.Unit;

/** Viscosity of oils against temperature, from 0 to 100 °C, in mm²/s by powers. */
public final class OilChart {
  private static final int LEAST = 0;
  private static final int MOST = 100;
  private static final int STEP = 2;
  private static final double ZERO = 273.15;

  /**
   * An oil with its name.
   *
   * @param inFork whether it is the one in the fork
   */
  public record Line(String name, OilLine line, boolean inFork) {}

  private OilChart() {}

  /**
   * The oils over each other.
   *
   * @param oils one or more
   * @param riding how warm the oil is when ridden
   * @param temperature unit of the axis
   */
  public static Chart of(List<Line> oils, Amount riding, ChartText text, Unit temperature) {
    List<Chart.Curve> curves = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Line oil : oils) {
      List<Chart.Place> places = places(oil.line(), temperature);
      least = Math.min(least, places.get(places.size() - 1).up());
      most = Math.max(most, places.get(0).up());
      curves.add(
          new Chart.Curve(
              oil.name(),
              places,
              oil.inFork() ? Ink.BLUE : Ink.SOFT,
              oil.inFork() ? Chart.Weight.STRONG : Chart.Weight.PLAIN));
    }
    return new Chart(
        Axis.even(
            text.name(ChartName.TEMPERATURE) + ", " + temperature.symbol(),
            shown(LEAST, temperature),
            shown(MOST, temperature),
            text.numerals()),
        new Axis(
            text.name(ChartName.VISCOSITY) + ", mm²/s",
            below(least),
            above(most),
            Axis.Kind.POWERS,
            text.numerals()),
        List.of(),
        curves,
        List.of(
            new Chart.Mark(text.name(ChartName.RIDING), shown(riding.si() - ZERO, temperature))));
  }

  private static List<Chart.Place> places(OilLine line, Unit temperature) {
    List<Chart.Place> places = new ArrayList<>();
    for (int celsius = LEAST; celsius <= MOST; celsius += STEP) {
      places.add(new Chart.Place(shown(celsius, temperature), line.viscosityAt(celsius + ZERO)));
    }
    return places;
  }

  private static double shown(double celsius, Unit temperature) {
    return temperature == Temperature.FAHRENHEIT
        ? celsius * 1.8 + 32
        : temperature == Temperature.KELVIN ? celsius + ZERO : celsius;
  }

  /** 1, 2 or 5 times a power of ten below a number. */
  private static double below(double number) {
    double power = Math.pow(10, Math.floor(Math.log10(number)));
    double part = number / power;
    return (part >= 5 ? 5 : part >= 2 ? 2 : 1) * power;
  }

  private static double above(double number) {
    double power = Math.pow(10, Math.floor(Math.log10(number)));
    double part = number / power;
    return (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10) * power * (1 + 1e-12);
  }
}
