package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberId;
import rutbook.notebook.ChamberVolume;
import rutbook.notebook.Measure;
import rutbook.notebook.Range;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/** The chamber that a fill goes into, as questions of its form: least, nominal, most, volume. */
final class FillPart {
  private final Form form;
  private final Optional<Chamber> before;
  private final ChamberId id;
  private final AskText<String> name;
  private final AskOne<Measure> measure;
  private final AskText<Amount> least;
  private final AskText<Optional<Amount>> nominal;
  private final AskText<Amount> most;
  private final AskText<Optional<Amount>> volume;
  private final AskOne<Boolean> measured;

  FillPart(Form form, Optional<Chamber> chamber) {
    this.form = form;
    this.before = chamber;
    BikeDesk desk = form.desk();
    Fields fields = form.fields();
    id = chamber.map(Chamber::id).orElseGet(() -> new ChamberId(desk.desk().ids().next()));
    form.say(Keys.prose(desk.text("chamber.caution"), "soft", "condensed"));
    name =
        form.ask(
            fields.line(
                "chamber-name",
                "chamber.name",
                chamber.map(Chamber::name).orElseGet(() -> desk.text("chamber.leg"))));
    measure =
        form.ask(
            new AskOne<>(
                "chamber-measure",
                desk.text("chamber.measure"),
                List.of(Measure.values()),
                chamber.map(Chamber::measure).orElse(Measure.VOLUME),
                desk.words()::name));
    least =
        form.ask(
            fields.amountIn(
                "chamber-least",
                "chamber.least",
                chamber.map(each -> each.limits().least()),
                this::unit));
    most =
        form.ask(
            fields.amountIn(
                "chamber-most",
                "chamber.most",
                chamber.map(each -> each.limits().most()),
                this::unit));
    nominal =
        form.ask(
            fields.maybeIn(
                "chamber-nominal",
                "chamber.nominal",
                chamber.flatMap(Chamber::nominal),
                this::unit));
    volume =
        form.ask(
            fields.amount(
                "chamber-volume",
                "chamber.volume",
                chamber.flatMap(Chamber::volume).map(ChamberVolume::volume),
                Dimension.VOLUME));
    measured =
        form.wide(
            new AskOne<>(
                "chamber-measured",
                desk.text("chamber.measured"),
                List.of(true, false),
                chamber.flatMap(Chamber::volume).map(ChamberVolume::measured).orElse(false),
                yes -> desk.text(yes ? "chamber.measured.yes" : "chamber.measured.no")));
  }

  /** What a bare number is: the unit of before, while it is still measured that way. */
  Unit unit() {
    Dimension wanted = measure.read() == Measure.VOLUME ? Dimension.VOLUME : Dimension.LENGTH;
    return before
        .map(each -> each.limits().least().unit())
        .filter(unit -> unit.dimension() == wanted)
        .orElseGet(() -> form.desk().desk().notebook().display().unit(wanted));
  }

  Chamber read(Carrier carrier) {
    Amount from = form.take(least);
    Amount to = form.take(most);
    Range limits = form.blame(most, () -> new Range(from, to));
    Optional<Amount> usual = form.take(nominal);
    Optional<Amount> room = form.take(volume);
    Optional<ChamberVolume> whole =
        form.blame(
            volume, () -> room.map(amount -> new ChamberVolume(amount, form.take(measured))));
    Measure how = form.take(measure);
    String called = form.take(name);
    form.blame(
        least,
        () -> new Chamber(id, "x", carrier, how, limits, Optional.empty(), Optional.empty()));
    form.blame(nominal, () -> new Chamber(id, "x", carrier, how, limits, usual, Optional.empty()));
    return form.blame(name, () -> new Chamber(id, called, carrier, how, limits, usual, whole));
  }
}
