package rutbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Numbers worked by hand from 1 US fl oz = 29.5735295625 mL and 1 in = 25.4 mm. */
class DisplayTest {
  private static Amount ml(String number) {
    return Amount.of(number, Volume.MILLILITRE);
  }

  private static Amount mm(String number) {
    return Amount.of(number, Length.MILLIMETRE);
  }

  private static Shown shown(String number, Unit unit) {
    return new Shown(new BigDecimal(number), unit);
  }

  private static Shown oz(String number) {
    return shown(number, Volume.US_FLUID_OUNCE);
  }

  @Test
  void everyKindOfQuantityHasAUnitOfItsKind() {
    Display inches = Display.METRIC.with(Length.INCH);
    assertThat(inches.unit(Dimension.LENGTH)).isEqualTo(Length.INCH);
    assertThat(inches.unit(Dimension.VOLUME)).isEqualTo(Volume.MILLILITRE);
    Map<Dimension, Unit> chosen = new EnumMap<>(Display.METRIC.chosen());
    chosen.put(Dimension.MASS, Length.INCH);
    assertThatThrownBy(() -> new Display(chosen)).hasMessageContaining("MASS");
    chosen.remove(Dimension.MASS);
    assertThatThrownBy(() -> new Display(chosen)).hasMessageContaining("MASS: null");
  }

  /** 340 mL are 11.4968 fl oz: 11.50 would be more than 340 mL, 11.49 is not. */
  @Test
  void whatKeepsItsLimitsIsShownInsideThem() {
    assertThat(Display.US.shownInside(ml("340"), ml("300"), ml("340"))).isEqualTo(oz("11.49"));
    assertThat(Display.US.shownInside(ml("300"), ml("300"), ml("340"))).isEqualTo(oz("10.15"));
    assertThat(Display.US.shownInside(ml("320"), ml("300"), ml("340"))).isEqualTo(oz("10.82"));
    assertThat(Display.METRIC.shownInside(ml("340"), ml("300"), ml("340")))
        .isEqualTo(shown("340", Volume.MILLILITRE));
  }

  @Test
  void whatIsBeyondItsLimitsIsShownAsNearAsAnything() {
    assertThat(Display.US.shownInside(ml("345"), ml("300"), ml("340"))).isEqualTo(oz("11.67"));
    assertThat(Display.US.shownInside(ml("299"), ml("300"), ml("340"))).isEqualTo(oz("10.11"));
  }

  /** Limits closer than a hundredth need more decimals, three more at the most. */
  @Test
  void narrowLimitsTakeMoreDecimals() {
    assertThat(Display.US.shownInside(ml("340"), ml("339.99"), ml("340.01")))
        .isEqualTo(oz("11.497"));
    assertThat(Display.US.shownInside(ml("340"), ml("339.9999"), ml("340.0001")))
        .isEqualTo(oz("11.49677"));
    assertThat(Display.US.shownInside(ml("340"), ml("340"), ml("340")))
        .isEqualTo(shown("340", Volume.MILLILITRE));
  }

  @Test
  void besideStandsTheOtherSystem() {
    assertThat(Display.METRIC.besideInside(ml("340"), ml("300"), ml("340"))).contains(oz("11.49"));
    assertThat(Display.US.besideInside(ml("340"), ml("300"), ml("340")))
        .contains(shown("340", Volume.MILLILITRE));
    Amount clicks = Amount.of(3, ClickUnit.CLICK);
    assertThat(Display.US.besideInside(clicks, clicks, clicks)).isEmpty();
    assertThat(Display.US.beside(clicks, Edge.NONE)).isEmpty();
    assertThat(Display.METRIC.beside(ml("340"), Edge.MOST)).contains(oz("11.49"));
  }

  /** 339.7 mL are 11.4866 fl oz: both would be 11.49, and limits that differ must be seen to. */
  @Test
  void limitsThatDifferStayApart() {
    assertThat(Display.US.limits(ml("300"), ml("340")))
        .isEqualTo(new Shown.Pair(oz("10.15"), oz("11.49")));
    assertThat(Display.US.limits(ml("339.7"), ml("340")))
        .isEqualTo(new Shown.Pair(oz("11.487"), oz("11.496")));
    assertThat(Display.US.limits(ml("339.9999"), ml("340.0001")))
        .isEqualTo(
            new Shown.Pair(
                shown("339.9999", Volume.MILLILITRE), shown("340.0001", Volume.MILLILITRE)));
    assertThat(Display.US.limits(ml("339.999"), ml("340.001")))
        .isEqualTo(new Shown.Pair(oz("11.49674"), oz("11.49680")));
  }

