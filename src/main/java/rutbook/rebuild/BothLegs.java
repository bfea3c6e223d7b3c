package rutbook.rebuild;

import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Legs;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.units.Amount;

/**
 * What a setting of both legs would be once a step is entered: what is typed beside what is in the
 * other leg.
 *
 * @param reading both legs
 * @param meant how they are meant to be, where the plan says so
 * @param unfilled the leg that nothing was entered for, taken to become like the other
 */
public record BothLegs(
    Setting setting, Reading reading, Optional<Reading> meant, Optional<Side> unfilled) {

  /**
   * Of what is typed at a step; empty where the setting is not in both legs.
   *
   * @param typed a reading that answers the step, every leg known
   */
  public static Optional<BothLegs> at(Plan plan, Step step, Reading typed) {
    return step.setting()
        .filter(setting -> setting.carrier() == Carrier.PAIR)
        .map(setting -> of(plan, step, setting, typed));
  }

  private static BothLegs of(Plan plan, Step step, Setting setting, Reading typed) {
    Optional<Reading> meant = plan.back().of(setting.id()).map(each -> each.target().reading());
    if (step.ask().bothLegs()) {
      return new BothLegs(setting, typed, meant, Optional.empty());
    }
    Side here = step.leg().orElse(Side.LEFT);
    Side there = here == Side.LEFT ? Side.RIGHT : Side.LEFT;
    Optional<Amount> entered = entered(plan, step, setting, there);
    Value mine = typed.leg(here);
    Value other = entered.<Value>map(Value::of).orElse(mine);
    return new BothLegs(
        setting,
        here == Side.LEFT ? new Reading.Pair(mine, other) : new Reading.Pair(other, mine),
        meant,
        entered.isPresent() ? Optional.empty() : Optional.of(there));
  }

  private static Optional<Amount> entered(Plan plan, Step step, Setting setting, Side leg) {
    return plan.done(Step.id(step.kind(), Subject.of(setting, leg)))
        .flatMap(done -> Ask.reading(done.entered()))
        .flatMap(reading -> reading.leg(leg).known())
        .filter(amount -> amount.dimension() == setting.dimension());
  }

  /** Whether they differ by more than they may, otherwise than they are meant to. */
  public boolean differ() {
    return Legs.differ(setting, reading, meant);
  }

  /** How far apart they may be. */
  public Amount mayDiffer() {
    return Legs.tolerance(setting);
  }
}
