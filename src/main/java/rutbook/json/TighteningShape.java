package rutbook.json;

import rutbook.notebook.Fastener;
import rutbook.notebook.Tightening;
import rutbook.units.Amount;

/** A line of the torque table. */
final class TighteningShape extends RecordShape<Tightening> {
  {
    onOneLine();
  }

  private final Field<Fastener> fastener =
      required("fastener", Words.of(Fastener.class), Tightening::fastener);
  private final Field<String> name = required("name", Texts.TEXT, Tightening::name);
  private final Field<Amount> amount = required("amount", AmountShape.AMOUNT, Tightening::amount);
  private final Field<String> source = required("source", Texts.TEXT, Tightening::source);

  @Override
  Tightening make(Got got) {
    return new Tightening(got.get(fastener), got.get(name), got.get(amount), got.get(source));
  }
}
