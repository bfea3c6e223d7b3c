package rutbook.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Edge;
import rutbook.units.Numerals;
import rutbook.units.Shown;

/**
 * The ruler as shapes: a line from the least to the most with ticks above, grey under it near the
 * stops, the baseline as a hollow triangle below, the reading as a filled dot, the previous reading
 * as a small hollow one, the other leg as a hollow brick dot where it differs, a proposal as an
 * arrow from the reading.
 */
public final class RulerDrawing {
  /**
   * How large a ruler is drawn.
   *
   * @param width of the whole drawing in pixels
   * @param numbers of what stands under the ticks; empty where nothing does
   * @param scale 1 for the strip, greater where it is read from further away
   * @param letters height of the numbers' letters at scale 1, in pixels
   */
  public record Size(double width, Optional<Numerals> numbers, double scale, double letters) {
    public static final double LEAST_WIDTH = 40;

    private static final double LETTERS = 11;
    private static final double LARGE_LETTERS = 13;

    public Size {
      if (!(width >= LEAST_WIDTH)) {
        throw new IllegalArgumentException("a ruler " + width + " wide");
      }
    }

    /** With letters of the usual height. */
    public Size(double width, Optional<Numerals> numbers, double scale) {
      this(width, numbers, scale, LETTERS);
    }

    /** Without numbers. */
    public static Size bare(double width, double scale) {
      return new Size(width, Optional.empty(), scale);
    }

    /** With numbers under the ticks. */
    public static Size numbered(double width, Numerals numerals, double scale) {
      return new Size(width, Optional.of(numerals), scale);
    }

    /** For paper, where it is printed smaller than it is drawn. */
    public static Size printed(double width, Numerals numerals) {
      return new Size(width, Optional.of(numerals), 1, LARGE_LETTERS);
    }

    /** A hair is too faint in print, and a first number that is not 0 is taken for one. */
    boolean onPaper() {
      return letters > LETTERS;
    }

    public double height() {
      return (numbers.isPresent() ? 40 : 26) * scale;
    }

    /** The y of the line. */
    public double line() {
      return 11 * scale;
    }

    /** What is kept free at both ends, so that a mark or number there is not cut. */
    public double inset() {
      return (numbers.isPresent() ? 14 : 6) * scale;
    }
  }

  private static final double MINOR_APART = 3.6;
  private static final double MAJOR_APART = 18;
  private static final double LABELS_APART = 44;

  private final Ruler ruler;
  private final Size size;
  private final RulerScale scale;
  private final List<Shape> shapes = new ArrayList<>();

  private RulerDrawing(Ruler ruler, Size size) {
    this.ruler = ruler;
    this.size = size;
    this.scale = scale(ruler, size);
  }

  /** Where amounts stand on a ruler of that size. */
  public static RulerScale scale(Ruler ruler, Size size) {
    return new RulerScale(ruler, size.inset(), size.width() - size.inset());
  }

  public static Drawing of(Ruler ruler, Size size) {
    RulerDrawing drawing = new RulerDrawing(ruler, size);
    drawing.nearStops();
    drawing.line();
    drawing.ticks();
    drawing.marks();
    return new Drawing(size.width(), size.height(), drawing.shapes);
  }

  /** The line with its ticks and nothing on it, over the places that the ruler shows. */
  static List<Shape> ground(Ruler ruler, Size size) {
    RulerDrawing drawing = new RulerDrawing(ruler, size);
    drawing.nearStops();
    drawing.line();
    drawing.ticks();
    return drawing.shapes;
  }

  private double least() {
    return scale.number(ruler.limits().least());
  }

  private double most() {
    return scale.number(ruler.limits().most());
  }

  /** Within two steps of a stop an adjuster is near it. */
  private void nearStops() {
    if (!ruler.hasStops()) {
      return;
    }
    double near = scale.number(ruler.step()) * Setting.NEAR_CLICKS;
    if (near * 2 >= most() - least()) {
      return;
    }
    double wide = scale.x(least() + near) - scale.x(least());
    double y = size.line() + size.scale() / 2;
    Ink ink = size.onPaper() ? Ink.SOFT : Ink.HAIR;
    shapes.add(new Shape.Box(scale.x(least()), y, wide, 4 * size.scale(), ink));
    shapes.add(new Shape.Box(scale.x(most()) - wide, y, wide, 4 * size.scale(), ink));
  }

  /** Ink over what is allowed; a hair further out where something was found beyond. */
  private void line() {
    double y = size.line();
    if (scale.shownLeast() < least()) {
      line(scale.left(), y, scale.x(least()), y, Ink.BRICK, 1);
    }
    if (scale.shownMost() > most()) {
      line(scale.x(most()), y, scale.right(), y, Ink.BRICK, 1);
    }
    line(scale.x(least()), y, scale.x(most()), y, Ink.INK, 1.5);
  }

