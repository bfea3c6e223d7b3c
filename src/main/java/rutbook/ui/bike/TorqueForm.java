package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Fastener;
import rutbook.notebook.Sheet;
import rutbook.notebook.Tightening;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** A line of the torque table; there is none without the place where it was read. */
final class TorqueForm extends SheetForm {
  private final Optional<Tightening> before;
  private final AskOne<Fastener> fastener;
  private final AskText<String> name;
  private final AskText<Amount> amount;
  private final AskText<String> source;

  TorqueForm(BikeDesk desk, Optional<Integer> place, Runnable close) {
    super(desk, "torque-form", desk.text("torque.form"), close);
    before = place.map(desk.model().sheet().torques()::get);
    fastener =
        wide(
            new AskOne<>(
                "torque-fastener",
                desk.text("torque.fastener"),
                Arrays.asList(Fastener.values()),
                before.map(Tightening::fastener).orElse(Fastener.FORK_CAP),
                desk.words()::name));
    name =
        wide(fields().line("torque-name", "torque.name", before.map(Tightening::name).orElse("")));
    Optional<Amount> now = before.map(Tightening::amount);
    amount =
        wide(
            fields()
                .needed(
                    "torque-amount", "torque.amount", now, fields().usual(now, Dimension.TORQUE)));
    source =
        wide(
            fields()
                .line("torque-source", "torque.source", before.map(Tightening::source).orElse("")));
    source.example(desk.text("torque.source.example"));
    if (before.isEmpty()) {
      name.example(desk.text("torque.name.example"));
    } else {
      key("torque-remove", desk.text("remove"), this::remove);
    }
  }

  @Override
  Sheet next(Sheet sheet) {
    Fastener which = take(fastener);
    String called = take(name).isBlank() ? desk().words().name(which) : take(name);
    Amount torque = take(amount);
    blame(amount, () -> new Tightening(which, "x", torque, "x"));
    blame(name, () -> new Tightening(which, called, torque, "x"));
    Tightening next = blame(source, () -> new Tightening(which, called, torque, take(source)));
    List<Tightening> torques = new ArrayList<>(sheet.torques());
    int place = before.map(torques::indexOf).orElse(-1);
    if (place >= 0) {
      torques.set(place, next);
    } else {
      torques.add(next);
    }
    return sheet.withTorques(torques);
  }

  private void remove() {
    Sheet sheet = desk().model().sheet();
    List<Tightening> torques = new ArrayList<>(sheet.torques());
    before.ifPresent(torques::remove);
    put(sheet.withTorques(torques));
  }
}
