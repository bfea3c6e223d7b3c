package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Rider;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** What a rider weighs in full gear from a day on; earlier weights stay. */
final class WeightForm extends Form {
  private final Rider rider;
  private final AskText<String> name;
  private final AskText<Amount> weight;
  private final AskText<LocalDate> from;

  WeightForm(BikeDesk desk, Rider rider, Runnable close) {
    super(desk, "weight-form", desk.text("weight.form", rider.name()), close);
    this.rider = rider;
    name = wide(fields().line("weight-name", "weight.name", rider.name()));
    var now = rider.weightOn(desk.desk().today());
    weight =
        ask(
            fields()
                .needed("weight-in-gear", "sag.weight", now, fields().usual(now, Dimension.MASS)));
    from = ask(fields().day("weight-from", "weight.from", desk.desk().today()));
  }

  @Override
  void save() {
    Amount inGear = take(weight);
    LocalDate day = take(from);
    Rider.Weight next = blame(weight, () -> new Rider.Weight(day, inGear));
    List<Rider.Weight> weights = new ArrayList<>(rider.weights());
    boolean same = rider.weightOn(day).map(known -> known.equals(inGear)).orElse(false);
    if (!same) {
      weights.removeIf(each -> each.from().equals(day));
      weights.add(next);
    }
    Rider changed = blame(name, () -> new Rider(rider.id(), take(name), weights));
    desk().make(new ShelfEdit.PutRider(changed)).ifPresentOrElse(this::refuse, this::close);
  }
}
