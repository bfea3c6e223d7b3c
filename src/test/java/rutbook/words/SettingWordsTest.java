package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.turns;

import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Display;

class SettingWordsTest {
  private final SettingWords words = new SettingWords(() -> Phrases.english(Display.METRIC));

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
        .isEqualTo("1¾ → 2 turns out (¼ turn softer)");
    assertThat(
            words.change(
                setting(Bench.FORK_OIL), Reading.bothLegs(ml("335")), Reading.bothLegs(ml("340"))))
        .isEqualTo("335 mL → 340 mL (+5 mL, firmer)");
  }

  @Test
  void legsThatDifferAreNamed() {
    Setting fork = setting(Bench.FORK_COMPRESSION);
    assertThat(words.reading(fork, Reading.of(clicks(12), clicks(14))))
        .isEqualTo("left 12 out, right 14 out");
    assertThat(words.brief(Reading.of(clicks(12), clicks(14)))).isEqualTo("L 12 R 14");
    assertThat(words.change(fork, Reading.bothLegs(clicks(12)), Reading.of(clicks(12), clicks(14))))
        .isEqualTo("left 12 out, right 12 → 14 out (2 softer)");
  }

  @Test
  void aMoveAndItsSenseStandAloneWhereThereIsLittleRoom() {
    Setting fork = setting(Bench.FORK_COMPRESSION);
    Reading before = Reading.bothLegs(clicks(12));
    Reading after = Reading.of(clicks(12), clicks(14));
    assertThat(words.move(fork, before, Reading.bothLegs(clicks(14)))).isEqualTo("12 → 14 out");
    assertThat(words.sense(fork, before, Reading.bothLegs(clicks(14)))).isEqualTo("2 softer");
    assertThat(words.move(fork, before, after)).isEqualTo("left 12 out, right 12 → 14 out");
    assertThat(words.sense(fork, before, after)).isEqualTo("left same, right 2 softer");
    assertThat(words.sense(fork, before, before)).isEmpty();
    Reading unknown = Reading.unknown(Carrier.PAIR, WhyUnknown.STRIPPED);
    assertThat(words.move(fork, unknown, before)).isEqualTo("not known since the strip → 12 out");
    assertThat(words.sense(fork, unknown, before)).isEmpty();
  }

  @Test
  void theUnitsAreThoseOfTheNotebookAtThatMoment() {
    Display[] chosen = {Display.METRIC};
    SettingWords following = new SettingWords(() -> Phrases.english(chosen[0]));
    assertThat(following.amount(ml("340"))).isEqualTo("340 mL");
    chosen[0] = Display.US;
    assertThat(following.amount(ml("340"))).isEqualTo("11.5 fl oz");
  }

  @Test
  void whatIsNotKnownIsSaidToBeUnknown() {
    assertThat(
            words.reading(
                setting(Bench.FORK_COMPRESSION),
                Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_COUNTED)))
        .isEqualTo("not counted");
  }

  @Test
  void aRefusalNamesTheValueAndTheLimit() {
    Setting fork = setting(Bench.FORK_COMPRESSION);
    assertThat(words.refusal(Bounds.refusal(Bench.sheet(), fork, clicks(25)).orElseThrow()))
        .isEqualTo("Fork compression cannot be 25 clicks: the most is 22 clicks.");
  }
}
