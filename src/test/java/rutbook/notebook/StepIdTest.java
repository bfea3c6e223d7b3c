package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StepIdTest {
  @Test
  void theLongestSettingHasAStepThatPlacesIt() {
    SettingId longest = new SettingId("s".repeat(80));
    assertThat(StepId.placing(longest).placed()).contains(longest);
  }

  @ParameterizedTest
  @ValueSource(strings = {"placed:x", "stand", "total:a:left"})
  void aStepThatPlacesNothingNamesNoSetting(String step) {
    assertThat(new StepId(step).placed()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"place:", "place::x", "place:-", ""})
  void aStepThatPlacesWhatIsNoSettingIsRefused(String step) {
    assertThatThrownBy(() -> new StepId(step)).isInstanceOf(NotebookException.class);
  }

  @Test
  void aStepOfTooLongASettingIsRefused() {
    assertThatThrownBy(() -> new StepId("place:" + "s".repeat(81)))
        .isInstanceOf(NotebookException.class);
  }
}
