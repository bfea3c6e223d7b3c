package rutbook.ui.controls;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Unit;

/** Reads an amount as a rider types it: 14, 1 3/4, 1¾ turns, 9.5 fl oz, 335ml, 0,9 bar. */
public final class TypedAmount {
  private static final Map<Character, String> FRACTIONS =
      Map.of(
          '¼', "0.25", '½', "0.5", '¾', "0.75", '⅛', "0.125", '⅜', "0.375", '⅝', "0.625", '⅞',
          "0.875");
  private static final Pattern FORM =
      Pattern.compile("(-?\\d*[.,]?\\d*)\\s*(?:(\\d+)\\s*/\\s*(\\d+)|([¼½¾⅛⅜⅝⅞]))?\\s*(.*)");
  private static final Pattern FRACTION_ALONE =
      Pattern.compile("(\\d+)\\s*/\\s*(\\d+)\\s*([^/\\d].*)?");

  private TypedAmount() {}

  /**
   * The amount; without a unit in the usual one.
   *
   * @throws AmountException when there is no number, or the unit is none or of another kind
   */
  public static Amount parse(String typed, Unit usual) {
    String text = typed.strip();
    if (text.isEmpty()) {
      throw new AmountException(AmountException.Fault.EMPTY, typed);
    }
    Matcher alone = FRACTION_ALONE.matcher(text);
    if (alone.matches()) {
      return new Amount(
          fraction(alone.group(1), alone.group(2), typed),
          unit(Optional.ofNullable(alone.group(3)).orElse(""), usual));
    }
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      throw new AmountException(AmountException.Fault.NO_NUMBER, typed);
    }
    BigDecimal whole = whole(matcher.group(1), matcher.group(4) != null, typed);
    BigDecimal part = BigDecimal.ZERO;
    if (matcher.group(2) != null) {
      part = fraction(matcher.group(2), matcher.group(3), typed);
    } else if (matcher.group(4) != null) {
      part = new BigDecimal(FRACTIONS.get(matcher.group(4).charAt(0)));
    }
    return new Amount(whole.add(part), unit(matcher.group(5), usual));
  }

  private static BigDecimal whole(String text, boolean mayBeMissing, String typed) {
    if (text.isEmpty() && mayBeMissing) {
      return BigDecimal.ZERO;
    }
    try {
      return new BigDecimal(text.replace(',', '.'));
    } catch (NumberFormatException none) {
      throw new AmountException(AmountException.Fault.NO_NUMBER, typed);
    }
  }

  private static BigDecimal fraction(String top, String bottom, String typed) {
    try {
      return new BigDecimal(top).divide(new BigDecimal(bottom));
    } catch (ArithmeticException endless) {
      throw new AmountException(AmountException.Fault.NO_NUMBER, typed);
    }
  }

  /** The words around a reading, "out" and "in", are no units. */
  private static Unit unit(String text, Unit usual) {
    String wanted = plain(text.replaceAll("(?i)\\b(out|from closed)\\b", ""));
    if (wanted.isEmpty()) {
      return usual;
    }
    return Unit.all().stream()
        .filter(unit -> names(unit).anyMatch(name -> plain(name).equals(wanted)))
        .min(Comparator.comparing(unit -> unit.dimension() != usual.dimension()))
        .map(unit -> ofKind(unit, usual, text))
        .orElseThrow(() -> new AmountException(AmountException.Fault.UNKNOWN_UNIT, text));
  }

  private static Unit ofKind(Unit unit, Unit usual, String text) {
    if (unit.dimension() != usual.dimension()) {
      throw new AmountException(AmountException.Fault.OTHER_KIND, text);
    }
    return unit;
  }

  private static Stream<String> names(Unit unit) {
    return Stream.concat(Stream.of(unit.symbol()), unit.alsoTyped().stream());
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s.]", "");
  }
}
