package rutbook.rebuild;

import java.util.Optional;
import rutbook.figures.FillRoom;
import rutbook.notebook.Range;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;
import rutbook.units.Amount;

/** Something that an entry shows to be wrong or in doubt, at the step where it was entered. */
public sealed interface Finding {
  StepId step();

  /** Whether the step is to be done again before it counts. */
  default boolean again() {
    return false;
  }

  /** Left out, with the rider's reason. */
  record Skipped(StepId step, StepKind kind, String why) implements Finding {}

  /** What was entered does not answer the step: another unit, or legs missing. */
  record Incomplete(StepId step) implements Finding {
    @Override
    public boolean again() {
      return true;
    }
  }

  /** Counted before tear-down otherwise than the notebook says: which is to be trusted? */
  record CountDiffers(
      StepId step, Setting setting, Optional<Side> leg, Amount noted, Amount counted)
      implements Finding {}

  /** Found or put outside the limits of the sheet. A found one is kept, a chosen one done again. */
  record OutsideLimits(
      StepId step, Setting setting, Optional<Side> leg, Amount amount, Range limits, boolean again)
      implements Finding {}

  /** From stop to stop it is not what the sheet says: not seated, wrong valving, cap not home. */
  record TotalOff(StepId step, Setting setting, Optional<Side> leg, Amount expected, Amount counted)
      implements Finding {}

  /** The legs differ by more than they may. */
  record LegsDiffer(StepId step, Setting setting, Amount left, Amount right, Amount mayDiffer)
      implements Finding {
    @Override
    public boolean again() {
      return true;
    }
  }

  /** A measured leg has too little air left at full stroke: it would lock on its oil. */
  record NoRoom(StepId step, Setting setting, FillRoom room) implements Finding {
    @Override
    public boolean again() {
      return true;
    }
  }

  /** A sag without a target of its own lies outside the window that the sheet wishes for. */
  record OutsideWish(StepId step, StepKind kind, Amount measured, Range wish) implements Finding {}

  /** It stands elsewhere than at its target. */
  record OffTarget(
      StepId step,
      StepKind kind,
      Optional<Setting> setting,
      Optional<Side> leg,
      Amount wanted,
      Amount entered)
      implements Finding {}
}
