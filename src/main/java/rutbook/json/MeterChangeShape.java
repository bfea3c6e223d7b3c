package rutbook.json;

import rutbook.notebook.Entry;
import rutbook.units.Amount;

/** A new or reset hour meter. */
final class MeterChangeShape extends EntryShape<Entry.MeterChange> {
  private final Field<Amount> oldReads =
      required("oldReads", AmountShape.AMOUNT, Entry.MeterChange::oldReads);
  private final Field<Amount> newReads =
      required("newReads", AmountShape.AMOUNT, Entry.MeterChange::newReads);

  MeterChangeShape() {
    super("meter-change");
  }

  @Override
  Entry.MeterChange make(Got got) {
    return new Entry.MeterChange(head(got), got.get(oldReads), got.get(newReads));
  }
}
