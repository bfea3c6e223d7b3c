package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import rutbook.figures.SagByLengths;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.Rider;
import rutbook.notebook.SagLengths;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Dimension;

/** Sag of one end: by three lengths, which show the friction, or as it was read off. */
final class SagForm extends EntryForm<Entry.SagMeasured> {
  private final AskOne<End> end;
  private final AskText<Optional<Amount>> extended;
  private final AskText<Optional<Amount>> pushedDown;
  private final AskText<Optional<Amount>> liftedUp;
  private final Label reckoned = Keys.prose("", "strong");
  private final AskText<Optional<Amount>> race;
  private final AskText<Optional<Amount>> free;
  private final AskText<Optional<Amount>> weight;
  private final AskText<Optional<Amount>> fuel;

  SagForm(BikeDesk desk, Optional<Entry.SagMeasured> before, Runnable close) {
    super(desk, "sag-form", desk.text("sag.form"), before, close);
    end =
        wide(
            new AskOne<>(
                "sag-end",
                desk.text("sag.end"),
                List.of(End.REAR, End.FRONT),
                before.map(Entry.SagMeasured::end).orElse(End.REAR),
                desk.words()::name));
    say(Keys.prose(desk.text("sag.hint"), "soft", "condensed"));
    Optional<SagLengths> lengths = before.flatMap(Entry.SagMeasured::lengths);
    extended = wide(length("sag-extended", lengths.map(SagLengths::extended)));
    pushedDown = ask(length("sag-pushed-down", lengths.map(SagLengths::pushedDown)));
    liftedUp = ask(length("sag-lifted-up", lengths.map(SagLengths::liftedUp)));
    reckoned.setId("sag-reckoned");
    say(reckoned);
    race = ask(length("sag-race", before.flatMap(Entry.SagMeasured::race)));
    free = ask(length("sag-free", before.flatMap(Entry.SagMeasured::free)));
    weight =
        ask(
            fields()
                .amount(
                    "sag-weight",
                    "sag.weight",
                    before.isPresent() ? before.flatMap(Entry.SagMeasured::weight) : known(desk),
                    Dimension.MASS));
    fuel =
        ask(
            fields()
                .amount(
                    "sag-fuel",
                    "sag.fuel",
                    before.flatMap(Entry.SagMeasured::fuel),
                    Dimension.VOLUME));
    askDayAndMeter("sag");
    askNote("sag");
    for (AskText<?> ask : List.of(extended, pushedDown, liftedUp)) {
      ask.field().textProperty().addListener((text, was, now) -> reckon());
    }
    reckon();
  }

  private AskText<Optional<Amount>> length(String id, Optional<Amount> before) {
    return fields().amount(id, id.replaceFirst("-", "."), before, Dimension.LENGTH);
  }

  /** The rider who rode this bike last, or the only one. */
  private static Optional<Amount> known(BikeDesk desk) {
    List<Rider> riders = desk.desk().notebook().shelf().riders();
    return desk.model()
        .timeline()
        .latest(Entry.Session.class)
        .flatMap(session -> desk.desk().notebook().shelf().rider(session.rider()))
        .or(() -> riders.stream().findFirst())
        .flatMap(rider -> rider.weightOn(desk.desk().today()));
  }

  /** Shows what the three lengths come to while they are typed. */
  private void reckon() {
    String said = "";
    try {
      Optional<SagLengths> lengths = lengths();
      said =
          lengths
              .flatMap(SagByLengths::of)
              .map(sag -> desk().text("sag.reckoned", sag.sag(), sag.friction()))
              .orElse("");
    } catch (AmountException | rutbook.notebook.NotebookException halfTyped) {
      said = "";
    }
    reckoned.setText(said);
    reckoned.setVisible(!said.isEmpty());
    reckoned.setManaged(!said.isEmpty());
  }

  private Optional<SagLengths> lengths() {
    Optional<Amount> a = extended.read();
    Optional<Amount> b = pushedDown.read();
    Optional<Amount> c = liftedUp.read();
    return a.isPresent() && b.isPresent() && c.isPresent()
        ? Optional.of(new SagLengths(a.get(), b.get(), c.get()))
        : Optional.empty();
  }

  @Override
  Entry.SagMeasured next(Head head) {
    Optional<Amount> a = take(extended);
    Optional<Amount> b = take(pushedDown);
    Optional<Amount> c = take(liftedUp);
    boolean some = a.isPresent() || b.isPresent() || c.isPresent();
    for (AskText<Optional<Amount>> ask : List.of(extended, pushedDown, liftedUp)) {
      if (some && ask.read().isEmpty()) {
        throw new Refused(ask, desk().text("sag.all.three"));
      }
    }
    Optional<SagLengths> lengths = blame(extended, this::lengths);
    Optional<SagByLengths> sag = lengths.flatMap(SagByLengths::of);
    if (sag.isPresent() && sag.get().sag().value().signum() <= 0) {
      throw new Refused(extended, desk().text("sag.extended.least"));
    }
    Optional<Amount> raceSag = sag.map(SagByLengths::sag).or(() -> take(race));
    if (raceSag.isEmpty() && take(free).isEmpty()) {
      throw new Refused(race, desk().text("sag.nothing"));
    }
    Optional<Amount> rider = take(weight);
    return blame(
        weight,
        () ->
            new Entry.SagMeasured(
                head, take(end), raceSag, take(free), lengths, rider, take(fuel)));
  }
}
