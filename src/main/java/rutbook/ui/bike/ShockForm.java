package rutbook.ui.bike;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Parts;
import rutbook.notebook.Range;
import rutbook.notebook.RatioConvention;
import rutbook.notebook.Sheet;
import rutbook.notebook.ShockParts;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/** How the rear is built, and the springs at hand. */
final class ShockForm extends SheetForm {
  private final AskText<Optional<Amount>> travel;
  private final AskText<Optional<BigDecimal>> ratio;
  private final AskOne<RatioConvention> convention;
  private final AskText<Optional<Amount>> freeLength;
  private final AskText<Optional<Amount>> pitch;
  private final AskText<List<Amount>> springs;
  private final AskOne<Boolean> charged;
  private final AskText<Optional<Amount>> gasLeast;
  private final AskText<Optional<Amount>> gasMost;
  private final AskText<String> valving;

  ShockForm(BikeDesk desk, Runnable close) {
    super(desk, "shock-form", desk.text("shock.form"), close);
    ShockParts now = desk.model().sheet().parts().shock();
    travel = ask(length("shock-travel", "shock.travel", now.wheelTravel()));
    freeLength = ask(length("shock-free-length", "shock.free.length", now.springFreeLength()));
    pitch = ask(length("shock-pitch", "shock.pitch", now.collarPitch()));
    ratio =
        ask(
            AskText.<BigDecimal>optional(
                "shock-ratio",
                desk.text("shock.ratio"),
                now.motionRatio().map(each -> written(desk, each.value())).orElse(""),
                ShockForm::number));
    convention =
        wide(
            new AskOne<>(
                "shock-convention",
                desk.text("shock.convention"),
                List.of(RatioConvention.values()),
                now.motionRatio()
                    .map(MotionRatio::convention)
                    .orElse(RatioConvention.SPRING_OVER_WHEEL),
                desk.words()::name));
    Unit unit = fields().usual(now.springsAtHand().stream().findFirst(), Dimension.SPRING_RATE);
    springs =
        wide(
            new AskText<>(
                "shock-springs",
                desk.text("shock.springs"),
                now.springsAtHand().stream()
                    .map(desk.words()::written)
                    .collect(Collectors.joining("; ")),
                text -> amounts(text, unit)));
    springs.example(desk.text("shock.springs.example"));
    charged =
        wide(
            new AskOne<>(
                "shock-charged",
                desk.text("shock.charged"),
                List.of(true, false),
                now.chargedReservoir(),
                yes -> desk.text(yes ? "yes" : "no")));
    charged.hint(desk.text("shock.charged.caution"));
    gasLeast =
        ask(pressure("shock-gas-least", "shock.gas.from", now.gasPressure().map(Range::least)));
    gasMost = ask(pressure("shock-gas-most", "shock.gas.to", now.gasPressure().map(Range::most)));
    valving = wide(fields().line("shock-valving", "valving", now.valving()));
    valving.hint(desk.text("valving.hint"));
  }

  private AskText<Optional<Amount>> length(String id, String label, Optional<Amount> now) {
    return fields().amount(id, label, now, Dimension.LENGTH);
  }

  private AskText<Optional<Amount>> pressure(String id, String label, Optional<Amount> now) {
    return fields().amount(id, label, now, Dimension.PRESSURE);
  }

  private Optional<Range> gas() {
    Optional<Amount> least = take(gasLeast);
    Optional<Amount> most = take(gasMost);
    if (least.isEmpty() && most.isEmpty()) {
      return Optional.empty();
    }
    if (least.isEmpty() || most.isEmpty()) {
      throw new Refused(least.isEmpty() ? gasLeast : gasMost, desk().text("setting.wish.both"));
    }
    Optional<Range> gas = Optional.of(blame(gasMost, () -> new Range(least.get(), most.get())));
    return blame(gasLeast, () -> ShockParts.unknown().withGas(gas)).gasPressure();
  }

  private static String written(BikeDesk desk, BigDecimal ratio) {
    char sign = desk.desk().settingWords().numerals().decimalSign();
    return ratio.toPlainString().replace('.', sign);
  }

  private static BigDecimal number(String text) {
    try {
      return new BigDecimal(text.strip().replace(',', '.'));
    } catch (NumberFormatException none) {
      throw new AmountException(AmountException.Fault.NO_NUMBER, text);
    }
  }

  /** Parted by semicolons, since a comma may stand in a number. */
  private List<Amount> amounts(String text, Unit unit) {
    List<Amount> amounts = new ArrayList<>();
    for (String part : text.split(";")) {
      if (!part.isBlank()) {
        amounts.add(AmountText.parse(part, unit, desk().desk().words().locale()));
      }
    }
    return amounts;
  }

  @Override
  Sheet next(Sheet sheet) {
    Optional<Amount> wheel = take(travel);
    Optional<Amount> length = take(freeLength);
    Optional<Amount> thread = take(pitch);
    Optional<BigDecimal> value = take(ratio);
    Optional<MotionRatio> motion =
        blame(ratio, () -> value.map(each -> new MotionRatio(each, take(convention))));
    List<Amount> atHand = take(springs);
    Optional<Amount> none = Optional.empty();
    blame(travel, () -> new ShockParts(wheel, motion, none, none, List.of(), true, ""));
    blame(freeLength, () -> new ShockParts(none, motion, length, none, List.of(), true, ""));
    blame(pitch, () -> new ShockParts(none, motion, none, thread, List.of(), true, ""));
    blame(springs, () -> new ShockParts(none, motion, none, none, atHand, true, ""));
    ShockParts next =
        blame(
            valving,
            () ->
                new ShockParts(
                    wheel, motion, length, thread, atHand, take(charged), take(valving), gas()));
    Parts parts = sheet.parts();
    return sheet.withParts(new Parts(parts.fork(), next, parts.geometry(), parts.sag()));
  }
}
