package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EventKind;
import rutbook.notebook.Gate;
import rutbook.notebook.Placed;
import rutbook.notebook.Rider;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;
import rutbook.units.Mass;

/**
 * Whether the rear sag that was measured last may still be trusted, and lies in its window: a
 * spring or axle position changed since, another part of the rear, a rider 3 kg heavier or lighter,
 * or ten hours of running make it old (common practice, no source).
 */
record SagTrust(Timeline timeline, Shelf shelf, Sheet sheet, Entry.Session session) {
  private static final double WEIGHT_MOVED = 3;
  private static final double HOURS = 10;
  private static final List<Role> MOVES_SAG = List.of(Role.SHOCK_SPRING, Role.AXLE_POSITION);

  /** The card to show, if sag has to be measured or put right first. */
  Optional<GateCard> gate() {
    Optional<Entry.SagMeasured> rear = timeline.sagOn(End.REAR, session.day());
    if (rear.isEmpty()) {
      return Optional.of(new GateCard(Gate.SAG_OUT, Optional.empty()));
    }
    Entry.SagMeasured sag = rear.get();
    return isOutside(sag) || isTooOld(sag)
        ? Optional.of(new GateCard(Gate.SAG_OUT, Optional.of(sag.id())))
        : Optional.empty();
  }

  private boolean isOutside(Entry.SagMeasured sag) {
    return sag.race().isPresent()
        && sheet
            .parts()
            .sag()
            .race(End.REAR)
            .map(window -> !window.contains(sag.race().get()))
            .orElse(false);
  }

  private boolean isTooOld(Entry.SagMeasured sag) {
    double since = timeline.hours().at(session.id()) - timeline.hours().at(sag.id());
    return since >= HOURS || isMoved(sag) || isAnotherPart(sag) || isAnotherWeight(sag);
  }

  private boolean isMoved(Entry.SagMeasured sag) {
    Setup then = timeline.after(sag.id());
    for (Placed placed : session.end().placed()) {
      Optional<Setting> setting = sheet.setting(placed.setting());
      boolean moves = setting.isPresent() && MOVES_SAG.contains(setting.get().role());
      if (moves
          && then.reading(placed.setting())
              .map(was -> !was.sameAs(placed.reading()))
              .orElse(false)) {
        return true;
      }
    }
    return false;
  }

  private boolean isAnotherPart(Entry.SagMeasured sag) {
    List<Entry> entries = timeline.entries();
    return entries.subList(entries.indexOf(sag) + 1, entries.size()).stream()
        .filter(each -> !each.day().isAfter(session.day()))
        .anyMatch(
            each ->
                each instanceof Entry.Event event
                    && event.kind() == EventKind.PART_CHANGED
                    && event.end().equals(Optional.of(End.REAR)));
  }

  private boolean isAnotherWeight(Entry.SagMeasured sag) {
    Optional<Rider> rider = shelf.rider(session.rider());
    Optional<Amount> then = sag.weight().or(() -> rider.flatMap(each -> each.weightOn(sag.day())));
    Optional<Amount> now = rider.flatMap(each -> each.weightOn(session.day()));
    return then.isPresent()
        && now.isPresent()
        && Math.abs(kilograms(then.get()) - kilograms(now.get())) >= WEIGHT_MOVED - 1e-9;
  }

  private static double kilograms(Amount mass) {
    return mass.doubleIn(Mass.KILOGRAM);
  }
}
