package rutbook.drawing;

import java.util.List;

/**
 * What a change is expected to do to one complaint, on a line from 0 to 5: where it is now as a
 * hollow dot, where it is expected as a filled one, and the interval as a band. Better is blue,
 * worse is ochre.
 */
public final class EffectLine {
  private static final double WORST = 5;
  private static final double DOT = 4.5;
  private static final double BAND = 7;

  private EffectLine() {}

  /**
   * @param now severity as it is, points
   * @param mean expected change, points, negative for better
   * @param low lower end of its interval, as a change
   * @param high upper end of its interval, as a change; whatever lies beyond 0 or 5 ends there
   */
  public static Drawing of(
      double now, double mean, double low, double high, double width, double height) {
    Scale scale = new Scale(width);
    double middle = Math.floor(height / 2) + 0.5;
    Ink ink = mean <= 0 ? Ink.BLUE : Ink.OCHRE;
    double from = scale.at(now + Math.min(low, high));
    double to = scale.at(now + Math.max(low, high));
    double zero = scale.at(0);
    double five = scale.at(WORST);
    return new Drawing(
        width,
        height,
        List.of(
            new Shape.Box(from, middle - BAND / 2, Math.max(1, to - from), BAND, Ink.HAIR),
            new Shape.Line(zero, middle, five, middle, Ink.SOFT, 1),
            new Shape.Line(zero, middle - 4, zero, middle + 4, Ink.SOFT, 1),
            new Shape.Line(five, middle - 4, five, middle + 4, Ink.SOFT, 1),
            new Shape.Dot(scale.at(now), middle, DOT, Ink.INK, false),
            new Shape.Dot(scale.at(now + mean), middle, DOT, ink, true)));
  }

  private record Scale(double width) {
    double at(double severity) {
      double share = Math.max(0, Math.min(WORST, severity)) / WORST;
      return DOT + share * (width - 2 * DOT);
    }
  }
}
