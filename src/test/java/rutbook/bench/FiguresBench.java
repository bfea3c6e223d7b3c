package rutbook.bench;

import java.util.Random;
import java.util.function.DoubleSupplier;
import rutbook.figures.ForkFigures;
import rutbook.figures.OilFigures;
import rutbook.figures.Riding;
import rutbook.figures.SteeringSweep;
import rutbook.notebook.Notebook;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Length;

/**
 * How long a full set of curves of a bike takes once the program is warm: the fork's four fills
 * with bands and reserves, the oils of the shelf from 0 to 100 °C, steering over the clamp.
 */
public final class FiguresBench {
  private static final int ROUNDS = 200;

  private FiguresBench() {}

  public static void main(String[] arguments) {
    Notebook season = Samples.season();
    Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
    Sheet sheet = timeline.bike().latestSheet();
    Riding riding = Riding.of(season.shelf(), timeline);
    DoubleSupplier fork =
        () ->
            ForkFigures.of(sheet, timeline.now(), riding).inOrder().stream()
                .mapToDouble(curve -> curve.drawn().found().orElseThrow().whole().line())
                .sum();
    DoubleSupplier oils =
        () ->
            season.shelf().oils().stream()
                .map(oil -> OilFigures.line(oil).found().orElseThrow())
                .mapToDouble(
                    line -> {
                      double sum = 0;
                      for (int celsius = 0; celsius <= 100; celsius += 2) {
                        sum += line.viscosityAt(celsius + 273.15);
                      }
                      return sum;
                    })
                .sum();
    Amount none = Amount.of(0, Length.MILLIMETRE);
    DoubleSupplier steering =
        () -> SteeringSweep.of(sheet, timeline.now(), none).found().orElseThrow().rows().size();
    report("fork, four fills", fork);
    report("oils of the shelf", oils);
    report("steering over the clamp", steering);
    report(
        "a full set of curves of a bike",
        () -> fork.getAsDouble() + oils.getAsDouble() + steering.getAsDouble());
    reference();
  }

  private static void report(String name, DoubleSupplier work) {
    System.out.printf("%-32s %7.3f ms%n", name, 1e3 * SideBySide.best(ROUNDS, work));
  }

  /** What the machine does in that time: ten thousand powers. */
  private static void reference() {
    Random random = new Random(1);
    double base = 1 + random.nextDouble();
    report(
        "reference: 10 000 powers",
        () -> {
          double sum = 0;
          for (int i = 0; i < 10_000; i++) {
            sum += Math.pow(base + i * 1e-4, 1.3);
          }
          return sum;
        });
    System.out.printf("(%g)%n", SideBySide.kept());
  }
}
