package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rutbook.notebook.AirLeg;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Parts;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** How the fork is built, as far as it is known; what is missing makes its curve an estimate. */
final class ForkForm extends SheetForm {
  private final AskOne<ForkKind> kind;
  private final AskText<Optional<Amount>> travel;
  private final AskText<Optional<Amount>> seal;
  private final AskText<Optional<Amount>> bore;
  private final AskText<Optional<Amount>> rod;
  private final AskText<Optional<Amount>> steel;
  private final AskText<Optional<Amount>> piston;
  private final AskText<Optional<Amount>> positive;
  private final AskText<Optional<Amount>> negative;
  private final AskText<String> valving;

  ForkForm(BikeDesk desk, Runnable close) {
    super(desk, "fork-form", desk.text("fork.form"), close);
    ForkParts now = desk.model().sheet().parts().fork();
    kind =
        wide(
            new AskOne<>(
                "fork-kind",
                desk.text("start.fork"),
                List.of(ForkKind.values()),
                now.kind(),
                each -> desk.text("fork." + each.name())));
    travel = ask(length("fork-travel", "fork.travel", now.travel()));
    seal = ask(length("fork-seal", "fork.seal", now.sealDiameter()));
    bore = ask(length("fork-bore", "fork.bore", now.tubeBore()));
    rod = ask(length("fork-rod", "fork.rod", now.cartridgeRod()));
    steel = wide(volume("fork-steel", "fork.steel", now.springSteel()));
    steel.hint(desk.text("fork.steel.hint"));
    say(Keys.prose(desk.text("fork.air.hint"), "soft", "condensed"));
    piston = wide(length("fork-piston", "fork.piston", now.airLeg().map(AirLeg::pistonDiameter)));
    positive =
        ask(volume("fork-positive", "fork.positive", now.airLeg().map(AirLeg::positiveVolume)));
    negative =
        ask(volume("fork-negative", "fork.negative", now.airLeg().map(AirLeg::negativeVolume)));
    valving = wide(fields().line("fork-valving", "valving", now.valving()));
    valving.hint(desk.text("valving.hint"));
  }

  private AskText<Optional<Amount>> length(String id, String label, Optional<Amount> now) {
    return fields().amount(id, label, now, Dimension.LENGTH);
  }

  private AskText<Optional<Amount>> volume(String id, String label, Optional<Amount> now) {
    return fields().amount(id, label, now, Dimension.VOLUME);
  }

  @Override
  Sheet next(Sheet sheet) {
    ForkParts bare = ForkParts.of(take(kind));
    ForkParts next = bare;
    next = with(next, travel, parts -> copy(parts, take(travel), 0));
    next = with(next, seal, parts -> copy(parts, take(seal), 1));
    next = with(next, bore, parts -> copy(parts, take(bore), 2));
    next = with(next, rod, parts -> copy(parts, take(rod), 3));
    next = with(next, steel, parts -> copy(parts, take(steel), 4));
    Optional<AirLeg> air = airLeg();
    ForkParts built = next;
    ForkParts whole =
        blame(
            valving,
            () ->
                new ForkParts(
                    built.kind(),
                    built.travel(),
                    built.sealDiameter(),
                    built.tubeBore(),
                    built.cartridgeRod(),
                    built.springSteel(),
                    air,
                    take(valving)));
    Parts parts = sheet.parts();
    return sheet.withParts(new Parts(whole, parts.shock(), parts.geometry(), parts.sag()));
  }

  private ForkParts with(ForkParts parts, AskText<?> ask, UnaryOperator<ForkParts> change) {
    return blame(ask, () -> change.apply(parts));
  }

  /** One length of the fork put in its place, checked alone so that the right field is blamed. */
  private static ForkParts copy(ForkParts parts, Optional<Amount> amount, int place) {
    return new ForkParts(
        parts.kind(),
        place == 0 ? amount : parts.travel(),
        place == 1 ? amount : parts.sealDiameter(),
        place == 2 ? amount : parts.tubeBore(),
        place == 3 ? amount : parts.cartridgeRod(),
        place == 4 ? amount : parts.springSteel(),
        parts.airLeg(),
        parts.valving());
  }

  /** All three or none: no curve is drawn without the negative chamber. */
  private Optional<AirLeg> airLeg() {
    Optional<Amount> diameter = take(piston);
    Optional<Amount> main = take(positive);
    Optional<Amount> other = take(negative);
    if (diameter.isEmpty() && main.isEmpty() && other.isEmpty()) {
      return Optional.empty();
    }
    for (AskText<Optional<Amount>> ask : List.of(piston, positive, negative)) {
      if (ask.read().isEmpty()) {
        throw new Refused(ask, desk().text("fork.air.all"));
      }
    }
    Amount one = main.get();
    blame(piston, () -> new AirLeg(diameter.get(), one, one));
    blame(positive, () -> new AirLeg(diameter.get(), one, one));
    return Optional.of(blame(negative, () -> new AirLeg(diameter.get(), one, other.get())));
  }
}
