package rutbook.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rutbook.notebook.Range;
import rutbook.units.Amount;
import rutbook.units.Unit;

/**
 * Where an amount stands on a ruler's line and which amount stands at a place; the line reaches
 * over the limits, and further where something was found beyond them. Its ends are reckoned once: a
 * ruler asks for the place of every tick.
 */
public final class RulerScale {
  private final Ruler ruler;
  private final double left;
  private final double right;
  private final double shownLeast;
  private final double shownMost;

  /**
   * @param left x of the least amount shown
   * @param right x of the most amount shown
   */
  public RulerScale(Ruler ruler, double left, double right) {
    if (!(right > left)) {
      throw new IllegalArgumentException("a ruler from " + left + " to " + right);
    }
    this.ruler = ruler;
    this.left = left;
    this.right = right;
    double least = number(ruler.limits().least());
    double most = number(ruler.limits().most());
    for (Amount place : ruler.places()) {
      least = Math.min(least, number(place));
      most = Math.max(most, number(place));
    }
    shownLeast = least;
    shownMost = most > least ? most : least + number(ruler.step());
  }

  public double left() {
    return left;
  }

  public double right() {
    return right;
  }

  public Unit unit() {
    return ruler.step().unit();
  }

  /** The least amount with a place on the line, in the unit of the step. */
  public double shownLeast() {
    return shownLeast;
  }

  /** The most; never the same as the least, so that one allowed value still has a line. */
  public double shownMost() {
    return shownMost;
  }

  public double x(Amount amount) {
    return x(number(amount));
  }

  double x(double number) {
    return left + (number - shownLeast) / (shownMost - shownLeast) * (right - left);
  }

  /** The amount at a place that may be chosen: on a step, and held inside the limits. */
  public Amount at(double x) {
    double share = Math.max(0, Math.min(1, (x - left) / (right - left)));
    double number = shownLeast + share * (shownMost - shownLeast);
    return held(nearestStep(BigDecimal.valueOf(number)));
  }

  /** So many steps further, up or down; held inside the limits. */
  public Amount stepped(Amount from, int steps) {
    BigDecimal step = ruler.step().value();
    BigDecimal number = from.in(unit(), 6, RoundingMode.HALF_EVEN).value();
    BigDecimal whole =
        number.divide(step, 0, steps > 0 ? RoundingMode.FLOOR : RoundingMode.CEILING);
    return held(new Amount(whole.add(BigDecimal.valueOf(steps)).multiply(step), unit()));
  }

  private Amount nearestStep(BigDecimal number) {
    BigDecimal step = ruler.step().value();
    return new Amount(number.divide(step, 0, RoundingMode.HALF_UP).multiply(step), unit());
  }

  /**
   * Held inside the limits; where there are clicks, at the last click inside when the limit itself
   * is none.
   */
  private Amount held(Amount amount) {
    Range limits = ruler.limits();
    Amount held = limits.hold(amount);
    if (!ruler.hasStops() || held.value().remainder(ruler.step().value()).signum() == 0) {
      return held;
    }
    RoundingMode inwards =
        held.sameQuantity(limits.least()) ? RoundingMode.CEILING : RoundingMode.FLOOR;
    BigDecimal step = ruler.step().value();
    return new Amount(held.value().divide(step, 0, inwards).multiply(step), unit());
  }

  double number(Amount amount) {
    return amount.doubleIn(unit());
  }
}
