package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Display;

/**
 * What a hand does, by common practice (no source): clicks out count from closed, so fewer is in;
 * more tube above the clamp is the tube pushed up.
 */
class TodoWordsTest {
  private final TodoWords words = new TodoWords(Phrases.english(Display.METRIC));

  private String todo(SettingId id, Reading now, Reading wanted) {
    Setting setting = Bench.notebook().bikes().get(0).latestSheet().setting(id).orElseThrow();
    return words.todo(setting, Optional.of(now), wanted);
  }

  private static Reading legs(long left, long right) {
    return Reading.of(Bench.clicks(left), Bench.clicks(right));
  }

  @Test
  void fewerClicksOutAreTurnedInAndMoreAreTurnedOut() {
    assertThat(todo(Bench.FORK_COMPRESSION, legs(15, 15), legs(12, 12)))
        .isEqualTo("Now 15 out: 3 clicks in.");
    assertThat(todo(Bench.FORK_COMPRESSION, legs(12, 12), legs(13, 13)))
        .isEqualTo("Now 12 out: 1 click out.");
  }

  @Test
  void theTubesAreSlidUpForMoreAboveTheClamp() {
    Reading five = Reading.bothLegs(Bench.mm("5"));
    Reading three = Reading.bothLegs(Bench.mm("3"));
    assertThat(todo(Bench.TUBE, three, five)).isEqualTo("Now 3 mm: slide the tubes up 2 mm.");
    assertThat(todo(Bench.TUBE, five, three)).isEqualTo("Now 5 mm: slide the tubes down 2 mm.");
  }

  @Test
  void legsThatMoveApartAreSaidApart() {
    assertThat(todo(Bench.FORK_COMPRESSION, legs(15, 12), legs(12, 12)))
        .isEqualTo("Now left 15 out, right 12 out: left 3 clicks in; right as it is.");
  }

  @Test
  void whatIsRightStaysAsItIs() {
    assertThat(todo(Bench.FORK_COMPRESSION, legs(12, 12), legs(12, 12))).isEqualTo("As it is.");
  }

  @Test
  void whatIsNotKnownIsCountedFirstAndWhatIsNotThereIsSaid() {
    Reading unknown = Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED);
    assertThat(TodoWords.isDone(Optional.of(unknown), unknown)).isFalse();
    assertThat(TodoWords.isDone(Optional.empty(), legs(12, 12))).isFalse();
    assertThat(TodoWords.isDone(Optional.of(legs(12, 12)), legs(12, 12))).isTrue();
    assertThat(TodoWords.isDone(Optional.of(legs(12, 11)), legs(12, 12))).isFalse();
    assertThat(todo(Bench.FORK_COMPRESSION, unknown, legs(12, 12)))
        .contains("find it out, then set");
    Setting setting =
        Bench.notebook().bikes().get(0).latestSheet().setting(Bench.TUBE).orElseThrow();
    assertThat(words.todo(setting, Optional.empty(), Reading.bothLegs(Bench.mm("5"))))
        .isEqualTo("Not on the bike now.");
  }
}
