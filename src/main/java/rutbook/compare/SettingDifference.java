package rutbook.compare;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;

/**
 * One setting in two setups.
 *
 * @param from empty when the first setup does not have the setting
 * @param to empty when the second does not
 * @param legs the values side by side, left first; empty when only one setup has the setting
 */
public record SettingDifference(
    Setting setting, Optional<Standing> from, Optional<Standing> to, List<LegDifference> legs) {

  public SettingDifference {
    legs = List.copyOf(legs);
  }

  static SettingDifference of(Setting setting, Optional<Standing> from, Optional<Standing> to) {
    if (from.isEmpty() || to.isEmpty()) {
      return new SettingDifference(setting, from, to, List.of());
    }
    Reading before = from.get().reading();
    Reading after = to.get().reading();
    List<LegDifference> legs =
        setting.carrier() == Carrier.PAIR
            ? List.of(
                leg(setting, Side.LEFT, before, after), leg(setting, Side.RIGHT, before, after))
            : List.of(
                LegDifference.of(
                    setting, Optional.empty(), before.values().get(0), after.values().get(0)));
    return new SettingDifference(setting, from, to, legs);
  }

  private static LegDifference leg(Setting setting, Side side, Reading before, Reading after) {
    return LegDifference.of(setting, Optional.of(side), before.leg(side), after.leg(side));
  }

  /** One setting on its own terms: two readings of one sheet. */
  public static SettingDifference of(
      rutbook.notebook.Sheet sheet, Setting setting, Placed from, Placed to) {
    return of(
        setting,
        Optional.of(Standing.of(sheet, setting, from)),
        Optional.of(Standing.of(sheet, setting, to)));
  }

  public Group group() {
    return Group.of(setting.role());
  }

  public boolean onlyBefore() {
    return to.isEmpty();
  }

  public boolean onlyAfter() {
    return from.isEmpty();
  }

  /** Whether both have it and every leg reads the same. */
  public boolean isSame() {
    return !legs.isEmpty() && legs.stream().allMatch(LegDifference::isSame);
  }

  /** Whether both legs moved alike, so that the difference can be said once. */
  public boolean legsMoveAlike() {
    return legs.size() < 2
        || new Reading.One(legs.get(0).from()).sameAs(new Reading.One(legs.get(1).from()))
            && new Reading.One(legs.get(0).to()).sameAs(new Reading.One(legs.get(1).to()));
  }
}
