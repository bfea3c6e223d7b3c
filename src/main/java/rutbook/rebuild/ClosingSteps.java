package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Range;
import rutbook.notebook.Role;
import rutbook.notebook.SagWindows;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Unit;

/** What every rebuild ends with: from the axle position to the moto that confirms the baseline. */
final class ClosingSteps {
  private final Drafting draft;

  ClosingSteps(Drafting draft) {
    this.draft = draft;
  }

  void close(Chain chain) {
    place(chain, StepKind.PLACE_AXLE, draft.settings(Role.AXLE_POSITION));
    chain.then(Step.of(StepKind.CHAIN, Subject.BIKE));
    place(chain, StepKind.PLACE_TYRE, draft.settings(Role.TYRE_FRONT, Role.TYRE_REAR));
    sag(chain);
    if (!draft.job().fork()) {
      place(chain, StepKind.PLACE_TUBE, moved(draft.settings(Role.TUBE_ABOVE_CLAMP)));
    }
    List<Setting> clickers = new ArrayList<>(draft.clickers(true));
    clickers.addAll(draft.clickers(false));
    clickers.sort(Comparator.comparingInt(each -> TradeOrder.rank(each.role())));
    place(chain, StepKind.PLACE_CLICKER, moved(clickers));
    place(chain, StepKind.PLACE_OTHER, moved(draft.settings(Role.OTHER)));
    chain
        .then(Step.of(StepKind.SHAKE_DOWN, Subject.BIKE))
        .then(Step.of(StepKind.RECHECK, Subject.BIKE))
        .then(Step.of(StepKind.CONFIRM_MOTO, Subject.BIKE))
        .then(Step.of(StepKind.CONFIRM, Subject.BIKE));
  }

  private List<Setting> moved(List<Setting> settings) {
    return settings.stream().filter(draft::isToBePlaced).toList();
  }

  private void place(Chain chain, StepKind kind, List<Setting> settings) {
    settings.forEach(each -> chain.then(draft.placing(kind, each)));
  }

  /** Preload is set, sag is measured: where it does not come out, preload is moved again. */
  private void sag(Chain chain) {
    List<Setting> preloads = moved(draft.settings(Role.FORK_PRELOAD, Role.SHOCK_PRELOAD));
    place(chain, StepKind.PLACE_PRELOAD, preloads);
    Optional<Setting> rear =
        preloads.stream().filter(each -> each.role() == Role.SHOCK_PRELOAD).findFirst();
    Entry.Baseline baseline = draft.baseline();
    SagWindows windows = draft.sheet().parts().sag();
    chain.then(measure(StepKind.RACE_SAG, baseline.raceSag(), windows.rearRace(), rear));
    chain.then(measure(StepKind.FREE_SAG, baseline.freeSag(), windows.rearFree(), rear));
    if (draft.job().fork() || windows.frontRace().isPresent()) {
      Optional<Setting> front =
          preloads.stream().filter(each -> each.role() == Role.FORK_PRELOAD).findFirst();
      chain.then(measure(StepKind.FRONT_RACE_SAG, Optional.empty(), windows.frontRace(), front));
    }
  }

  private static Step measure(
      StepKind kind, Optional<Amount> atBaseline, Optional<Range> wish, Optional<Setting> preload) {
    Unit unit =
        atBaseline.or(() -> wish.map(Range::least)).map(Amount::unit).orElse(Length.MILLIMETRE);
    Step step =
        Step.of(kind, Subject.BIKE)
            .with(Drafting.sag(atBaseline).withWish(wish))
            .asking(Ask.measure(unit, false));
    return preload
        .map(setting -> step.otherwise(Step.id(StepKind.PLACE_PRELOAD, Subject.of(setting))))
        .orElse(step);
  }
}
