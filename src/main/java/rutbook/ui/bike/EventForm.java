package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EventKind;
import rutbook.notebook.FaultSeen;
import rutbook.notebook.Head;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;

/** A crash, a part changed, a fault seen, or the bike checked and found sound. */
final class EventForm extends EntryForm<Entry.Event> {
  private final AskOne<EventKind> kind;
  private final AskOne<Optional<FaultSeen>> fault;
  private final AskOne<Optional<End>> end;
  private final AskText<String> what;

  EventForm(BikeDesk desk, Optional<Entry.Event> before, EventKind offered, Runnable close) {
    super(desk, "event-form", desk.text("event.form"), before, close);
    kind =
        wide(
            new AskOne<>(
                    "event-kind",
                    desk.text("event.kind"),
                    Arrays.asList(EventKind.values()),
                    before.map(Entry.Event::kind).orElse(offered),
                    desk.words()::name)
                .whenChosen(next -> showFault()));
    fault =
        wide(
            new AskOne<>(
                "event-fault",
                desk.text("event.fault"),
                Arrays.stream(FaultSeen.values()).map(Optional::of).toList(),
                before.flatMap(Entry.Event::fault),
                each -> each.map(desk.words()::name).orElse("")));
    List<Optional<End>> ends = new ArrayList<>();
    Arrays.stream(End.values()).forEach(each -> ends.add(Optional.of(each)));
    end =
        wide(
            new AskOne<>(
                "event-end",
                desk.text("event.end"),
                ends,
                before.flatMap(Entry.Event::end),
                each -> each.map(desk.words()::name).orElse("")));
    what =
        wide(fields().line("event-what", "event.what", before.map(Entry.Event::what).orElse("")));
    what.example(desk.text("event.what.example"));
    askDayAndMeter("event");
    askNote("event");
    showFault();
  }

  /** Which fault is asked only where one was seen. */
  private void showFault() {
    boolean seen = kind.read() == EventKind.FAULT_SEEN;
    fault.setVisible(seen);
    fault.setManaged(seen);
  }

  @Override
  Entry.Event next(Head head) {
    EventKind happened = take(kind);
    boolean seen = happened == EventKind.FAULT_SEEN;
    if (seen && take(fault).isEmpty()) {
      throw new Refused(fault, desk().text("event.which.fault"));
    }
    return blame(
        what,
        () ->
            new Entry.Event(
                head, happened, take(end), seen ? take(fault) : Optional.empty(), take(what)));
  }
}
