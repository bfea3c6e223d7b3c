package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.words.Words.clicks;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Limits;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Scale;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;
import rutbook.notebook.Work;
import rutbook.units.Display;

class ReadingWordsTest {
  private final Phrases phrases = Phrases.english(Display.METRIC);
  private final ReadingWords readings = new ReadingWords(phrases);
  private final ChangeWords changes = new ChangeWords(phrases);

  @Test
  void aReadingIsSaidOnceWhenBothLegsAreTheSame() {
    assertThat(readings.reading(Words.COMPRESSION, Reading.bothLegs(clicks(14))))
        .isEqualTo("14 out");
    assertThat(readings.reading(Words.COMPRESSION, Reading.of(clicks(12), clicks(14))))
        .isEqualTo("left 12 out, right 14 out");
    assertThat(readings.reading(Words.OIL, Reading.bothLegs(Bench.ml("335")))).isEqualTo("335 mL");
    assertThat(readings.reading(Words.HIGH_SPEED, Reading.of(Bench.turns("1.75"))))
        .isEqualTo("1¾ turns out");
  }

  @Test
  void whatIsNotKnownSaysWhyAndForWhichLeg() {
    Value unknown = new Value.Unknown(WhyUnknown.NOT_COUNTED);

    assertThat(readings.reading(Words.COMPRESSION, new Reading.Pair(unknown, unknown)))
        .isEqualTo("not counted");
    assertThat(readings.reading(Words.COMPRESSION, new Reading.Pair(Value.of(clicks(3)), unknown)))
        .isEqualTo("left 3 out, right not counted");
  }

  @Test
  void aSettingNamesItsLegs() {
    assertThat(readings.settingWithLegs(Words.COMPRESSION)).isEqualTo("Fork compression, each leg");
    assertThat(readings.settingWithLegs(Words.TUBE)).isEqualTo("Tube above clamp");
  }

  @Test
  void aChangeHasItsNumberAndItsSense() {
    assertThat(changes.change(Words.COMPRESSION, clicks(12), clicks(14)))
        .isEqualTo("12 → 14 out (2 softer)");
    assertThat(changes.change(Words.REBOUND, clicks(12), clicks(11)))
        .isEqualTo("12 → 11 out (1 slower)");
    assertThat(changes.change(Words.OIL, Bench.ml("335"), Bench.ml("345")))
        .isEqualTo("335 mL → 345 mL (+10 mL, firmer)");
    assertThat(changes.change(Words.TUBE, Bench.mm("7"), Bench.mm("5")))
        .isEqualTo("7 mm → 5 mm (−2 mm, raises the front)");
    assertThat(changes.change(Words.HIGH_SPEED, Bench.turns("2"), Bench.turns("1.5")))
        .isEqualTo("2 → 1½ turns out (½ turn firmer)");
    assertThat(changes.change(Words.OIL, Bench.ml("335"), Bench.ml("335"))).isEqualTo("335 mL");
  }

  @Test
  void legsThatMoveDifferentlyAreSaidApart() {
    assertThat(
            changes.change(
                Words.COMPRESSION,
                Reading.bothLegs(clicks(12)),
                Reading.of(clicks(14), clicks(12))))
        .isEqualTo("left 12 → 14 out (2 softer), right 12 out");
    assertThat(
            changes.change(
                Words.COMPRESSION, Reading.bothLegs(clicks(12)), Reading.bothLegs(clicks(10))))
        .isEqualTo("12 → 10 out (2 firmer)");
  }

  @Test
  void anAdjusterThatCountsTheOtherWaySaysSo() {
    Setting reversed =
        new Setting(
            new SettingId("reversed"),
            "Reversed",
            Role.SHOCK_LOW_SPEED,
            Carrier.SINGLE,
            new Scale(
                Limits.stops(clicks(0), clicks(20)),
                Optional.empty(),
                clicks(1),
                Datum.IN_FROM_OPEN,
                Sense.FIRMER,
                OptionalInt.empty()),
            Work.TRACKSIDE);

    assertThat(changes.change(reversed, clicks(4), clicks(6)))
        .isEqualTo("4 → 6 in from open (2 firmer)");
  }

  @Test
  void theOtherSystemStandsBesideWhatIsMeasured() {
    Value unknown = new Value.Unknown(WhyUnknown.NOT_COUNTED);
    assertThat(readings.other(Reading.bothLegs(Bench.ml("335")))).isEqualTo("11.33 fl oz");
    assertThat(readings.other(Reading.of(Bench.ml("335"), Bench.ml("340"))))
        .isEqualTo("left 11.33 fl oz, right 11.5 fl oz");
    assertThat(readings.other(new Reading.Pair(unknown, Value.of(Bench.ml("340")))))
        .isEqualTo("right 11.5 fl oz");
    assertThat(readings.other(Reading.bothLegs(clicks(14)))).isEmpty();
    assertThat(readings.other(new Reading.Pair(unknown, unknown))).isEmpty();
  }
}
