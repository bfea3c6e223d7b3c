package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Where things of a chart lie in a picture of some size. Curves are named at their right ends where
 * there is room, otherwise in rows under the chart.
 */
public final class ChartLayout {
  /**
   * The size of the picture.
   *
   * @param scale of text and strokes; 1 on screen
   */
  public record Size(double width, double height, double scale) {
    public static final double LEAST_WIDTH = 220;
    public static final double LEAST_HEIGHT = 140;

    public Size {
      boolean large = width >= LEAST_WIDTH * scale && height >= LEAST_HEIGHT * scale;
      if (!large || !(scale >= 0.5 && scale <= 4)) {
        throw new IllegalArgumentException("a chart of " + width + " by " + height + " × " + scale);
      }
    }
  }

  /** Where a name of the rows under the chart begins; y is its base line. */
  record Key(String name, Ink ink, Chart.Weight weight, boolean band, double x, double y) {}

  static final double TEXT = 12;
  private static final double GAP = 6;
  private static final double SAMPLE = 18;
  private static final double LEAST_PLOT_SHARE = 0.62;

  private final Chart chart;
  private final Size size;
  private final double left;
  private final double right;
  private final double top;
  private final double bottom;
  private final boolean namedAtEnds;
  private final int markRows;
  private final List<Key> keys = new ArrayList<>();

  public ChartLayout(Chart chart, Size size) {
    this.chart = chart;
    this.size = size;
    double text = text();
    double names =
        isNamed()
            ? chart.curves().stream().mapToDouble(each -> width(each.name())).max().orElse(0)
            : 0;
    double rightOfNames = size.width() - names - 3 * gap();
    this.markRows = markRows(size.width());
    this.top = text * 1.6 + markRows * lineHeight() + gap();
    double upLabels = upLabels(size.height() - top - 3 * lineHeight());
    this.left = upLabels + 2 * gap();
    this.namedAtEnds = isNamed() && rightOfNames - left >= LEAST_PLOT_SHARE * size.width();
    this.right = namedAtEnds ? rightOfNames : size.width() - Math.max(gap(), lastLabel() / 2);
    double under = keyRows();
    this.bottom = size.height() - 2 * lineHeight() - gap() - under;
  }

  /** One curve alone is what the axis says. */
  private boolean isNamed() {
    return chart.curves().size() > 1;
  }

  Chart chart() {
    return chart;
  }

  /** Size of the text in pixels. */
  double text() {
    return TEXT * size.scale();
  }

  double gap() {
    return GAP * size.scale();
  }

  double lineHeight() {
    return text() * 1.35;
  }

  double width(String name) {
    return TextWidth.of(name, text());
  }

  private double upLabels(double height) {
    return widest(chart.up(), upTicks(height));
  }

  private double widest(Axis axis, List<BigDecimal> ticks) {
    return axis.labels(ticks).stream().mapToDouble(this::width).max().orElse(0);
  }

  private double lastLabel() {
    return widest(chart.across(), chart.across().ticks(12)) + gap();
  }

  /** Marks whose names would run into each other stand in rows of their own. */
  private int markRows(double width) {
    double all = chart.marks().stream().mapToDouble(mark -> width(mark.name()) + 2 * gap()).sum();
    return chart.marks().isEmpty() ? 0 : all < width * 0.4 ? 1 : chart.marks().size();
  }

  private List<BigDecimal> upTicks(double height) {
    return chart.up().ticks(Math.max(2, 1 + (int) (height / (1.8 * lineHeight()))));
  }

  List<BigDecimal> upTicks() {
    return upTicks(bottom - top);
  }

  /** As many as have room for the widest number. */
  List<BigDecimal> acrossTicks() {
    for (int count = 12; count > 2; count--) {
      List<BigDecimal> ticks = chart.across().ticks(count);
      double widest = widest(chart.across(), ticks);
      double apart = Double.POSITIVE_INFINITY;
      for (int i = 1; i < ticks.size(); i++) {
        apart = Math.min(apart, x(ticks.get(i).doubleValue()) - x(ticks.get(i - 1).doubleValue()));
      }
      if (apart >= widest + 2 * gap()) {
        return ticks;
      }
    }
    return chart.across().ticks(2);
  }

  /** Lays out the rows of names under the chart; their height. */
  private double keyRows() {
    List<Key> all = new ArrayList<>();
    chart
        .bands()
        .forEach(band -> all.add(new Key(band.name(), Ink.HAIR, Chart.Weight.PLAIN, true, 0, 0)));
    if (isNamed() && !namedAtEnds) {
      chart
          .curves()
          .forEach(
              curve -> all.add(new Key(curve.name(), curve.ink(), curve.weight(), false, 0, 0)));
    }
    double x = left;
    int row = 0;
    List<Key> placed = new ArrayList<>();
    for (Key key : all) {
      double wide = sample() + gap() + width(key.name()) + 2 * gap();
      if (x > left && x + wide > size.width()) {
        x = left;
        row++;
      }
      placed.add(new Key(key.name(), key.ink(), key.weight(), key.band(), x, row));
      x += wide;
    }
    double height = placed.isEmpty() ? 0 : (row + 1) * lineHeight();
    double first = size.height() - height + lineHeight() - gap() / 2;
    for (Key key : placed) {
      keys.add(
          new Key(
              key.name(),
              key.ink(),
              key.weight(),
              key.band(),
              key.x(),
              first + key.y() * lineHeight()));
    }
    return height;
  }

  double sample() {
    return SAMPLE * size.scale();
  }

  List<Key> keys() {
    return List.copyOf(keys);
  }

  boolean namedAtEnds() {
    return namedAtEnds;
  }

  int markRows() {
    return markRows;
  }

  Size size() {
    return size;
  }

  /** Left edge of the plot, px. */
  public double left() {
    return left;
  }

  /** Right edge of the plot, px. */
  public double right() {
    return right;
  }

  /** Upper edge of the plot, px. */
  public double top() {
    return top;
  }

  /** Lower edge of the plot, px. */
  public double bottom() {
    return bottom;
  }

  /** Where a number across lies, px. */
  public double x(double across) {
    return left + chart.across().share(across) * (right - left);
  }

  /** Where a number up lies, px, held within the plot. */
  public double y(double up) {
    double share = Math.max(0, Math.min(1, chart.up().share(up)));
    return bottom - share * (bottom - top);
  }

  /** The number across under a pixel, held within the axis: what a pointer points at. */
  public double across(double x) {
    return chart.across().at(Math.max(0, Math.min(1, (x - left) / (right - left))));
  }

  /** What every curve has under a pixel. */
  public Chart.Reading under(double x) {
    return chart.at(across(x));
  }
}
