package rutbook.compare;

import java.time.LocalDate;
import rutbook.notebook.End;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Setting;
import rutbook.units.Amount;

/** Something about the bike or its notebook that wants attention. */
public sealed interface Finding {

  /** Found on the bike beyond a limit of the sheet: the first thing to put right. */
  record OutsideLimits(Setting setting, Reading reading, Range limits) implements Finding {}

  record LegsApart(Setting setting, Reading reading) implements Finding {}

  /** A reading, or a leg of it, is not known. */
  record NotKnown(Setting setting, Reading reading) implements Finding {}

  /** The sheet has the setting, the setup has no reading of it. */
  record NoReading(Setting setting) implements Finding {}

  record BrokenChain(Break at) implements Finding {}

  record SagOut(End end, SagKind kind, Amount measured, Range window, LocalDate day)
      implements Finding {}

  /** There is a window for it and no measurement. */
  record SagNotMeasured(End end, SagKind kind) implements Finding {}

  /**
   * At or past the interval.
   *
   * @param hours since it was last done, or since the first meter reading
   * @param everDone whether the notebook says that it ever was
   */
  record ServiceDue(ServiceItem item, double hours, boolean everDone) implements Finding {}

  /** In the last tenth of the interval: worth knowing, no problem yet. */
  record ServiceNear(ServiceItem item, double hours) implements Finding {}

  /** Whether it has to be put right, rather than only known. */
  default boolean isProblem() {
    return !(this instanceof ServiceNear);
  }
}
