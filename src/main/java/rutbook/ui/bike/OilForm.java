package rutbook.ui.bike;

import java.util.Optional;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** An oil on the shelf with its two viscosities from the data sheet. */
final class OilForm extends Form {
  private final OilId id;
  private final AskText<String> name;
  private final AskText<Optional<Amount>> kv40;
  private final AskText<Optional<Amount>> kv100;

  OilForm(BikeDesk desk, Optional<Oil> before, Runnable close) {
    super(desk, "oil-form", desk.text("oil.form"), close);
    id = before.map(Oil::id).orElseGet(() -> new OilId(desk.desk().ids().next()));
    say(Keys.prose(desk.text("oil.hint"), "soft", "condensed"));
    name = wide(fields().line("oil-name", "oil.name", before.map(Oil::name).orElse("")));
    kv40 =
        ask(
            fields()
                .amount(
                    "oil-kv40",
                    "oil.kv40",
                    before.flatMap(Oil::kv40),
                    Dimension.KINEMATIC_VISCOSITY));
    kv100 =
        ask(
            fields()
                .amount(
                    "oil-kv100",
                    "oil.kv100",
                    before.flatMap(Oil::kv100),
                    Dimension.KINEMATIC_VISCOSITY));
  }

  @Override
  void save() {
    Optional<Amount> warm = take(kv40);
    Optional<Amount> hot = take(kv100);
    Optional<Amount> none = Optional.empty();
    blame(name, () -> new Oil(id, take(name), none, none));
    blame(kv40, () -> new Oil(id, "x", warm, none));
    Oil next = blame(kv100, () -> new Oil(id, take(name), warm, hot));
    desk().make(new ShelfEdit.PutOil(next)).ifPresentOrElse(this::refuse, this::close);
  }
}
