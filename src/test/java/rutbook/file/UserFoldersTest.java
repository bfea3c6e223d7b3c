package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rutbook.file.UserFolders.Surroundings;

/** Paths are made with a root of this system, so that they are absolute wherever the test runs. */
class UserFoldersTest {
  private static final Path ROOT = Path.of("").toAbsolutePath().getRoot();
  private static final Path HOME = ROOT.resolve("home").resolve("rider");
  private static final Path TEMPORARY = ROOT.resolve("tmp");

  private static UserFolders folders(String os, Map<String, String> environment, String home) {
    return UserFolders.of(new Surroundings(os, environment, home, TEMPORARY));
  }

  @Test
  void onLinuxTheyAreTheUsualHiddenFolders() {
    assertThat(folders("Linux", Map.of(), HOME.toString()))
        .isEqualTo(
            new UserFolders(
                HOME.resolve(".config/rutbook"),
                HOME.resolve(".cache/rutbook"),
                HOME.resolve(".local/state/rutbook")));
  }

  @Test
  void theVariablesOfTheDesktopComeFirst() {
    Map<String, String> environment =
        Map.of(
            "XDG_CONFIG_HOME", ROOT.resolve("a").toString(),
            "XDG_CACHE_HOME", ROOT.resolve("b").toString(),
            "XDG_STATE_HOME", ROOT.resolve("c").toString());
    assertThat(folders("Linux", environment, HOME.toString()))
        .isEqualTo(
            new UserFolders(
                ROOT.resolve("a/rutbook"), ROOT.resolve("b/rutbook"), ROOT.resolve("c/rutbook")));
  }

  @Test
  void aVariableThatIsNoAbsolutePathIsIgnored() {
    Map<String, String> environment =
        Map.of("XDG_CONFIG_HOME", "relative", "XDG_CACHE_HOME", "", "XDG_STATE_HOME", "a\0b");
    assertThat(folders("Linux", environment, HOME.toString()))
        .isEqualTo(folders("Linux", Map.of(), HOME.toString()));
  }

  @Test
  void onWindowsTheyAreBelowAppData() {
    Path roaming = ROOT.resolve("Roaming");
    Path local = ROOT.resolve("Local");
    Map<String, String> environment =
        Map.of("APPDATA", roaming.toString(), "LOCALAPPDATA", local.toString());
    assertThat(folders("Windows 11", environment, HOME.toString()))
        .isEqualTo(
            new UserFolders(
                roaming.resolve("Rutbook"),
                local.resolve("Rutbook/Cache"),
                local.resolve("Rutbook/Log")));
    assertThat(folders("Windows 11", Map.of(), HOME.toString()).config())
        .isEqualTo(HOME.resolve("AppData/Roaming/Rutbook"));
  }

  @Test
  void onAMacTheyAreBelowTheLibrary() {
    assertThat(folders("Mac OS X", Map.of(), HOME.toString()))
        .isEqualTo(
            new UserFolders(
                HOME.resolve("Library/Application Support/Rutbook"),
                HOME.resolve("Library/Caches/Rutbook"),
                HOME.resolve("Library/Logs/Rutbook")));
  }

  @Test
  void withoutAHomeTheyAreTemporary() {
    assertThat(folders("Linux", Map.of(), "?").config())
        .isEqualTo(TEMPORARY.resolve(".config/rutbook"));
  }
}
