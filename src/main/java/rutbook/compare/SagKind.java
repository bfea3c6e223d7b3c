package rutbook.compare;

import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Range;
import rutbook.notebook.SagWindows;

/** The two sags that are measured. */
public enum SagKind {
  /** Rider aboard in gear. */
  RACE,
  /** Bike alone. */
  FREE;

  /** The window wished for, where the sheet has one. */
  public Optional<Range> window(SagWindows windows, End end) {
    if (end == End.WHOLE_BIKE) {
      return Optional.empty();
    }
    if (this == RACE) {
      return windows.race(end);
    }
    return end == End.REAR ? windows.rearFree() : Optional.empty();
  }
}
