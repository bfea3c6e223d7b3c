package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.units.Amount;

/** An oil on the shelf. */
final class OilShape extends RecordShape<Oil> {
  {
    onOneLine();
  }

  private final Field<OilId> id = required("id", Ids.OIL, Oil::id);
  private final Field<String> name = required("name", Texts.TEXT, Oil::name);
  private final Field<Optional<Amount>> kv40 = optional("kv40", AmountShape.AMOUNT, Oil::kv40);
  private final Field<Optional<Amount>> kv100 = optional("kv100", AmountShape.AMOUNT, Oil::kv100);

  @Override
  Oil make(Got got) {
    return new Oil(got.get(id), got.get(name), got.get(kv40), got.get(kv100));
  }
}
