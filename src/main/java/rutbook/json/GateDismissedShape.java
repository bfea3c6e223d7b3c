package rutbook.json;

import rutbook.notebook.Entry;
import rutbook.notebook.Gate;

/** A gate waved through. */
final class GateDismissedShape extends EntryShape<Entry.GateDismissed> {
  private final Field<Gate> gate =
      required("gate", Words.of(Gate.class), Entry.GateDismissed::gate);
  private final Field<String> reason = required("reason", Texts.TEXT, Entry.GateDismissed::reason);

  GateDismissedShape() {
    super("gate-dismissed");
  }

  @Override
  Entry.GateDismissed make(Got got) {
    return new Entry.GateDismissed(head(got), got.get(gate), got.get(reason));
  }
}
