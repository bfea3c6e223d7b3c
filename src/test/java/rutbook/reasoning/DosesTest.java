package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;

/** One dose of each setting, our own choice: what a rider moves at a time. */
class DosesTest {
  private static Setting setting(SettingId id) {
    return Bench.sheet().setting(id).orElseThrow();
  }

  private static Setting measured(Role role, Range range, String step) {
    return Bench.measured(new SettingId("any"), "Any", role, Carrier.SINGLE, range, step);
  }

  private static Amount bar(String number) {
    return Amount.of(number, Pressure.BAR);
  }

  private static Amount rate(String number) {
    return Amount.of(number, SpringRate.NEWTON_PER_MILLIMETRE);
  }

  @Test
  void aDoseGoesByTheRoleWhateverTheStepsOfTheBike() {
    assertThat(Doses.dose(setting(Bench.FORK_REBOUND))).contains(clicks(1));
    assertThat(Doses.dose(setting(Bench.HIGH_SPEED))).contains(Bench.turns("0.25"));
    assertThat(Doses.dose(setting(Bench.FORK_OIL))).contains(ml("5"));
    assertThat(Doses.dose(setting(Bench.CARTRIDGE_OIL))).contains(ml("1"));
    assertThat(Doses.dose(setting(Bench.TUBE))).contains(mm("1"));
    assertThat(Doses.dose(setting(Bench.TYRE_FRONT))).contains(bar("0.05"));
    assertThat(Doses.dose(setting(Bench.FORK_SPRING))).contains(rate("0.2"));
    assertThat(Doses.dose(setting(Bench.SHOCK_SPRING))).contains(rate("3"));
    Range level = new Range(mm("80"), mm("130"));
    assertThat(Doses.dose(measured(Role.FORK_OIL, level, "1"))).contains(mm("5"));
    Range air = new Range(bar("8"), bar("12"));
    assertThat(Doses.dose(measured(Role.FORK_AIR, air, "0.1"))).contains(bar("0.2"));
    assertThat(Doses.dose(measured(Role.OTHER, level, "1"))).isEmpty();
  }

  /** Clicks out are less damping; oil, tube and preload are more the more there is. */
  @Test
  void dosesCountTowardsMoreOfTheSetting() {
    assertThat(Doses.sign(setting(Bench.FORK_COMPRESSION))).isEqualTo(-1);
    assertThat(Doses.sign(setting(Bench.FORK_REBOUND))).isEqualTo(-1);
    assertThat(Doses.sign(setting(Bench.FORK_OIL))).isEqualTo(1);
    assertThat(Doses.sign(setting(Bench.TUBE))).isEqualTo(1);
    assertThat(Doses.of(setting(Bench.FORK_REBOUND), Reading.bothLegs(clicks(11)))).contains(-11.0);
    assertThat(Doses.of(setting(Bench.FORK_OIL), Reading.of(ml("335"), ml("345"))))
        .hasValueSatisfying(doses -> assertThat(doses).isCloseTo(68, within(1e-9)));
  }

  @Test
  void whatIsNotKnownHasNoDoses() {
    Reading unknown = Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED);
    assertThat(Doses.of(setting(Bench.FORK_REBOUND), unknown)).isEmpty();
    Setting other = measured(Role.OTHER, new Range(mm("0"), mm("9")), "1");
    assertThat(Doses.of(other, Reading.of(mm("3")))).isEqualTo(Optional.empty());
  }

  @Test
  void movedByDosesItStandsThatManyDosesFarther() {
    Setting rebound = setting(Bench.FORK_REBOUND);
    Reading apart = Reading.of(clicks(10), clicks(12));
    assertThat(Doses.moved(rebound, apart, 2)).isEqualTo(Reading.of(clicks(8), clicks(10)));
    assertThat(Doses.moved(rebound, apart, -1)).isEqualTo(Reading.of(clicks(11), clicks(13)));
    for (Setting each : Bench.settings()) {
      Reading from = Bench.setup().reading(each.id()).orElseThrow();
      double moved =
          Doses.of(each, Doses.moved(each, from, 3)).orElseThrow()
              - Doses.of(each, from).orElseThrow();
      assertThat(moved).as(each.name()).isCloseTo(3, within(1e-9));
    }
  }
}
