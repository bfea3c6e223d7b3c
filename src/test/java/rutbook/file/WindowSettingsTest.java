package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rutbook.file.WindowSettings.Bounds;

class WindowSettingsTest {

  @Test
  void whatIsStoredComesBack() {
    WindowSettings settings =
        WindowSettings.unset()
            .withTheme("sun")
            .withLanguage("de")
            .withTextPercent(125)
            .withBounds(new Bounds(-5, 10, 1024, 640, true))
            .opened("b.rut")
            .opened("a.rut");

    assertThat(WindowSettings.from(settings.asMap())).isEqualTo(settings);
    assertThat(WindowSettings.from(WindowSettings.unset().asMap()))
        .isEqualTo(WindowSettings.unset());
  }

  @Test
  void rubbishIsAsIfItWereNotThere() {
    Map<String, String> rubbish =
        Map.of(
            "text.percent", "big",
            "window.x", "1",
            "window.y", "2",
            "window.width", "0",
            "window.height", "99999999999",
            "recent.1", " ",
            "recent.2", "a.rut",
            "unknown", "x");

    assertThat(WindowSettings.from(rubbish)).isEqualTo(WindowSettings.unset().opened("a.rut"));
  }

  @Test
  void textIsHeldWithinItsLimits() {
    assertThat(WindowSettings.from(Map.of("text.percent", "10")).textPercent()).isEqualTo(75);
    assertThat(WindowSettings.from(Map.of("text.percent", "9999")).textPercent()).isEqualTo(250);
    assertThatThrownBy(() -> new WindowSettings("", "", 10, Optional.empty(), List.of()))
        .hasMessageContaining("10");
  }

  @Test
  void theLatestNotebookComesFirstOnceAndTenAreKept() {
    WindowSettings settings = WindowSettings.unset();
    for (int i = 1; i <= 12; i++) {
      settings = settings.opened(i + ".rut");
    }
    settings = settings.opened("5.rut");

    assertThat(settings.recent())
        .isEqualTo(
            IntStream.of(5, 12, 11, 10, 9, 8, 7, 6, 4, 3).mapToObj(i -> i + ".rut").toList());
    assertThat(settings.forgotten("5.rut").recent()).doesNotContain("5.rut").hasSize(9);
  }

  @Test
  void aWindowWithoutSizeIsRefused() {
    assertThatThrownBy(() -> new Bounds(0, 0, 0, 640, false)).hasMessageContaining("0 by 640");
  }
}
