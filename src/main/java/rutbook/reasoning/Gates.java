package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bounds;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.EventKind;
import rutbook.notebook.Gate;
import rutbook.notebook.Legs;
import rutbook.notebook.Placed;
import rutbook.notebook.Ready;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.units.Duration;

/** What comes before any clicker, in the trade's order. */
final class Gates {
  private Gates() {}

  static List<GateCard> of(Timeline timeline, Shelf shelf, Entry.Session session) {
    List<GateCard> cards = new ArrayList<>();
    Sheet sheet = timeline.sheetOn(session.day());
    fault(timeline).ifPresent(because -> cards.add(card(Gate.FAULT_OR_CRASH, because)));
    if (outside(timeline, sheet, session)) {
      cards.add(card(Gate.READINGS_IN_DOUBT, session.id()));
    }
    notCheckedAfter(timeline, session)
        .ifPresent(because -> cards.add(card(Gate.NOT_CHECKED_AFTER, because)));
    if (!session.conditions().ready().contains(Ready.TYRES_COLD)) {
      cards.add(card(Gate.PRESSURES_NOT_CHECKED, session.id()));
    }
    if (sheet.services().stream().anyMatch(item -> due(timeline, item))) {
      cards.add(new GateCard(Gate.SERVICE_DUE, Optional.empty()));
    }
    new SagTrust(timeline, shelf, sheet, session).gate().ifPresent(cards::add);
    if (!session.conditions().ready().contains(Ready.FORK_AIR_BLED)) {
      cards.add(card(Gate.FORK_NOT_BLED, session.id()));
    }
    wheelOut(timeline, session)
        .ifPresent(because -> cards.add(card(Gate.AXLE_NOT_ALIGNED, because)));
    cards.removeIf(card -> dismissed(timeline, session, card.gate()));
    return cards;
  }

  private static GateCard card(Gate gate, EntryId because) {
    return new GateCard(gate, Optional.of(because));
  }

  private static Optional<EntryId> fault(Timeline timeline) {
    Optional<EntryId> open = Optional.empty();
    for (Entry.Event event : timeline.entries(Entry.Event.class)) {
      open =
          switch (event.kind()) {
            case CRASH, FAULT_SEEN -> Optional.of(event.id());
            case CHECKED_SOUND -> Optional.empty();
            case PART_CHANGED -> open;
          };
    }
    return open;
  }

  private static boolean outside(Timeline timeline, Sheet sheet, Entry.Session session) {
    Optional<Entry.Baseline> baseline = timeline.baselineOn(session.day());
    for (Placed placed : session.end().placed()) {
      Optional<Setting> setting = sheet.setting(placed.setting());
      if (setting.isPresent()
          && (!Bounds.isInside(sheet, setting.get(), placed.reading())
              || Legs.differ(
                  setting.get(),
                  placed.reading(),
                  baseline.flatMap(each -> Legs.meant(each.setup(), setting.get()))))) {
        return true;
      }
    }
    return false;
  }

  /**
   * Settings were moved in the session before, it has no check at its end, and nothing since has
   * shown how the bike stands: what is reckoned from may not be what was ridden.
   */
  private static Optional<EntryId> notCheckedAfter(Timeline timeline, Entry.Session last) {
    Optional<EntryId> open = Optional.empty();
    for (Entry.Session each : timeline.entries(Entry.Session.class)) {
      boolean moved = each.motos().stream().anyMatch(moto -> !moto.changes().isEmpty());
      if (each.check().isPresent()) {
        open = Optional.empty();
      } else if (moved && !each.id().equals(last.id())) {
        open = Optional.of(each.id());
      }
      if (each.id().equals(last.id())) {
        break;
      }
    }
    return open;
  }

  private static boolean due(Timeline timeline, ServiceItem item) {
    double interval = item.interval().doubleIn(Duration.HOUR);
    return timeline.hours().since(item) >= interval;
  }

  /** The front wheel was out for a fork job or a part, and no session since notes the axle. */
  private static Optional<EntryId> wheelOut(Timeline timeline, Entry.Session last) {
    Optional<EntryId> open = Optional.empty();
    for (Entry entry : timeline.entries()) {
      if (entry.day().isAfter(last.day())) {
        break;
      }
      boolean out =
          entry instanceof Entry.RebuildJob rebuild && rebuild.job().fork()
              || entry instanceof Entry.Event event
                  && event.kind() == EventKind.PART_CHANGED
                  && event.end().equals(Optional.of(End.FRONT));
      boolean aligned =
          entry instanceof Entry.Session session
              && session.conditions().ready().contains(Ready.AXLE_ALIGNED);
      open = out ? Optional.of(entry.id()) : aligned ? Optional.empty() : open;
    }
    return open;
  }

  /** Dismissed on this day or later; a fault or crash only by a check, never by a reason. */
  private static boolean dismissed(Timeline timeline, Entry.Session session, Gate gate) {
    return gate != Gate.FAULT_OR_CRASH
        && timeline.entries(Entry.GateDismissed.class).stream()
            .anyMatch(each -> each.gate() == gate && !each.day().isBefore(session.day()));
  }
}
