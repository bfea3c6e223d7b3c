package rutbook.json;

import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.ServiceId;

/** Service items done. */
final class ServicedShape extends EntryShape<Entry.Serviced> {
  private final Field<List<ServiceId>> items =
      usually(List.of(), "items", new ListShape<>(Ids.SERVICE, true), Entry.Serviced::items);
  private final Field<String> by = note("by", Entry.Serviced::by);

  ServicedShape() {
    super("serviced");
  }

  @Override
  Entry.Serviced make(Got got) {
    return new Entry.Serviced(head(got), got.get(items), got.get(by));
  }
}
