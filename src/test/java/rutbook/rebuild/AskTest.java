package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Entered;
import rutbook.notebook.Reading;
import rutbook.units.ClickUnit;
import rutbook.units.Volume;

/** What answers a step, and what does not. */
class AskTest {
  private static final Ask COUNT = Ask.count(ClickUnit.CLICK, true);
  private static final Ask FILL = Ask.measure(Volume.MILLILITRE, false);
  private static final Entered TICKED = new Entered.Ticked();

  private static Entered counted(Reading reading) {
    return new Entered.Counted(reading);
  }

  private static Entered measured(Reading reading) {
    return new Entered.Measured(reading, Optional.empty());
  }

  @Test
  void aTickIsAnsweredByATickAlone() {
    assertThat(Ask.TICK.accepts(TICKED)).isTrue();
    assertThat(Ask.WORDS.accepts(new Entered.Ticked("new seals"))).isTrue();
    assertThat(Ask.TICK.accepts(counted(Reading.of(clicks(3))))).isFalse();
    assertThat(Ask.TICK.accepts(measured(Reading.of(mm("3"))))).isFalse();
  }

  @Test
  void aCountIsAnsweredByACountOfItsLegsInItsUnit() {
    assertThat(COUNT.accepts(counted(Reading.bothLegs(clicks(12))))).isTrue();
    assertThat(COUNT.accepts(counted(Reading.of(clicks(12))))).isFalse();
    assertThat(COUNT.accepts(counted(Reading.of(clicks(12), mm("12"))))).isFalse();
    assertThat(COUNT.accepts(measured(Reading.bothLegs(clicks(12))))).isFalse();
    assertThat(COUNT.accepts(TICKED)).isFalse();
  }

  @Test
  void aMeasureIsAnsweredByAMeasure() {
    assertThat(FILL.accepts(measured(Reading.of(ml("335"))))).isTrue();
    assertThat(FILL.accepts(measured(Reading.bothLegs(ml("335"))))).isFalse();
    assertThat(FILL.accepts(measured(Reading.of(mm("335"))))).isFalse();
    assertThat(FILL.accepts(counted(Reading.of(ml("335"))))).isFalse();
    assertThat(FILL.withInstrument().accepts(TICKED)).isFalse();
  }

  @Test
  void anyStepMayBeLeftOutWithAReason() {
    for (Ask ask : new Ask[] {Ask.TICK, Ask.WORDS, COUNT, FILL}) {
      assertThat(ask.accepts(new Entered.Skipped("no time"))).isTrue();
    }
  }

  @Test
  void onlyATickHasNoUnit() {
    assertThatThrownBy(() -> new Ask(Ask.Form.COUNT, Optional.empty(), false, false, false))
        .hasMessageContaining("COUNT");
    assertThatThrownBy(
            () -> new Ask(Ask.Form.TICK, Optional.of(ClickUnit.CLICK), false, false, false))
        .hasMessageContaining("TICK");
  }
}
