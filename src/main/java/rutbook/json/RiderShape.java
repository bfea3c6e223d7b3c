package rutbook.json;

import java.time.LocalDate;
import java.util.List;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.units.Amount;

/** A rider with weights in gear. */
final class RiderShape extends RecordShape<Rider> {
  private final Field<RiderId> id = required("id", Ids.RIDER, Rider::id);
  private final Field<String> name = required("name", Texts.TEXT, Rider::name);
  private final Field<List<Rider.Weight>> weights =
      list("weights", new WeightShape(), Rider::weights);

  @Override
  Rider make(Got got) {
    return new Rider(got.get(id), got.get(name), got.get(weights));
  }

  /** From a day on. */
  private static final class WeightShape extends RecordShape<Rider.Weight> {
    {
      onOneLine();
    }

    private final Field<LocalDate> from = required("from", Texts.DAY, Rider.Weight::from);
    private final Field<Amount> inGear =
        required("inGear", AmountShape.AMOUNT, Rider.Weight::inGear);

    @Override
    Rider.Weight make(Got got) {
      return new Rider.Weight(got.get(from), got.get(inGear));
    }
  }
}
