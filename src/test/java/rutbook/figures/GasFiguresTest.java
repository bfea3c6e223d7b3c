package rutbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Parts;
import rutbook.notebook.Sheet;
import rutbook.notebook.ShockParts;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Pressure;
import rutbook.units.Temperature;

class GasFiguresTest {
  private static GasFigures.At at(long metres, String celsius) {
    return new GasFigures.At(
        Optional.of(Amount.of(metres, Length.METRE)),
        Optional.of(Amount.of(celsius, Temperature.CELSIUS)));
  }

  private static Amount bar(String number) {
    return Amount.of(number, Pressure.BAR);
  }

  /**
   * Row b.gauge.1000 of the outside checks: 100 000 Pa at the sea read 111 450 Pa at 1000 m, which
   * is 0.1145 bar more whatever the gauge read before.
   */
  @Test
  void aLegTakenUpAHillReadsMoreAndHoldsTheSame() {
    GasFigures.Moved moved =
        GasFigures.moved(bar("10"), at(0, "20"), at(1000, "20")).found().orElseThrow();
    assertThat(moved.after().gauge()).isEqualTo(bar("10.11"));
    assertThat(moved.difference()).isEqualTo(bar("0.11"));
    assertThat(moved.before().absolute()).isEqualTo(bar("11.01"));
    assertThat(moved.after().absolute()).isEqualTo(moved.before().absolute());
  }

  /**
   * Row b.gaylussac: 11.01325 bar absolute at 20 °C are 12.516 bar at 60 °C. By hand: (10 +
   * 1.01325) bar × 333.15 K / 293.15 K − 1.01325 bar = 11.503 bar.
   */
  @Test
  void warmingWorksOnTheAbsolutePressure() {
    assertThat(GasFigures.moved(bar("10"), at(0, "20"), at(0, "60")).found().orElseThrow().after())
        .isEqualTo(new GasFigures.Both(bar("11.50"), bar("12.52")));
  }

  @Test
  void whatIsNotNotedIsAssumedAndSaidSo() {
    Figure<GasFigures.Moved> still =
        GasFigures.moved(bar("10"), GasFigures.At.NOT_NOTED, GasFigures.At.NOT_NOTED);
    assertThat(still.found().orElseThrow().difference()).isEqualTo(bar("0.00"));
    assertThat(still.assumed())
        .containsExactlyInAnyOrder(
            Assumed.SEA_LEVEL, Assumed.SAME_ALTITUDE, Assumed.SAME_TEMPERATURE);
    assertThat(GasFigures.moved(bar("900"), at(0, "20"), at(0, "20")).needs())
        .containsExactly(Need.of(Quantity.GAUGE_PRESSURE, Need.Why.BEYOND_ANY_BIKE));
    assertThat(GasFigures.moved(bar("9"), at(0, "20"), at(99999, "200")).needs()).hasSize(2);
  }

  @Test
  void everyBodyOfGasOfTheBikeIsThereAndTheReservoirIsTheShops() {
    List<GasFigures.Line> lines =
        GasFigures.of(Bench.sheet(), Bench.setup(), at(0, "20"), at(1000, "35"));
    assertThat(lines)
        .extracting(GasFigures.Line::body)
        .containsExactly(
            GasFigures.Body.TRAPPED_AIR,
            GasFigures.Body.TYRE,
            GasFigures.Body.TYRE,
            GasFigures.Body.RESERVOIR);
    assertThat(lines.get(0).moved().found().orElseThrow().difference().value().signum())
        .as("trapped air builds up pressure: it is bled")
        .isPositive();
    assertThat(lines.get(3).moved().needs())
        .containsExactly(Need.of(Quantity.GAUGE_PRESSURE, Need.Why.NOT_ON_THE_SHEET));
    Parts parts = Bench.sheet().parts();
    ShockParts shock = parts.shock();
    Sheet without =
        Bench.sheet()
            .withParts(
                new Parts(
                    parts.fork(),
                    new ShockParts(
                        shock.wheelTravel(),
                        shock.motionRatio(),
                        shock.springFreeLength(),
                        shock.collarPitch(),
                        shock.springsAtHand(),
                        false,
                        ""),
                    parts.geometry(),
                    parts.sag()));
    assertThat(GasFigures.of(without, Bench.setup(), at(0, "20"), at(0, "20"))).hasSize(3);
  }

  /** Row f.bore.48 of the outside checks: 18.095574 mL. */
  @Test
  void tenMillimetresOfLevelAreAVolumeByTheBore() {
    Sheet sheet = ForkFiguresTest.openBath("48", Optional.empty());
    LevelFigures level = LevelFigures.ofLevel(sheet, mm("10")).found().orElseThrow();
    assertThat(level.volume()).isEqualTo(Bench.ml("18.1"));
    assertThat(LevelFigures.ofVolume(sheet, Bench.ml("18.1")).found().orElseThrow().step())
        .isEqualTo(mm("10.0"));
    assertThat(LevelFigures.ofLevel(Bench.sheet(), mm("10")).needs())
        .containsExactly(Need.of(Quantity.TUBE_BORE, Need.Why.NOT_ON_THE_SHEET));
    assertThat(LevelFigures.byLevel(sheet)).isTrue();
    assertThat(LevelFigures.byLevel(Bench.sheet())).isFalse();
  }
}
