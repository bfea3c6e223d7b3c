package rutbook.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Fastener;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.ShockParts;
import rutbook.units.Length;
import rutbook.units.Pressure;
import rutbook.units.Unit;

/** The shock's part of a plan: off, to the licensed shop, back and in. */
final class ShockSteps {
  private final Drafting draft;

  ShockSteps(Drafting draft) {
    this.draft = draft;
  }

  /** The spring's lengths and the collar, before anything is loosened. */
  List<Step> notes() {
    List<Step> steps = new ArrayList<>();
    for (Setting preload : draft.settings(Role.SHOCK_PRELOAD)) {
      steps.add(draft.note(StepKind.NOTE_PRELOAD, preload));
    }
    steps.add(
        Step.of(StepKind.NOTE_INSTALLED_LENGTH, Subject.BIKE)
            .asking(Ask.measure(Length.MILLIMETRE, false)));
    return steps;
  }

  /** What the shop set, read before anything is turned: from there it goes to the baseline. */
  private void fromTheShop(Chain chain) {
    ShockParts shock = draft.sheet().parts().shock();
    if (shock.chargedReservoir()) {
      Unit unit = shock.gasPressure().map(gas -> gas.least().unit()).orElse(Pressure.BAR);
      chain.then(
          Step.of(StepKind.SHOP_GAS, Subject.BIKE)
              .with(Goal.NONE.withWish(shock.gasPressure()))
              .asking(Ask.measure(unit, false)));
    }
    draft.settings(Role.SHOCK_SPRING).stream()
        .filter(spring -> !draft.isToBePlaced(spring))
        .forEach(spring -> chain.then(draft.note(StepKind.SHOP_FOUND, spring)));
    draft
        .settings(Role.SHOCK_PRELOAD)
        .forEach(preload -> chain.then(draft.note(StepKind.SHOP_FOUND, preload)));
    draft
        .clickers(false)
        .forEach(
            clicker ->
                chain.then(
                    draft.note(StepKind.SHOP_FOUND, clicker).cautioned(Caution.NEVER_FORCE)));
  }

  void offAndIn(Chain chain) {
    Optional<Reading> freeLength =
        draft.sheet().parts().shock().springFreeLength().map(Reading::of);
    chain
        .then(Step.of(StepKind.SHOCK_OFF, Subject.BIKE))
        .then(
            Step.of(StepKind.NOTE_FREE_LENGTH, Subject.BIKE)
                .with(Goal.NONE.withNoted(freeLength))
                .asking(Ask.measure(Length.MILLIMETRE, false)))
        .then(Step.of(StepKind.SHOP_SHEET, Subject.BIKE))
        .then(Step.of(StepKind.SHOP_RETURN, Subject.BIKE).asking(Ask.WORDS));
    fromTheShop(chain);
    for (Setting spring : draft.settings(Role.SHOCK_SPRING)) {
      if (draft.isToBePlaced(spring)) {
        chain.then(draft.placing(StepKind.PLACE_SPRING, spring));
      }
    }
    chain
        .then(Step.of(StepKind.LINKAGE, Subject.BIKE))
        .then(
            draft.torqued(
                StepKind.SHOCK_IN,
                Subject.BIKE,
                Fastener.SHOCK_UPPER,
                Fastener.SHOCK_LOWER,
                Fastener.LINKAGE));
    draft.countable(false).forEach(each -> chain.then(draft.total(each, Optional.empty())));
  }
}
