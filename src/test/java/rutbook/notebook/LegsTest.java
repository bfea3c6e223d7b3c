package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.floz;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.Pressure;

/** How far apart two legs may be; common practice, no source. */
class LegsTest {
  private static final Setting OIL = Bench.sheet().setting(Bench.FORK_OIL).orElseThrow();
  private static final Setting REBOUND = Bench.sheet().setting(Bench.FORK_REBOUND).orElseThrow();
  private static final Setting LEVEL =
      Bench.measured(
          Bench.FORK_OIL,
          "Oil level",
          Role.FORK_OIL,
          Carrier.PAIR,
          new Range(mm("80"), mm("130")),
          "1");

  @Test
  void oneClickIsADifferenceAndNoneIsNot() {
    assertThat(Legs.differ(REBOUND, Reading.bothLegs(clicks(11)))).isFalse();
    assertThat(Legs.differ(REBOUND, Reading.of(clicks(11), clicks(12)))).isTrue();
    assertThat(Legs.differ(REBOUND, Reading.of(clicks(12), clicks(11)))).isTrue();
    assertThat(Legs.tolerance(REBOUND)).isEqualTo(clicks(0));
  }

  @Test
  void fillsAreAlikeAsNearAsTheyCanBeMeasured() {
    assertThat(Legs.differ(OIL, Reading.of(ml("335"), ml("337")))).isFalse();
    assertThat(Legs.differ(OIL, Reading.of(ml("337.1"), ml("335")))).isTrue();
    // 11.3 fl oz is 334.18 mL and 11.4 fl oz 337.14 mL: 2.96 mL apart
    assertThat(Legs.differ(OIL, Reading.of(floz("11.3"), floz("11.4")))).isTrue();
    assertThat(Legs.differ(LEVEL, Reading.of(mm("100"), mm("101")))).isFalse();
    assertThat(Legs.differ(LEVEL, Reading.of(mm("100"), mm("101.1")))).isTrue();
    assertThat(Legs.tolerance(OIL)).isEqualTo(ml("2"));
    assertThat(Legs.tolerance(LEVEL)).isEqualTo(mm("1"));
  }

  @Test
  void aLegThatIsNotKnownDiffersFromNothing() {
    Reading unknown = Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED);
    Reading half = new Reading.Pair(Value.of(clicks(3)), new Value.Unknown(WhyUnknown.NOT_NOTED));
    assertThat(Legs.differ(REBOUND, unknown)).isFalse();
    assertThat(Legs.differ(REBOUND, half)).isFalse();
    assertThat(Legs.differ(REBOUND, Reading.of(clicks(3)))).isFalse();
  }

  @Test
  void legsThatAreMeantToDifferAreUnequalWhenTheyDoNot() {
    Optional<Reading> meant = Optional.of(Reading.of(clicks(10), clicks(12)));
    assertThat(Legs.differ(REBOUND, Reading.of(clicks(11), clicks(13)), meant)).isFalse();
    assertThat(Legs.differ(REBOUND, Reading.bothLegs(clicks(11)), meant)).isTrue();
    assertThat(Legs.differ(REBOUND, Reading.of(clicks(12), clicks(10)), meant)).isTrue();
    Optional<Reading> half =
        Optional.of(
            new Reading.Pair(new Value.Unknown(WhyUnknown.NOT_NOTED), Value.of(clicks(12))));
    assertThat(Legs.differ(REBOUND, Reading.bothLegs(clicks(11)), half)).isFalse();
  }

  @Test
  void onlyWhatWasChosenIsMeant() {
    Reading apart = Reading.of(clicks(10), clicks(12));
    Setup chosen = Bench.setup().with(Placed.set(Bench.FORK_REBOUND, apart));
    assertThat(Legs.meant(chosen, REBOUND)).contains(apart);
    Setup found = Bench.setup().with(Placed.found(Bench.FORK_REBOUND, apart));
    assertThat(Legs.meant(found, REBOUND)).isEmpty();
    assertThat(Legs.meant(Setup.EMPTY, REBOUND)).isEmpty();
  }

  @Test
  void whatIsNeitherCountedNorFilledHasNoTolerance() {
    Setting air =
        Bench.measured(
            new SettingId("air"),
            "Air",
            Role.FORK_AIR,
            Carrier.PAIR,
            new Range(Amount.of("5", Pressure.BAR), Amount.of("12", Pressure.BAR)),
            "0.1");
    assertThat(Legs.tolerance(air).value()).isZero();
  }
}
