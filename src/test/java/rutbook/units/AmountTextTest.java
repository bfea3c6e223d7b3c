package rutbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.bench.SideBySide;
import rutbook.units.AmountException.Fault;

class AmountTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "280ml | 280 mL",
        "280 ML | 280 mL",
        "280 cc | 280 mL",
        "280 cm³ | 280 mL",
        "0.28 l | 0.28 L",
        "335 | 335 mL",
        "+335 | 335 mL",
        "9.5oz | 9.5 fl oz",
        "9 1/2 oz | 9.5 fl oz",
        "9-1/2 oz | 9.5 fl oz",
        "9½ fl oz | 9.5 fl oz",
        "9 ½ Fl. Oz. | 9.5 fl oz",
        "9 1⁄2 fl oz | 9.5 fl oz",
        "½ oz | 0.5 fl oz",
        "12 imp fl oz | 12 imp fl oz",
        "280,5 ml | 280.5 mL",
        "280.5 ml | 280.5 mL",
        ".5 l | 0.5 L",
        "0,355 l | 0.355 L",
        "5. ml | 5 mL",
        "0 | 0 mL",
        "-0 ml | 0 mL",
        "007 ml | 7 mL"
      })
  void fillsAreReadAsPeopleTypeThem(String typed, String expected) {
    assertThat(AmountText.parse(typed, Volume.MILLILITRE)).hasToString(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "18 ft-lb | 18 lbf·ft",
        "18 ft lbs | 18 lbf·ft",
        "18ftlb | 18 lbf·ft",
        "18 LB-FT | 18 lbf·ft",
        "18 lbf·ft | 18 lbf·ft",
        "18 lbf⋅ft | 18 lbf·ft",
        "25 Nm | 25 N·m",
        "25 n-m | 25 N·m",
        "25 N*m | 25 N·m",
        "90 in-lbs | 90 lbf·in",
        "2.5 kgf·m | 2.5 kgf·m"
      })
  void torquesAreReadAsPeopleTypeThem(String typed, String expected) {
    assertThat(AmountText.parse(typed, Torque.NEWTON_METRE)).hasToString(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.5 turns | 1.5 turns",
        "1 3/4 | 1.75 turns",
        "1-3/4 turns | 1.75 turns",
        "1¾ | 1.75 turns",
        "1 1/3 turn | 1.33333333333 turns",
        "7/8 | 0.875 turns",
        "-¼ | -0.25 turns",
        "− 1 1/2 | -1.5 turns",
        "–2 | -2 turns"
      })
  void turnsAreReadWithTheirFractions(String typed, String expected) {
    assertThat(AmountText.parse(typed, TurnUnit.TURN)).hasToString(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"104 F | 104 °F", "40℃ | 40 °C", "-5 deg C | -5 °C", "70 °f | 70 °F", "21 | 21 °C"})
  void temperaturesAreReadAsPeopleTypeThem(String typed, String expected) {
    assertThat(AmountText.parse(typed, Temperature.CELSIUS)).hasToString(expected);
  }

  @Test
  void aCountMayBeTypedWithItsDirection() {
    assertThat(AmountText.parse("14 out", ClickUnit.CLICK))
        .isEqualTo(Amount.of(14, ClickUnit.CLICK));
    assertThat(AmountText.parse("3 in", ClickUnit.CLICK)).isEqualTo(Amount.of(3, ClickUnit.CLICK));
    assertThat(AmountText.parse("1¾ turns out", TurnUnit.TURN)).hasToString("1.75 turns");
    assertThat(AmountText.parse("3 in", Length.MILLIMETRE)).hasToString("3 in");
  }

  @Test
  void thinAndUnbreakableSpacesAndInvisibleMarksDoNotMatter() {
    for (String space : List.of(" ", "\u2009", "\u202f", "\u00a0", "\u3000", "\t", " \u200b ")) {
      assertThat(AmountText.parse(space + "9" + space + "1/2" + space + "fl oz", Volume.LITRE))
          .as("U+%04x", (int) space.charAt(0))
          .isEqualTo(Amount.of("9.5", Volume.US_FLUID_OUNCE));
    }
    assertThat(AmountText.parse("\u200e12\u200f", ClickUnit.CLICK))
        .isEqualTo(Amount.of(12, ClickUnit.CLICK));
  }

  @Test
  void aBareNumberTakesTheUnitThatTheRiderSees() {
    assertThat(AmountText.parse("9.5", Dimension.VOLUME, Display.US, Locale.UK))
        .isEqualTo(Amount.of("9.5", Volume.US_FLUID_OUNCE));
    assertThat(AmountText.parse("280", Dimension.VOLUME, Display.METRIC, Locale.UK))
        .isEqualTo(Amount.of(280, Volume.MILLILITRE));
  }

  @Test
  void aPlainOunceIsImperialOnlyInAnImperialField() {
    assertThat(AmountText.parse("12 oz", Volume.IMPERIAL_FLUID_OUNCE).unit())
        .isEqualTo(Volume.IMPERIAL_FLUID_OUNCE);
    assertThat(AmountText.parse("12 fl oz", Volume.IMPERIAL_FLUID_OUNCE).unit())
        .isEqualTo(Volume.US_FLUID_OUNCE);
    assertThat(AmountText.parse("12 oz", Volume.MILLILITRE).unit())
        .isEqualTo(Volume.US_FLUID_OUNCE);
  }

  @Test
  void aSignThatMayPartThousandsIsRefusedWhereItIsNotTheDecimalSign() {
    assertFault("1,250 mm", Length.MILLIMETRE, Fault.UNCLEAR_NUMBER);
    assertFault("1,234.5 mm", Length.MILLIMETRE, Fault.UNCLEAR_NUMBER);
    assertThat(AmountText.parse("1,250 mm", Length.MILLIMETRE, Locale.GERMANY))
        .isEqualTo(Amount.of("1.25", Length.MILLIMETRE));
    assertThat(AmountText.parse("1.250 mm", Length.MILLIMETRE, Locale.UK))
        .isEqualTo(Amount.of("1.25", Length.MILLIMETRE));
    assertThatThrownBy(() -> AmountText.parse("1.250 mm", Length.MILLIMETRE, Locale.GERMANY))
        .isInstanceOf(AmountException.class);
    assertThat(AmountText.parse("1,25 mm", Length.MILLIMETRE))
        .isEqualTo(Amount.of("1.25", Length.MILLIMETRE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "\u2009", "\u200b"})
  void nothingIsNothing(String typed) {
    assertFault(typed, Volume.MILLILITRE, Fault.EMPTY);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NaN",
        "-",
        "+",
        "Infinity",
        "mL",
        "twelve",
        ".",
        ",",
        "1e9 clicks",
        "1E+200000000",
        "1.2.3",
        "1,2,3",
        "1 234",
        "1/0",
        "1 7/4",
        "--5",
        "١٢",
        "1٢",
        "१२",
        "１２",
        "②",
        "1²",
        "½½",
        "/2",
        "1/2/3"
      })
  void whatIsNoNumberIsRefused(String typed) {
    AmountException refused = refusal(typed, Volume.MILLILITRE);
    assertThat(refused.fault()).isEqualTo(Fault.NO_NUMBER);
    assertThat(refused.written()).isEqualTo(typed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"5 gallons", "5 -", "5 - ml", "5 ml 3", "5 mL/s", "5 ?", "5 ml!", "5 µl", "0x12"})
  void anUnknownUnitIsRefused(String typed) {
    assertFault(typed, Volume.MILLILITRE, Fault.UNKNOWN_UNIT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"5 mm", "5 kPa", "18 ft-lb", "5 clicks", "5 \""})
  void aUnitOfAnotherKindIsNamedAsSuch(String typed) {
    assertFault(typed, Volume.MILLILITRE, Fault.OTHER_KIND);
  }

  @Test
  void tooManyDigitsAndTooLargeNumbersAreRefused() {
    assertFault("1234567890123", Volume.MILLILITRE, Fault.TOO_LARGE_OR_SMALL);
    assertFault("12345678901", Volume.MILLILITRE, Fault.TOO_LARGE_OR_SMALL);
    assertFault("1.2345678901234", Volume.MILLILITRE, Fault.TOO_MANY_DIGITS);
    assertFault("0.0000000001", Volume.MILLILITRE, Fault.TOO_LARGE_OR_SMALL);
    assertFault("1" + "0".repeat(10_000), Volume.MILLILITRE, Fault.TOO_MANY_DIGITS);
  }

  /**
   * A text sixteen times as long is refused in about sixteen times the time, or sooner; what goes
   * over the text again for every letter would take sixteen times that.
   */
  @Test
  void hostileTextIsRefusedInProportionToItsLength() {
    List<IntFunction<String>> hostile =
        List.of(
            "1"::repeat,
            length -> " ".repeat(length) + "x",
            length -> "1 " + "x".repeat(length),
            "1 "::repeat,
            "½"::repeat,
            "1/"::repeat,
            "-"::repeat,
            "."::repeat,
            "\u0301"::repeat,
            length -> "9 1/2 " + "oz".repeat(length));
    for (IntFunction<String> typed : hostile) {
      String shorter = typed.apply(500);
      String longer = typed.apply(16 * 500);
      double ratio =
          SideBySide.ratio(
              8,
              () -> lettersTold(longer),
              () -> IntStream.range(0, 16).map(i -> lettersTold(shorter)).sum());
      assertThat(ratio).as(shorter.substring(0, 8)).isLessThan(6);
    }
  }

  private static int lettersTold(String typed) {
    AmountException refused = refusal(typed, ClickUnit.CLICK);
    assertThat(refused.written()).hasSizeLessThan(50);
    assertThat(refused).hasMessageContaining(refused.written());
    return refused.written().length();
  }

  @Test
  void theMessageNeverCutsALetterInHalf() {
    AmountException refused = refusal("x".repeat(39) + "🏁🏁", ClickUnit.CLICK);
    assertThat(refused.written()).isEqualTo("x".repeat(39) + "…");
  }

  @Test
  void everySpellingMeansOneUnitOfItsKind() {
    Map<String, Unit> seen = new HashMap<>();
    for (Unit unit : Unit.all()) {
      for (String spelling : unit.alsoTyped()) {
        if (unit != Volume.IMPERIAL_FLUID_OUNCE) {
          Unit other = seen.put(unit.dimension() + " " + Spellings.key(spelling), unit);
          assertThat(other == null || other == unit)
              .as("%s: %s, %s", spelling, unit, other)
              .isTrue();
        }
        assertThat(AmountText.parse("3" + spelling, unit)).isEqualTo(Amount.of(3, unit));
        assertThat(AmountText.parse("3 " + spelling.toUpperCase(Locale.ROOT), unit))
            .isEqualTo(Amount.of(3, unit));
      }
      assertThat(AmountText.parse("3 " + unit.symbol(), unit)).isEqualTo(Amount.of(3, unit));
    }
  }

  @Test
  void theSignOfAUnitIsNeverReadAsAnotherUnitOfTheKind() {
    for (Unit field : Unit.all()) {
      for (Unit unit : Unit.of(field.dimension())) {
        assertThat(AmountText.parse("3 " + unit.symbol(), field)).isEqualTo(Amount.of(3, unit));
      }
    }
  }

  private static void assertFault(String typed, Unit field, Fault fault) {
    assertThat(refusal(typed, field).fault()).as(typed).isEqualTo(fault);
  }

  private static AmountException refusal(String typed, Unit field) {
    AmountException refused =
        catchThrowableOfType(AmountException.class, () -> AmountText.parse(typed, field));
    assertThat(refused).as("refusal of %s", typed).isNotNull();
    return refused;
  }

  @Test
  void aWholeFractionIsNoFraction() {
    assertThatThrownBy(() -> AmountText.parse("9 2/2 oz", Volume.US_FLUID_OUNCE))
        .isInstanceOf(AmountException.class);
    assertThat(AmountText.parse("9 1/2 oz", Volume.US_FLUID_OUNCE))
        .isEqualTo(Amount.of("9.5", Volume.US_FLUID_OUNCE));
  }

  @Test
  void fortyDigitsAreReadAndNoMore() {
    String zeros = "0." + "0".repeat(39);
    assertThat(AmountText.parse(zeros, Length.MILLIMETRE))
        .isEqualTo(Amount.of(0, Length.MILLIMETRE));
    assertThatThrownBy(() -> AmountText.parse(zeros + "0", Length.MILLIMETRE))
        .isInstanceOfSatisfying(
            AmountException.class,
            fault -> {
              assertThat(fault.fault()).isEqualTo(AmountException.Fault.TOO_MANY_DIGITS);
              assertThat(fault.written()).isEqualTo(zeros.substring(0, 40) + "…");
            });
  }

  @Test
  void fourDigitsBeforeASignCannotBeThousands() {
    assertThat(AmountText.parse("1234,567", Length.MILLIMETRE))
        .isEqualTo(Amount.of("1234.567", Length.MILLIMETRE));
    assertThatThrownBy(() -> AmountText.parse("123,456", Length.MILLIMETRE))
        .isInstanceOfSatisfying(
            AmountException.class,
            fault -> assertThat(fault.fault()).isEqualTo(AmountException.Fault.UNCLEAR_NUMBER));
  }

  @Test
  void aUnitIsReadUpToFortyLetters() {
    String dots = ".".repeat(38);
    assertThat(AmountText.parse("3 m" + dots + "m", Length.INCH))
        .isEqualTo(Amount.of(3, Length.MILLIMETRE));
    assertThatThrownBy(() -> AmountText.parse("3 m" + dots + ".m", Length.INCH))
        .isInstanceOfSatisfying(
            AmountException.class,
            fault -> {
              assertThat(fault.fault()).isEqualTo(AmountException.Fault.UNKNOWN_UNIT);
              assertThat(fault.written()).hasSize(41).endsWith("…");
            });
    assertThat(new AmountException(AmountException.Fault.EMPTY, "x".repeat(40)).written())
        .isEqualTo("x".repeat(40));
  }
}
