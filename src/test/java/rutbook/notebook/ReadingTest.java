package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.Length;

class ReadingTest {
  private static final Value NOBODY_KNOWS = new Value.Unknown(WhyUnknown.NOT_NOTED);
  private static final Reading ONE = Reading.of(mm("25.4"));
  private static final Reading PAIR = Reading.of(clicks(10), clicks(12));
  private static final Reading HALF = new Reading.Pair(NOBODY_KNOWS, Value.of(clicks(12)));

  @Test
  void aLegIsReadByItsSide() {
    assertThat(PAIR.leg(Side.LEFT)).isEqualTo(Value.of(clicks(10)));
    assertThat(PAIR.leg(Side.RIGHT)).isEqualTo(Value.of(clicks(12)));
    assertThat(ONE.leg(Side.LEFT)).isEqualTo(Value.of(mm("25.4")));
    assertThat(ONE.leg(Side.RIGHT)).isEqualTo(Value.of(mm("25.4")));
    assertThat(HALF.leg(Side.LEFT)).isEqualTo(NOBODY_KNOWS);
  }

  @Test
  void aReadingIsKnownWhenEveryLegIs() {
    assertThat(List.of(ONE, PAIR)).allMatch(Reading::isKnown);
    assertThat(HALF.isKnown()).isFalse();
    for (Carrier carrier : Carrier.values()) {
      Reading unknown = Reading.unknown(carrier, WhyUnknown.NOT_NOTED);
      assertThat(unknown.isKnown()).isFalse();
      assertThat(unknown.amounts()).isEmpty();
      assertThat(unknown.values()).containsOnly(NOBODY_KNOWS);
    }
    assertThat(Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED).values()).hasSize(2);
    assertThat(Reading.unknown(Carrier.SINGLE, WhyUnknown.NOT_NOTED).values()).hasSize(1);
  }

  @Test
  void legsDifferWhenBothAreKnownAndApart() {
    assertThat(PAIR.legsDiffer()).isTrue();
    assertThat(Reading.bothLegs(clicks(10)).legsDiffer()).isFalse();
    assertThat(Reading.of(mm("25.4"), inches("1")).legsDiffer()).isFalse();
    assertThat(List.of(HALF, ONE)).noneMatch(Reading::legsDiffer);
  }

  @Test
  void twoReadingsAreTheSameInWhateverUnitTheyWereWritten() {
    assertThat(ONE.sameAs(Reading.of(inches("1")))).isTrue();
    assertThat(ONE.sameAs(Reading.of(mm("25.5")))).isFalse();
    assertThat(ONE.sameAs(Reading.of(clicks(25)))).isFalse();
    assertThat(PAIR.sameAs(Reading.of(clicks(10), clicks(12)))).isTrue();
    assertThat(PAIR.sameAs(Reading.of(clicks(12), clicks(10)))).isFalse();
    assertThat(PAIR.sameAs(Reading.of(clicks(10), clicks(11)))).isFalse();
  }

  @Test
  void oneIsNeverTheSameAsAPairAndKnownNeverAsUnknown() {
    Reading single = Reading.of(clicks(10));
    Reading both = Reading.bothLegs(clicks(10));
    assertThat(single.sameAs(both)).isFalse();
    assertThat(both.sameAs(single)).isFalse();
    assertThat(HALF.sameAs(PAIR)).isFalse();
    assertThat(PAIR.sameAs(HALF)).isFalse();
    assertThat(HALF.sameAs(HALF)).isTrue();
  }

  @Test
  void whatIsUnknownStaysUnknownWhenAmountsAreReplaced() {
    assertThat(HALF.map(amount -> clicks(1)))
        .isEqualTo(new Reading.Pair(NOBODY_KNOWS, Value.of(clicks(1))));
    assertThat(ONE.map(amount -> mm("1"))).isEqualTo(Reading.of(mm("1")));
  }

  private static Amount inches(String number) {
    return Amount.of(number, Length.INCH);
  }
}