  @Test
  void oneLimitForBothIsShownTwice() {
    assertThat(Display.US.limits(mm("25.4"), mm("25.4")))
        .isEqualTo(new Shown.Pair(shown("1.00", Length.INCH), shown("1.00", Length.INCH)));
    assertThat(Display.US.limits(ml("340"), ml("340")))
        .isEqualTo(
            new Shown.Pair(shown("340", Volume.MILLILITRE), shown("340", Volume.MILLILITRE)));
    assertThat(Display.US.limits(mm("30"), mm("20")).least())
        .isEqualTo(shown("30", Length.MILLIMETRE));
  }

  @Test
  void numbersAreAsFineAsTheThingIsMeasured() {
    Display metric = Display.METRIC;
    Unit rate = SpringRate.NEWTON_PER_MILLIMETRE;
    assertThat(metric.shown(Amount.of(30, SpringRate.POUND_FORCE_PER_INCH), Edge.NONE))
        .isEqualTo(shown("5.25", rate));
    assertThat(metric.shown(Amount.of(300, SpringRate.POUND_FORCE_PER_INCH), Edge.NONE))
        .isEqualTo(shown("52.5", rate));
    assertThat(Display.US.shown(mm("254.3"), Edge.NONE)).isEqualTo(shown("10.0", Length.INCH));
    assertThat(Display.US.shown(mm("100.3"), Edge.NONE)).isEqualTo(shown("3.95", Length.INCH));
    assertThat(Display.US.shown(mm("0.001"), Edge.NONE)).isEqualTo(shown("0.00004", Length.INCH));
    assertThat(Display.US.shown(mm("0"), Edge.NONE).number()).isEqualByComparingTo("0");
    assertThat(Display.METRIC.shown(Amount.of("2", Volume.US_FLUID_OUNCE), Edge.NONE))
        .isEqualTo(shown("59.1", Volume.MILLILITRE));
    assertThat(Display.METRIC.shown(Amount.of("9.5", Volume.US_FLUID_OUNCE), Edge.NONE))
        .isEqualTo(shown("281", Volume.MILLILITRE));
    assertThat(Display.US.shown(Amount.of("82", Mass.KILOGRAM), Edge.NONE))
        .isEqualTo(shown("181", Mass.POUND));
    assertThat(metric.with(Volume.LITRE).shown(ml("345.6"), Edge.NONE))
        .isEqualTo(shown("0.346", Volume.LITRE));
    assertThat(metric.with(Pressure.PSI).shown(Amount.of("0.9", Pressure.BAR), Edge.NONE))
        .isEqualTo(shown("13.1", Pressure.PSI));
  }

  @Test
  void aShownNumberComparesExactlyWithAnAmountOfItsKind() {
    assertThat(oz("11.49").compareQuantity(ml("340"))).isNegative();
    assertThat(oz("11.50").compareQuantity(ml("340"))).isPositive();
    assertThat(shown("1", Length.INCH).compareQuantity(mm("25.4"))).isZero();
    assertThat(shown("50", Temperature.FAHRENHEIT).compareQuantity(celsius("10"))).isZero();
    assertThat(
            catchThrowableOfType(AmountException.class, () -> oz("1").compareQuantity(mm("1")))
                .fault())
        .isEqualTo(AmountException.Fault.OTHER_KIND);
  }

  private static Amount celsius(String number) {
    return Amount.of(number, Temperature.CELSIUS);
  }

  /** 20 °C more by 9 °F are 25 °C, and a difference of 5 °C is one of 9 °F. */
  @Test
  void aDifferenceOfTemperaturesHasNoOffset() {
    assertThat(celsius("20").plus(Amount.of(9, Temperature.FAHRENHEIT))).isEqualTo(celsius("25"));
    assertThat(Display.US.step(celsius("5")).number()).isEqualByComparingTo("9");
    assertThat(Display.METRIC.step(celsius("5"))).isEqualTo(shown("5", Temperature.CELSIUS));
  }
}
