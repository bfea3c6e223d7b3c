package rutbook.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.checks.Checks;
import rutbook.checks.Row;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Limits;
import rutbook.notebook.Role;
import rutbook.notebook.Scale;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Work;
import rutbook.physics.Atmosphere;

/** Units against the outside rows; each row names its source, which a failure repeats. */
class UnitChecksTest {
  private static final Map<String, Unit> SIGNS =
      Map.of(
          "mL", Volume.MILLILITRE,
          "N m", Torque.NEWTON_METRE,
          "bar", Pressure.BAR,
          "psi", Pressure.PSI,
          "kPa", Pressure.KILOPASCAL,
          "mm", Length.MILLIMETRE,
          "kg", Mass.KILOGRAM,
          "N/mm", SpringRate.NEWTON_PER_MILLIMETRE,
          "lbf/in", SpringRate.POUND_FORCE_PER_INCH,
          "C", Temperature.CELSIUS);

  static Stream<Row> rows() {
    return Checks.topic("h-units").stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everyUnitRowIsMet(Row row) {
    String from = row.text("from");
    if (from.equals("1 mile/h")) {
      // No speeds in the notebook: a mile is 5280 ft by definition, and the hours cancel.
      row.mustBe(Amount.of(5280, Length.FOOT).doubleIn(Length.METRE) / 1000);
    } else if (from.equals("1 atm")) {
      row.mustBe(Atmosphere.SEA_LEVEL);
    } else {
      Unit unit = SIGNS.get(row.unit());
      assertThat(unit).as("%s", row).isNotNull();
      row.mustBe(AmountText.parse(from, unit).doubleIn(unit));
    }
  }

  @Test
  void clicksAreRestoredOutwardsAndFewerClicksOutAreFirmer() {
    Row restore = row("e.clicks.restore");
    Amount before = Amount.of((long) restore.in("clicksOutBefore"), ClickUnit.CLICK);
    Amount now = Amount.of((long) restore.in("setTo"), ClickUnit.CLICK);
    assertThat(before.minus(now))
        .as("%s", restore)
        .isEqualTo(
            Amount.of(restore.expected().path("clicksToRestore").intValue(), ClickUnit.CLICK));
    assertThat(restore.expected().path("turn").asText()).contains("(out)");

    Row stiffer = row("e.clicks.stiffer");
    Scale scale =
        new Scale(
            Limits.stops(Amount.of(0, ClickUnit.CLICK), Amount.of(20, ClickUnit.CLICK)),
            Optional.empty(),
            Amount.of(1, ClickUnit.CLICK),
            Datum.OUT_FROM_CLOSED,
            Sense.SOFTER,
            OptionalInt.empty());
    Setting clicker = setting(scale);
    assertThat(
            clicker.sense(
                Amount.of((long) stiffer.in("clicksOut"), ClickUnit.CLICK),
                Amount.of((long) stiffer.in("new"), ClickUnit.CLICK)))
        .as("%s", stiffer)
        .contains(Sense.FIRMER);
  }

  private static Row row(String id) {
    return Checks.all().stream().filter(row -> row.id().equals(id)).findFirst().orElseThrow();
  }

  private static Setting setting(Scale scale) {
    return new Setting(
        new SettingId("fork-compression"),
        "Compression",
        Role.FORK_COMPRESSION,
        Carrier.PAIR,
        scale,
        Work.TRACKSIDE);
  }
}
