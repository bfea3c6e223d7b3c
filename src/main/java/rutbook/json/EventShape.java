package rutbook.json;

import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EventKind;
import rutbook.notebook.FaultSeen;

/** A crash, a part changed, a fault seen, the bike checked. */
final class EventShape extends EntryShape<Entry.Event> {
  private final Field<EventKind> event =
      required("event", Words.of(EventKind.class), Entry.Event::kind);
  private final Field<Optional<End>> end = optional("end", Words.of(End.class), Entry.Event::end);
  private final Field<Optional<FaultSeen>> fault =
      optional("fault", Words.of(FaultSeen.class), Entry.Event::fault);
  private final Field<String> what = note("what", Entry.Event::what);

  EventShape() {
    super("event");
  }

  @Override
  Entry.Event make(Got got) {
    return new Entry.Event(head(got), got.get(event), got.get(end), got.get(fault), got.get(what));
  }
}
