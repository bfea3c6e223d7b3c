package rutbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.units.AmountException.Fault;

class AmountTest {

  @Test
  void equalWritingIsEqual() {
    assertThat(Amount.of("9.50", Volume.US_FLUID_OUNCE))
        .isEqualTo(Amount.of("9.5", Volume.US_FLUID_OUNCE))
        .hasSameHashCodeAs(Amount.of("9.5", Volume.US_FLUID_OUNCE))
        .hasToString("9.5 fl oz");
    assertThat(Amount.of("1.2E+3", Length.MILLIMETRE)).hasToString("1200 mm");
    assertThat(Amount.of("-0.00", TurnUnit.TURN)).hasToString("0 turns");
    assertThat(new Amount(BigDecimal.valueOf(0, 2_000_000_000), TurnUnit.TURN))
        .hasToString("0 turns");
  }

  @Test
  void theSameQuantityInAnotherUnitIsNotEqualButComparesEqual() {
    Amount inch = Amount.of(1, Length.INCH);
    Amount millimetres = Amount.of("25.4", Length.MILLIMETRE);
    assertThat(inch).isNotEqualTo(millimetres);
    assertThat(inch.sameQuantity(millimetres)).isTrue();
    assertThat(inch.compareQuantity(Amount.of("25.4000000001", Length.MILLIMETRE))).isNegative();
    assertThat(inch.compareQuantity(Amount.of("25.3999999999", Length.MILLIMETRE))).isPositive();
  }

  @Test
  void kindsOfQuantityDoNotMix() {
    Amount length = Amount.of(1, Length.INCH);
    Amount volume = Amount.of(1, Volume.LITRE);
    assertFault(() -> length.compareQuantity(volume), Fault.OTHER_KIND);
    assertFault(() -> length.minus(volume), Fault.OTHER_KIND);
    assertFault(() -> length.plus(volume), Fault.OTHER_KIND);
    assertFault(() -> length.doubleIn(Volume.LITRE), Fault.OTHER_KIND);
    assertFault(() -> length.in(Volume.LITRE, 1, RoundingMode.FLOOR), Fault.OTHER_KIND);
  }

  @Test
  void hugeAndTinyNumbersAreRefusedWithoutBeingWrittenOut() {
    for (String number : new String[] {"1E+200000000", "1E-200000000", "1E+10", "1E-10"}) {
      assertFault(() -> Amount.of(number, ClickUnit.CLICK), Fault.TOO_LARGE_OR_SMALL);
    }
    assertFault(() -> Amount.of("1.000000000001", ClickUnit.CLICK), Fault.TOO_MANY_DIGITS);
    assertThat(Amount.of("1E+9", ClickUnit.CLICK)).hasToString("1000000000 clicks");
    assertThat(Amount.of("1E-9", ClickUnit.CLICK)).hasToString("0.000000001 clicks");
  }

  @Test
  void aDifferenceOfTemperaturesHasNoOffset() {
    Amount warm = Amount.of(20, Temperature.CELSIUS);
    assertThat(warm.plus(Amount.of(9, Temperature.FAHRENHEIT)))
        .isEqualTo(Amount.of(25, Temperature.CELSIUS));
    assertThat(warm.minus(Amount.of(59, Temperature.FAHRENHEIT)))
        .isEqualTo(Amount.of(5, Temperature.CELSIUS));
  }

  @Test
  void sumsAndDifferencesKeepAsManyDigitsAsAnAmountMay() {
    Amount large = Amount.of(1_000_000_000, Length.MILLIMETRE);
    Amount small = Amount.of("0.000000001", Length.MILLIMETRE);
    assertThat(large.plus(small)).isEqualTo(large);
    assertThat(Amount.of("1.00000000001", Length.METRE).minus(Amount.of(1, Length.METRE)))
        .isEqualTo(Amount.of(0, Length.METRE));
    assertThat(Amount.of(280, Volume.MILLILITRE).minus(Amount.of("9.5", Volume.US_FLUID_OUNCE)))
        .isEqualTo(Amount.of("-0.948530843750", Volume.MILLILITRE));
  }

