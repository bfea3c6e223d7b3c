package rutbook.rebuild;

import java.util.List;
import java.util.Optional;
import rutbook.figures.Figure;
import rutbook.figures.FillKind;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.notebook.Entry;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;
import rutbook.physics.ForkChange;

/**
 * What a fill that is about to be entered (of an air fork: a pressure) does to the fork beside the
 * baseline's, everything else as at the baseline; and the air that it leaves before it locks.
 *
 * @param before the baseline's fill; the nominal one where the baseline knows none
 * @param chosen what would be in both legs
 * @param alike the leg that is not filled yet and is reckoned as this one
 * @param was the fork with the baseline's fill
 * @param is the fork with the chosen fill
 * @param change from the one to the other
 * @param room air left at full stroke, per leg; empty for a pressure
 */
public record ChosenFill(
    Setting setting,
    Reading before,
    Reading chosen,
    Optional<Side> alike,
    ForkFigures was,
    ForkFigures is,
    Figure<ForkChange> change,
    Optional<Figure<List<FillRoom>>> room) {

  /**
   * Of what is typed at a step; empty where the step fills nothing that the curve knows, or where
   * neither baseline nor sheet has a fill to compare with.
   *
   * @param typed a reading that answers the step
   */
  public static Optional<ChosenFill> at(Plan plan, Step step, Reading typed, Riding riding) {
    if (!applies(plan, step)) {
      return Optional.empty();
    }
    Setting setting = step.setting().orElseThrow();
    Optional<Reading> before = before(plan, setting);
    if (before.isEmpty() || !typed.isKnown()) {
      return Optional.empty();
    }
    Optional<BothLegs> legs = BothLegs.at(plan, step, typed);
    Reading chosen = legs.map(BothLegs::reading).orElse(typed);
    Sheet sheet = plan.sheet();
    Setup baseline = plan.baseline().setup();
    Setup was = baseline.with(Placed.found(setting.id(), before.get()));
    Setup is = baseline.with(Placed.found(setting.id(), chosen));
    return Optional.of(
        new ChosenFill(
            setting,
            before.get(),
            chosen,
            legs.flatMap(BothLegs::unfilled),
            ForkFigures.of(sheet, was, riding),
            ForkFigures.of(sheet, is, riding),
            ForkFigures.change(sheet, was, is, riding),
            setting.role() == Role.FORK_OIL
                ? Optional.of(FillRoom.of(sheet, is))
                : Optional.empty()));
  }

  /** Whether what is entered at a step moves the fork's curve. */
  public static boolean applies(Plan plan, Step step) {
    boolean fills =
        step.kind() == StepKind.FILL
            || step.kind() == StepKind.PLACE_FILL
            || step.kind() == StepKind.PLACE_AIR;
    return fills
        && step.setting().filter(each -> each.role() == FillKind.varied(plan.sheet())).isPresent();
  }

  /** The baseline's fill, or what the plan aims at where the baseline knows none. */
  private static Optional<Reading> before(Plan plan, Setting setting) {
    Entry.Baseline baseline = plan.baseline();
    return baseline
        .setup()
        .reading(setting.id())
        .filter(Reading::isKnown)
        .or(
            () ->
                plan.step(StepId.placing(setting.id()))
                    .flatMap(Step::target)
                    .map(Target::reading)
                    .filter(Reading::isKnown));
  }
}
