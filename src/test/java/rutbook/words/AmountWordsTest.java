package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.notebook.Bench;
import rutbook.notebook.Range;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.Temperature;
import rutbook.units.Torque;
import rutbook.units.TurnUnit;
import rutbook.units.Volume;

class AmountWordsTest {
  private final AmountWords metric = Phrases.english(Display.METRIC).amounts();
  private final AmountWords us = Phrases.english(Display.US).amounts();

  /**
   * Common practice, no source: the figures a mechanic reads off. By definition a pound-force foot
   * is 0.3048 m x 0.45359237 kg x 9.80665 m/s².
   */
  @ParameterizedTest
  @CsvSource({"16, 21.7", "51, 69.1", "15, 20.3", "22, 29.8", "65, 88.1"})
  void aTorqueIsShownInBothSystemsTheRidersFirst(int poundFeet, String newtonMetres) {
    Amount torque = Amount.of(poundFeet, Torque.POUND_FORCE_FOOT);
    assertThat(us.both(torque)).isEqualTo(poundFeet + " lbf·ft (" + newtonMetres + " N·m)");
    assertThat(metric.both(torque)).isEqualTo(newtonMetres + " N·m (" + poundFeet + " lbf·ft)");
  }

  @Test
  void aTorqueInNewtonMetresIsShownInPoundForceFeetToo() {
    assertThat(metric.both(Bench.newtonMetres("22"))).isEqualTo("22 N·m (16.2 lbf·ft)");
    assertThat(us.both(Bench.newtonMetres("22"))).isEqualTo("16.2 lbf·ft (22 N·m)");
  }

  @Test
  void whatHasOneUnitEverywhereIsSaidOnce() {
    assertThat(us.both(Bench.clicks(14))).isEqualTo("14 clicks");
    assertThat(metric.both(Bench.turns("1.75"))).isEqualTo("1¾ turns");
  }

  @Test
  void aUnitOutsideTheUsualOnesStandsBesideAsItWasWritten() {
    Amount pressure = Amount.of(100, Pressure.KILOPASCAL);
    assertThat(us.both(pressure)).isEqualTo("14.5 psi (100 kPa)");
    assertThat(metric.both(pressure)).isEqualTo("1 bar (14.5 psi)");
    Amount rate = Amount.of("0.46", SpringRate.KILOGRAM_FORCE_PER_MILLIMETRE);
    assertThat(us.both(rate)).isEqualTo("25.8 lbf/in (0.46 kgf/mm)");
  }

  @Test
  void otherUnitsAreConvertedAndLimitsRoundedInwards() {
    // 9.5 US fl oz = 280.948530859375 mL (231 in³ / 128 a fluid ounce, exact).
    assertThat(us.amount(Bench.floz("9.5"))).isEqualTo("9.5 fl oz");
    assertThat(metric.amount(Bench.floz("9.5"))).isEqualTo("281 mL");
    assertThat(metric.least(Bench.floz("9.5"))).isEqualTo("281 mL");
    assertThat(metric.most(Bench.floz("9.5"))).isEqualTo("280 mL");
    assertThat(metric.mostBoth(Bench.floz("9.5"))).isEqualTo("280 mL (9.5 fl oz)");
    assertThat(us.amount(Bench.newtonMetres("88"))).isEqualTo("64.9 lbf·ft");
  }

  /** Common practice, no source: 10 to 13 US fl oz are 296 to 384 mL. */
  @Test
  void limitsAreShownInBothSystems() {
    Range fill = new Range(Bench.floz("10"), Bench.floz("13"));
    assertThat(us.limits(fill)).isEqualTo("10 to 13 fl oz (296 to 384 mL)");
    assertThat(metric.limits(fill)).isEqualTo("296 to 384 mL (10 to 13 fl oz)");
    assertThat(us.limits(new Range(Bench.clicks(0), Bench.clicks(22)))).isEqualTo("0 to 22 clicks");
  }

  @Test
  void limitsCloserThanTheLastDigitAreKeptApart() {
    Range narrow = new Range(Bench.mm("10.03"), Bench.mm("10.04"));
    assertThat(us.limits(narrow)).isEqualTo("0.3949 to 0.3952 in (10.03 to 10.04 mm)");
  }

  @Test
  void aWindowNamesItsUnitOnce() {
    assertThat(metric.window(new Range(Bench.mm("95"), Bench.mm("105")))).isEqualTo("95 to 105 mm");
  }

  @Test
  void aDifferenceHasItsSignAndNoOffset() {
    assertThat(metric.signed(Bench.ml("10"))).isEqualTo("+10 mL");
    assertThat(metric.signed(Bench.ml("-10"))).isEqualTo("−10 mL");
    assertThat(us.signed(Bench.ml("-10"))).isEqualTo("−0.34 fl oz");
    assertThat(us.signed(Amount.of(5, Temperature.CELSIUS))).isEqualTo("+9 °F");
    assertThat(metric.signed(Bench.ml("0"))).isEqualTo("0 mL");
    assertThat(metric.size(Bench.turns("-0.25"))).isEqualTo("¼ turn");
  }

  @Test
  void oneIsSaidAsOne() {
    assertThat(metric.amount(Amount.of(1, ClickUnit.CLICK))).isEqualTo("1 click");
    assertThat(metric.amount(Amount.of(0, ClickUnit.CLICK))).isEqualTo("0 clicks");
    assertThat(metric.amount(Amount.of("0.5", TurnUnit.TURN))).isEqualTo("½ turn");
    assertThat(metric.amount(Amount.of(0, TurnUnit.TURN))).isEqualTo("0 turns");
    assertThat(metric.amount(Amount.of("1.33333333333", TurnUnit.TURN))).isEqualTo("1⅓ turns");
    assertThat(metric.amount(Amount.of("-1.875", TurnUnit.TURN))).isEqualTo("−1⅞ turns");
  }

  @Test
  void theLanguageBringsItsDecimalSignAndNothingIsGrouped() {
    AmountWords german = new Phrases(Locale.GERMANY, Display.METRIC).amounts();
    assertThat(german.amount(Amount.of("4.6", SpringRate.NEWTON_PER_MILLIMETRE)))
        .isEqualTo("4,6 N/mm");
    assertThat(german.number(1234.5, 1)).isEqualTo("1234,5");
    assertThat(metric.amount(Amount.of("1234567", Length.MILLIMETRE))).isEqualTo("1234567 mm");
  }

  @Test
  void whatIsFarOutOfReachIsStillSaid() {
    assertThat(metric.amount(Amount.of("1000000000", Volume.LITRE))).isEqualTo("1000000000000 mL");
    assertThat(metric.number(Double.NaN, 2)).isEqualTo("NaN");
  }
}
