package rutbook.notebook;

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
    }
    wish.ifPresent(window -> Checks.dimension("window", window.least(), step.dimension()));
    if (total.isPresent()) {
      Checks.range("total", total.getAsInt(), 1, 1000);
    }
  }

  /** Clicks and quarter turns are a grid; other steps only serve the keys. */
  public boolean isGrid() {
    return step.dimension() == Dimension.CLICKS || step.dimension() == Dimension.TURNS;
  }
}
