package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Dimension;
import rutbook.units.Unit;
import rutbook.words.BikeWords;

/** The fields of the page's forms, by what is typed into them. */
final class Fields {
  private final BikeDesk desk;

  Fields(BikeDesk desk) {
    this.desk = desk;
  }

  private BikeWords words() {
    return desk.words();
  }

  /** An amount that may be left out; a bare number takes the unit it was written in, or the own. */
  AskText<Optional<Amount>> amount(
      String id, String label, Optional<Amount> before, Dimension dimension) {
    Unit usual = usual(before, dimension);
    return AskText.<Amount>optional(
        id, label(label, usual), text(before), text -> parse(text, usual));
  }

  /** An amount that there must be. */
  AskText<Amount> needed(String id, String label, Optional<Amount> before, Unit usual) {
    return new AskText<>(id, label(label, usual), text(before), text -> parse(text, usual));
  }

  /** An amount that there must be, in the unit that holds while it is read. */
  AskText<Amount> amountIn(String id, String label, Optional<Amount> before, Supplier<Unit> usual) {
    return new AskText<>(id, words().text(label), text(before), text -> parse(text, usual.get()));
  }

  /** The same where it may be left out. */
  AskText<Optional<Amount>> maybeIn(
      String id, String label, Optional<Amount> before, Supplier<Unit> usual) {
    return maybe(id, words().text(label), before, usual);
  }

  /** The same with its label already in words. */
  AskText<Optional<Amount>> maybe(
      String id, String label, Optional<Amount> before, Supplier<Unit> usual) {
    return AskText.<Amount>optional(id, label, text(before), text -> parse(text, usual.get()));
  }

  private String label(String key, Unit usual) {
    return words()
        .text("field.unit", words().text(key), desk.desk().phrases().amounts().name(usual));
  }

  private Amount parse(String text, Unit usual) {
    return AmountText.parse(text, usual, desk.desk().words().locale());
  }

  Unit usual(Optional<Amount> before, Dimension dimension) {
    return before.map(Amount::unit).orElse(desk.desk().notebook().display().unit(dimension));
  }

  private String text(Optional<Amount> amount) {
    return amount.map(words()::written).orElse("");
  }

  /** A name or a note; whether it may be empty is for the notebook to say. */
  AskText<String> line(String id, String label, String before) {
    return new AskText<>(id, words().text(label), before, text -> text);
  }

  /** A day, typed as year-month-day. */
  AskText<LocalDate> day(String id, String label, LocalDate before) {
    return new AskText<>(id, words().text(label), before.toString(), LocalDate::parse);
  }

  /** A whole number of something that may be left out. */
  AskText<Optional<Integer>> whole(String id, String label, Optional<Integer> before) {
    return AskText.<Integer>optional(
        id,
        words().text(label),
        before.map(String::valueOf).orElse(""),
        text -> {
          try {
            return Integer.valueOf(text.strip());
          } catch (NumberFormatException none) {
            throw new AmountException(AmountException.Fault.NO_NUMBER, text);
          }
        });
  }
}
