package rutbook.json;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.units.Amount;

/** What every entry begins with: its kind and its head, without a level of its own. */
abstract class EntryShape<E extends Entry> extends RecordShape<E> {
  private final Field<EntryId> id = required("id", Ids.ENTRY, Entry::id);
  private final Field<BikeId> bike = required("bike", Ids.BIKE, Entry::bike);
  private final Field<LocalDate> day = required("day", Texts.DAY, Entry::day);
  private final Field<Integer> order =
      usually(0, "order", Numbers.WHOLE, entry -> entry.head().order());
  private final Field<Optional<LocalTime>> time =
      optional("time", Texts.TIME, entry -> entry.head().time());
  private final Field<Optional<Amount>> meter =
      optional("meter", AmountShape.AMOUNT, entry -> entry.head().meter());
  private final Field<String> note = note("note", entry -> entry.head().note());

  EntryShape(String word) {
    super(word);
  }

  final Head head(Got got) {
    return new Head(
        got.get(id),
        got.get(bike),
        got.get(day),
        got.get(order),
        got.get(time),
        got.get(meter),
        got.get(note));
  }
}
