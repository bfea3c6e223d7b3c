package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.file.FileFault;
import rutbook.file.SaveState;
import rutbook.ui.SaveLight.State;
import rutbook.units.Display;
import rutbook.words.FileWords;
import rutbook.words.Phrases;

/** Whatever the disk does, the window is told in a sentence. */
class DiskLightTest {
  private static final Instant NOON = Instant.parse("2026-05-03T12:00:00Z");
  private static final FileFault FULL = new FileFault.DiskFull(Path.of("season.rutbook"), 9);

  private final FileWords words = new FileWords(Phrases.english(Display.METRIC), ZoneOffset.UTC);
  private final DiskLight light =
      new DiskLight(Clock.fixed(NOON, ZoneOffset.UTC), Runnable::run, words);
  private final List<State> told = new ArrayList<>();

  private State told(SaveState state) {
    light.show(state);
    assertThat(light.now()).isEqualTo(told.get(told.size() - 1));
    return light.now();
  }

  @Test
  void aSlowDiskAFullOneAndAMissingBackupAreToldInSentences() {
    Runnable silence = light.listen(told::add);
    assertThat(told(new SaveState.Waiting(NOON, false)))
        .isEqualTo(new State.Waiting(Optional.empty()));
    assertThat(told(new SaveState.Waiting(NOON, true)))
        .isEqualTo(new State.Waiting(Optional.of(words.slow())));
    assertThat(told(new SaveState.Failed(FULL, NOON, true)))
        .isEqualTo(new State.Failed(words.sentence(FULL)));
    assertThat(told(new SaveState.Saved(NOON, Optional.of(FULL))))
        .isEqualTo(new State.Saved(LocalTime.NOON, Optional.of(words.noBackup(FULL))));
    assertThat(told(new SaveState.Saved(NOON, Optional.empty())))
        .isEqualTo(new State.Saved(LocalTime.NOON));
    silence.run();
    light.show(new SaveState.Waiting(NOON, false));
    assertThat(told).hasSize(5);
  }
}
