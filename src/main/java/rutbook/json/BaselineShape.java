package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Setup;
import rutbook.units.Amount;

/** The setup and sag to return to. */
final class BaselineShape extends EntryShape<Entry.Baseline> {
  private final Field<Setup> setup = required("setup", new SetupShape(), Entry.Baseline::setup);
  private final Field<Optional<Amount>> raceSag =
      optional("raceSag", AmountShape.AMOUNT, Entry.Baseline::raceSag);
  private final Field<Optional<Amount>> freeSag =
      optional("freeSag", AmountShape.AMOUNT, Entry.Baseline::freeSag);
  private final Field<String> reason = note("reason", Entry.Baseline::reason);
  private final Field<Optional<EntryId>> rebuild =
      optional("rebuild", Ids.ENTRY, Entry.Baseline::rebuild);

  BaselineShape() {
    super("baseline");
  }

  @Override
  Entry.Baseline make(Got got) {
    return new Entry.Baseline(
        head(got),
        got.get(setup),
        got.get(raceSag),
        got.get(freeSag),
        got.get(reason),
        got.get(rebuild));
  }
}
