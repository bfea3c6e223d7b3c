package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;

/** What a setting is put to, asked leg by leg where it is in both. */
final class Legs {
  private final Form form;
  private final Setting setting;
  private final Reading now;
  private final List<AskText<Optional<Amount>>> asks = new ArrayList<>();

  Legs(Form form, Setting setting, Reading now) {
    this.form = form;
    this.setting = setting;
    this.now = now;
    String id = "put-" + setting.id();
    if (setting.carrier() == Carrier.PAIR) {
      asks.add(form.ask(leg(id + "-left", "put.left", Side.LEFT)));
      asks.add(form.ask(leg(id + "-right", "put.right", Side.RIGHT)));
    } else {
      asks.add(form.wide(leg(id, "put.one", Side.LEFT)));
    }
  }

  private AskText<Optional<Amount>> leg(String id, String label, Side side) {
    AskText<Optional<Amount>> ask =
        form.fields()
            .maybe(
                id,
                form.desk().text(label, setting.name()),
                now.leg(side).known(),
                () -> setting.scale().step().unit());
    ask.example(form.desk().words().range(form.desk().model().sheet().limits(setting)));
    return ask;
  }

  /**
   * What was typed, inside the limits of a sheet; empty where it is as it was.
   *
   * @throws Refused below the leg that is beyond a limit, or left open beside the other
   */
  Optional<Reading> read(Sheet sheet) {
    List<Amount> amounts = new ArrayList<>();
    for (AskText<Optional<Amount>> ask : asks) {
      Optional<Amount> typed = form.take(ask);
      typed.ifPresent(
          amount ->
              Bounds.refusal(sheet, setting, amount)
                  .ifPresent(
                      fault -> {
                        throw new Refused(ask, form.desk().words().fault(fault));
                      }));
      typed.ifPresent(amounts::add);
    }
    if (amounts.isEmpty()) {
      return Optional.empty();
    }
    if (amounts.size() < asks.size()) {
      throw new Refused(
          asks.get(asks.get(0).read().isEmpty() ? 0 : 1), form.desk().text("put.both"));
    }
    Reading next =
        amounts.size() == 2
            ? Reading.of(amounts.get(0), amounts.get(1))
            : Reading.of(amounts.get(0));
    return next.sameAs(now) ? Optional.empty() : Optional.of(next);
  }

  Setting setting() {
    return setting;
  }

  AskText<Optional<Amount>> first() {
    return asks.get(0);
  }
}
