package rutbook.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Oil;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Tightening;
import rutbook.units.Amount;

/**
 * The values of a step: where a setting goes, the window that the sheet wishes a sag to be in, the
 * count from stop to stop that the sheet knows, what the notebook says stood there before, torques,
 * remarks from outside, and the oil that is poured.
 */
public record Goal(
    Optional<Target> target,
    Optional<Range> wish,
    Optional<Amount> total,
    Optional<Reading> noted,
    List<Tightening> torques,
    List<Remark> remarks,
    Optional<Oil> oil) {
  public static final Goal NONE =
      new Goal(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          List.of(),
          Optional.empty());

  public Goal {
    torques = List.copyOf(torques);
    remarks = List.copyOf(remarks);
  }

  public Goal with(Optional<Target> newTarget) {
    return new Goal(newTarget, wish, total, noted, torques, remarks, oil);
  }

  public Goal withWish(Optional<Range> newWish) {
    return new Goal(target, newWish, total, noted, torques, remarks, oil);
  }

  public Goal withTotal(Optional<Amount> newTotal) {
    return new Goal(target, wish, newTotal, noted, torques, remarks, oil);
  }

  public Goal withNoted(Optional<Reading> newNoted) {
    return new Goal(target, wish, total, newNoted, torques, remarks, oil);
  }

  public Goal withTorques(List<Tightening> newTorques) {
    return new Goal(target, wish, total, noted, newTorques, remarks, oil);
  }

  /** With the oil that is poured at this step. */
  public Goal withOil(Optional<Oil> newOil) {
    return new Goal(target, wish, total, noted, torques, remarks, newOil);
  }

  /** With more remarks after those it has. */
  public Goal remarked(List<Remark> more) {
    List<Remark> all = new ArrayList<>(remarks);
    all.addAll(more);
    return new Goal(target, wish, total, noted, torques, all, oil);
  }
}
