package rutbook.rebuild;

import java.util.List;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;

/**
 * How one setting goes back to the baseline: where it is, what the baseline wants, the target that
 * today's limits allow, the move of each leg, and remarks on what is missing.
 */
public record SettingReturn(
    Setting setting,
    Reading now,
    Reading wanted,
    Target target,
    List<LegMove> moves,
    boolean foundOutside,
    List<Remark> remarks) {
  public SettingReturn {
    moves = List.copyOf(moves);
    remarks = List.copyOf(remarks);
  }

  SettingReturn with(List<Remark> newRemarks) {
    return new SettingReturn(setting, now, wanted, target, moves, foundOutside, newRemarks);
  }

  /** Whether a leg that has a target is not known to be anywhere. */
  public boolean unknown() {
    return moves.stream().anyMatch(move -> move.from().isEmpty());
  }

  /** Whether anything is to be done at all. */
  public boolean moved() {
    return foundOutside || moves.stream().anyMatch(LegMove::moves);
  }

  public List<Shortfall> shortfalls() {
    return target.shortfalls();
  }
}
