package rutbook.rebuild;

import java.util.Set;
import rutbook.notebook.End;

/** Why a bike may not be back although the numbers are, the likeliest first; each has its check. */
public enum Cause {
  AIR_IN_CARTRIDGE(Check.REBOUND_BY_HAND_BOTH_LEGS, End.FRONT),
  LEG_MISMATCH(Check.COUNT_BOTH_LEGS, End.FRONT),
  FILL(Check.MEASURE_BOTH_FILLS, End.FRONT),
  COUNT_FROM_WRONG_END(Check.COUNT_TO_CLOSED_AGAIN, End.FRONT, End.REAR),
  PINCHED_AXLE(Check.FREE_THE_FLOATING_SIDE, End.FRONT),
  SAG(Check.MEASURE_SAG, End.FRONT, End.REAR),
  TYRE_PRESSURE(Check.TYRES_COLD, End.FRONT, End.REAR);

  /** What tells whether it is so. */
  public enum Check {
    REBOUND_BY_HAND_BOTH_LEGS,
    COUNT_BOTH_LEGS,
    MEASURE_BOTH_FILLS,
    COUNT_TO_CLOSED_AGAIN,
    FREE_THE_FLOATING_SIDE,
    MEASURE_SAG,
    TYRES_COLD
  }

  private final Check check;
  private final Set<End> ends;

  Cause(Check check, End... ends) {
    this.check = check;
    this.ends = Set.of(ends);
  }

  public Check check() {
    return check;
  }

  /** Whether it can show at an end of the bike. */
  boolean shows(End end) {
    return end == End.WHOLE_BIKE || ends.contains(end);
  }
}
