package rutbook.json;

import java.time.LocalDate;
import java.util.Set;
import rutbook.notebook.Entry;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Setup;
import rutbook.notebook.Shared;
import rutbook.notebook.Snapshot;

/** A setup handed over. */
final class HandedOverShape extends EntryShape<Entry.HandedOver> {
  private final Field<HandOverId> handOver =
      required("handOver", Ids.HAND_OVER, Entry.HandedOver::handOver);
  private final Field<Snapshot> snapshot =
      required("snapshot", new SnapshotShape(), Entry.HandedOver::snapshot);
  private final Field<String> sha256 = required("sha256", Texts.TEXT, Entry.HandedOver::sha256);

  HandedOverShape() {
    super("handed-over");
  }

  @Override
  Entry.HandedOver make(Got got) {
    return new Entry.HandedOver(head(got), got.get(handOver), got.get(snapshot), got.get(sha256));
  }

  /** What was handed over. */
  private static final class SnapshotShape extends RecordShape<Snapshot> {
    private final Field<Setup> setup = required("setup", new SetupShape(), Snapshot::setup);
    private final Field<LocalDate> sheetFrom =
        required("sheetFrom", Texts.DAY, Snapshot::sheetFrom);
    private final Field<Set<Shared>> shared =
        usually(Set.of(), "shared", Words.several(Shared.class), Snapshot::shared);

    @Override
    Snapshot make(Got got) {
      return new Snapshot(got.get(setup), got.get(sheetFrom), got.get(shared));
    }
  }
}
