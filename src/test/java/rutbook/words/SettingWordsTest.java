package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.turns;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.WhyUnknown;

class SettingWordsTest {
  private final SettingWords words = new SettingWords(new WindowWords(Locale.ENGLISH));

  private static Setting setting(SettingId id) {
    return Bench.sheet().setting(id).orElseThrow();
  }

  @Test
  void aMoveSaysTheNumberAndTheSense() {
    assertThat(
            words.change(
                setting(Bench.FORK_COMPRESSION),
                Reading.bothLegs(clicks(12)),
                Reading.bothLegs(clicks(14))))
        .isEqualTo("12 → 14 out (2 softer)");
    assertThat(
            words.change(
                setting(Bench.SHOCK_REBOUND), Reading.of(clicks(12)), Reading.of(clicks(10))))
        .isEqualTo("12 → 10 out (2 slower)");
    assertThat(
            words.change(
                setting(Bench.HIGH_SPEED), Reading.of(turns("1.75")), Reading.of(turns("2"))))
        .isEqualTo("1¾ → 2 out (¼ turn softer)");
    assertThat(
            words.change(
                setting(Bench.FORK_OIL), Reading.bothLegs(ml("335")), Reading.bothLegs(ml("340"))))
        .isEqualTo("335 mL → 340 mL (5 mL firmer)");
  }

  @Test
  void legsThatDifferAreNamed() {
    Setting fork = setting(Bench.FORK_COMPRESSION);
    assertThat(words.reading(fork, Reading.of(clicks(12), clicks(14))))
        .isEqualTo("left 12, right 14 out");
    assertThat(words.brief(Reading.of(clicks(12), clicks(14)))).isEqualTo("L 12 R 14");
    assertThat(words.change(fork, Reading.bothLegs(clicks(12)), Reading.of(clicks(12), clicks(14))))
        .isEqualTo("12 → left 12, right 14 out (left as before, right 2 softer)");
  }

  @Test
  void whatIsNotKnownIsSaidToBeUnknown() {
    assertThat(
            words.reading(
                setting(Bench.FORK_COMPRESSION),
                Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_COUNTED)))
        .isEqualTo("unknown");
  }

  @Test
  void aRefusalNamesTheValueAndTheLimit() {
    Setting fork = setting(Bench.FORK_COMPRESSION);
    assertThat(words.refusal(fork, Bounds.refusal(Bench.sheet(), fork, clicks(25)).orElseThrow()))
        .isEqualTo("25 clicks is above the most the sheet allows for Fork compression: 22 clicks.");
  }
}