  private void ticks() {
    BigDecimal step = ruler.step().value();
    double pixelsEach = (scale.right() - scale.left()) / (scale.shownMost() - scale.shownLeast());
    BigDecimal minor = Ticks.distance(step, step, pixelsEach, MINOR_APART);
    BigDecimal major = Ticks.distance(step, minor, pixelsEach, MAJOR_APART);
    BigDecimal labelled = Ticks.distance(step, major, pixelsEach, labelsApart());
    for (BigDecimal place : Ticks.multiples(minor, least(), most())) {
      boolean tall = Ticks.isMultiple(place, major);
      double x = scale.x(place.doubleValue());
      if (!crowds(x, scale.x(least())) && !crowds(x, scale.x(most()))) {
        tick(x, tall ? 8 : 5, tall ? Ink.INK : Ink.SOFT);
      }
    }
    tick(scale.x(least()), 9, Ink.INK);
    tick(scale.x(most()), 9, Ink.INK);
    size.numbers().ifPresent(numerals -> labels(labelled, numerals));
  }

  /** Beside the tick of a limit that is no round number there is no room for another. */
  private static boolean crowds(double x, double limit) {
    double apart = Math.abs(x - limit);
    return apart > 1e-6 && apart < MINOR_APART;
  }

  private void tick(double x, double length, Ink ink) {
    line(x, size.line(), x, size.line() - length * size.scale(), ink, 1);
  }

  /** Both limits, and the round numbers that leave them room. */
  private void labels(BigDecimal apart, Numerals numerals) {
    label(ruler.limits().least(), Edge.LEAST, numerals);
    double room = labelsApart() * 0.75;
    for (BigDecimal place : Ticks.multiples(apart, least(), most())) {
      double x = scale.x(place.doubleValue());
      if (x - scale.x(least()) >= room && scale.x(most()) - x >= room) {
        label(x, numerals.text(new Shown(place, scale.unit())), false);
      }
    }
    if (scale.x(most()) - scale.x(least()) >= room) {
      label(ruler.limits().most(), Edge.MOST, numerals);
    }
  }

  /** Where it is, with a number that is rounded inwards. */
  private void label(Amount limit, Edge edge, Numerals numerals) {
    Shown shown = Display.METRIC.with(scale.unit()).shown(limit, edge);
    boolean first = edge == Edge.LEAST && limit.value().signum() != 0;
    label(scale.x(limit), numerals.text(shown), size.onPaper() && first);
  }

  private double labelsApart() {
    return LABELS_APART * size.scale() * size.letters() / Size.LETTERS;
  }

  private void label(double x, String text, boolean bold) {
    double y = size.line() + 26 * size.scale();
    double textSize = size.letters() * Math.max(1, size.scale() * 0.85);
    shapes.add(new Shape.Text(x, y, text, Shape.Anchor.MIDDLE, textSize, Ink.INK, bold));
  }

  private void marks() {
    ruler.marks().baseline().ifPresent(amount -> triangle(scale.x(amount)));
    proposal();
    ruler.marks().previous().filter(this::standsAlone).ifPresent(this::previous);
    ruler.otherLeg().ifPresent(amount -> dot(amount, 4.5, Ink.BRICK, false));
    ruler.reading().ifPresent(amount -> dot(amount, 4.5, Ink.INK, true));
  }

  private boolean standsAlone(Amount previous) {
    return ruler.reading().map(reading -> !reading.sameQuantity(previous)).orElse(true);
  }

  private void previous(Amount amount) {
    dot(amount, 3, Ink.SOFT, false);
  }

  private void dot(Amount amount, double radius, Ink ink, boolean filled) {
    double x = scale.x(amount);
    shapes.add(new Shape.Dot(x, size.line(), radius * size.scale(), ink, filled));
  }

  private void triangle(double x) {
    double unit = size.scale();
    double top = size.line() + 6 * unit;
    shapes.add(
        new Shape.Polygon(
            List.of(
                new Shape.Point(x, top),
                new Shape.Point(x + 4 * unit, top + 7 * unit),
                new Shape.Point(x - 4 * unit, top + 7 * unit)),
            Ink.INK,
            false));
  }

  /** An arrow along the line; too short for a shaft, it is a head alone. */
  private void proposal() {
    Optional<Amount> target = ruler.marks().proposal();
    if (target.isEmpty()) {
      return;
    }
    double to = scale.x(target.get());
    double from = ruler.reading().map(scale::x).orElse(to);
    double unit = size.scale();
    double head = Math.signum(to - from) * 7 * unit;
    double y = size.line();
    if (head == 0) {
      shapes.add(new Shape.Dot(to, y, 6.5 * unit, Ink.OCHRE, false));
      return;
    }
    line(from, y, to - head, y, Ink.OCHRE, 3 * unit);
    shapes.add(
        new Shape.Polygon(
            List.of(
                new Shape.Point(to, y),
                new Shape.Point(to - head, y - 4.5 * unit),
                new Shape.Point(to - head, y + 4.5 * unit)),
            Ink.OCHRE,
            true));
  }

  private void line(double x1, double y1, double x2, double y2, Ink ink, double width) {
    shapes.add(new Shape.Line(x1, y1, x2, y2, ink, width));
  }
}
