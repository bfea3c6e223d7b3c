package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import rutbook.units.Numerals;

/**
 * Laps as marks, one column for each moto, from its first lap to its last: filled blue dots on the
 * first side, hollow ochre diamonds on the second, and a line at each moto's mean, so that drift
 * within a moto and noise between motos are both seen.
 */
public final class LapDots {
  private static final double LEFT = 46;
  private static final double EDGE = 10;
  private static final double BOTTOM = 22;
  private static final double TEXT = 11;
  private static final double COLUMN = 0.7;

  /**
   * A moto.
   *
   * @param name written under its column
   * @param seconds one or more laps
   */
  public record Column(String name, List<Double> seconds) {
    public Column {
      seconds = List.copyOf(seconds);
      if (seconds.isEmpty()) {
        throw new IllegalArgumentException("no laps in " + name);
      }
    }

    double mean() {
      return seconds.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }
  }

  private final Axis up;
  private final double width;
  private final double height;
  private final List<Shape> shapes = new ArrayList<>();

  private LapDots(Axis up, double width, double height) {
    this.up = up;
    this.width = width;
    this.height = height;
  }

  /**
   * The laps of both sides, one column or more.
   *
   * @param title what the laps are in, such as "s"
   * @param numerals of the numbers beside its ticks
   */
  public static Drawing of(
      List<Column> first,
      List<Column> second,
      String title,
      Numerals numerals,
      double width,
      double height) {
    List<Column> all = new ArrayList<>(first);
    all.addAll(second);
    List<Double> laps = all.stream().flatMap(column -> column.seconds().stream()).toList();
    double least = laps.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double most = laps.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    Axis up = Axis.around(title, least - 0.1, most + 0.1, numerals);
    LapDots dots = new LapDots(up, width, height);
    dots.grid();
    for (int i = 0; i < all.size(); i++) {
      dots.column(all.get(i), i, all.size(), i < first.size());
    }
    return new Drawing(width, height, dots.shapes);
  }

  private double y(double seconds) {
    return height - BOTTOM - up.share(seconds) * (height - BOTTOM - EDGE - TEXT);
  }

  private void grid() {
    int fit = (int) Math.max(2, (height - BOTTOM) / 28);
    List<BigDecimal> ticks = up.ticks(fit);
    List<String> labels = up.labels(ticks);
    for (int i = 0; i < ticks.size(); i++) {
      double level = y(ticks.get(i).doubleValue());
      shapes.add(new Shape.Line(LEFT, level, width - EDGE, level, Ink.HAIR, 1));
      text(LEFT - 6, level + 4, labels.get(i), Shape.Anchor.END, Ink.SOFT);
    }
    text(LEFT - 6, TEXT, up.title(), Shape.Anchor.END, Ink.SOFT);
  }

  private void column(Column column, int place, int columns, boolean first) {
    double wide = (width - LEFT - EDGE) / columns;
    double middle = LEFT + (place + 0.5) * wide;
    double reach = Math.min(wide * COLUMN, 120) / 2;
    Ink ink = first ? Ink.BLUE : Ink.OCHRE;
    double mean = y(column.mean());
    shapes.add(new Shape.Line(middle - reach - 6, mean, middle + reach + 6, mean, ink, 1.5));
    List<Double> laps = column.seconds();
    for (int i = 0; i < laps.size(); i++) {
      double share = laps.size() == 1 ? 0.5 : i / (double) (laps.size() - 1);
      double x = middle + (2 * share - 1) * reach;
      shapes.add(
          first
              ? new Shape.Dot(x, y(laps.get(i)), 3.5, ink, true)
              : ComparedRuler.diamond(x, y(laps.get(i)), 0.75));
    }
    if (TextWidth.of(column.name(), TEXT) < wide) {
      text(middle, height - 6, column.name(), Shape.Anchor.MIDDLE, Ink.INK);
    }
  }

  private void text(double x, double y, String said, Shape.Anchor anchor, Ink ink) {
    shapes.add(new Shape.Text(x, y, said, anchor, TEXT, ink, false));
  }
}