  @Test
  void inAnotherUnitItIsRoundedAsAsked() {
    Amount fill = Amount.of(335, Volume.MILLILITRE);
    assertThat(fill.in(Volume.US_FLUID_OUNCE, 1, RoundingMode.FLOOR)).hasToString("11.3 fl oz");
    assertThat(fill.in(Volume.US_FLUID_OUNCE, 1, RoundingMode.CEILING)).hasToString("11.4 fl oz");
    assertThat(fill.in(Volume.MILLILITRE, 0, RoundingMode.FLOOR)).isSameAs(fill);
    assertThat(Amount.of(-40, Temperature.CELSIUS).in(Temperature.FAHRENHEIT, 3, RoundingMode.UP))
        .isEqualTo(Amount.of(-40, Temperature.FAHRENHEIT));
  }

  @Test
  void doublesAreNearEvenForVerySmallAmounts() {
    double litres = Amount.of("0.000000001", Volume.MILLILITRE).doubleIn(Volume.LITRE);
    assertThat(litres).isEqualTo(1e-12, within(1e-27));
    assertThat(Amount.of(20, Temperature.CELSIUS).si()).isEqualTo(293.15);
    assertThat(Amount.of(14, Pressure.PSI).si()).isEqualTo(96526.60210435706, within(1e-9));
  }

  @Test
  void theFormOfTheFileReadsBack() {
    for (Unit unit : Unit.all()) {
      for (String number : new String[] {"0", "-3", "335", "9.5", "0.000000001", "1000000000"}) {
        Amount amount = Amount.of(number, unit);
        assertThat(Amount.parseExact(amount.toString())).isEqualTo(amount);
      }
    }
    assertThat(Amount.parseExact("335.00 mL")).isEqualTo(Amount.of(335, Volume.MILLILITRE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "335", "335mL", "335  mL", " 335 mL", "335 mL ", "+335 mL", "335,5 mL", ".5 mL", "5. mL",
        "1e2 mL", "335\u00a0mL", "335 ml", "335 cc", "335 parsecs", "NaN mL", "٣ mL", "3\nmL", "mL"
      })
  void nothingButTheFormOfTheFileIsTaken(String text) {
    AmountException refused =
        catchThrowableOfType(AmountException.class, () -> Amount.parseExact(text));
    assertThat(refused).as(text).isNotNull();
    assertThat(refused.fault()).isIn(Fault.NO_NUMBER, Fault.UNKNOWN_UNIT);
    assertThat(refused.written()).isEqualTo(text);
  }

  @Test
  void theFormOfTheFileIsBoundedBeforeAnythingIsBuilt() {
    assertFault(() -> Amount.parseExact(""), Fault.EMPTY);
    assertFault(() -> Amount.parseExact("1".repeat(10_000) + " mL"), Fault.NO_NUMBER);
    assertFault(() -> Amount.parseExact("1".repeat(20) + " mL"), Fault.TOO_LARGE_OR_SMALL);
  }

  private static void assertFault(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, Fault fault) {
    assertThatThrownBy(call)
        .isInstanceOfSatisfying(AmountException.class, e -> assertThat(e.fault()).isEqualTo(fault));
  }

  @Test
  void whatHasMoreDigitsInAnotherUnitIsRoundedToWhatAnAmountKeeps() {
    Amount large = Amount.of("100000", Pressure.BAR);
    assertThat(large.in(Pressure.PSI, 6, RoundingMode.CEILING))
        .isEqualTo(Amount.of("1450377.37731", Pressure.PSI));
    assertThat(large.in(Pressure.PSI, 6, RoundingMode.FLOOR))
        .isEqualTo(Amount.of("1450377.3773", Pressure.PSI));
  }
}
