package rutbook.notebook;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * How a setting is counted: its limits, the window wished for, the step of keys and clicks, where
 * the count starts, what a greater number does, and the total from stop to stop where it is known.
 */
public record Scale(
    Limits limits,
    Optional<Range> wish,
    Amount step,
    Datum datum,
    Sense greater,
    OptionalInt total) {
  public Scale {
    if (step.value().signum() <= 0) {
      throw new NotebookException(Fault.OUT_OF_RANGE, "step", step, "> 0", "");
    }
    if (limits instanceof Limits.Stops stops) {
      Checks.dimension("step", step, stops.range().least().dimension());
      checkSteps(stops.range(), step);
    }
    wish.ifPresent(window -> Checks.dimension("window", window.least(), step.dimension()));
    if (total.isPresent()) {
      Checks.range("total", total.getAsInt(), 1, 1000);
    }
  }

  /** Where there are clicks, one of them at least lies between the stops. */
  private static void checkSteps(Range range, Amount step) {
    BigDecimal highest = onGrid(range.most().value(), step.value());
    if (isGrid(step) && highest.compareTo(range.least().value()) < 0) {
      throw new NotebookException(Fault.OFF_THE_STEPS, "limits", range.most(), step);
    }
  }

  /** The number, or the next multiple of the step below it. */
  static BigDecimal onGrid(BigDecimal number, BigDecimal step) {
    BigDecimal over = number.remainder(step);
    BigDecimal down = number.subtract(over);
    return over.signum() < 0 ? down.subtract(step) : down;
  }

  /** Clicks and quarter turns are a grid; other steps only serve the keys. */
  public boolean isGrid() {
    return isGrid(step);
  }

  private static boolean isGrid(Amount step) {
    return step.dimension() == Dimension.CLICKS || step.dimension() == Dimension.TURNS;
  }
}
