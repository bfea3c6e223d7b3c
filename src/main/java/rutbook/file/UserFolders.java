package rutbook.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where this user's settings, cache and log belong, by the custom of the system. Nothing is made
 * here.
 *
 * @param config for what the rider would miss
 * @param cache for what can be made again
 * @param log for what somebody may want to read after a fault
 */
public record UserFolders(Path config, Path cache, Path log) {

  /**
   * What the system says of itself and its user.
   *
   * @param osName as in {@code os.name}
   * @param environment the environment's variables
   * @param home as in {@code user.home}; a blank or "?" counts as none
   * @param temporary an existing folder, for when there is no home
   */
  public record Surroundings(
      String osName, Map<String, String> environment, String home, Path temporary) {

    private Optional<Path> folder(String variable) {
      return absolute(environment.getOrDefault(variable, ""));
    }

    private Path homeOrTemporary() {
      return absolute(home).orElse(temporary);
    }

    /** The XDG rules ask that a path that is not absolute be ignored; so is one that is no path. */
    private static Optional<Path> absolute(String path) {
      try {
        return Optional.of(path)
            .filter(text -> !text.isBlank())
            .map(Path::of)
            .filter(Path::isAbsolute);
      } catch (InvalidPathException thrown) {
        return Optional.empty();
      }
    }
  }

  /**
   * Windows: below %APPDATA% and %LOCALAPPDATA%. macOS: below ~/Library. Elsewhere: the XDG Base
   * Directory Specification 0.8, with its state folder for the log.
   */
  public static UserFolders of(Surroundings it) {
    String os = it.osName().toLowerCase(Locale.ROOT);
    Path home = it.homeOrTemporary();
    if (os.startsWith("windows")) {
      Path roaming = it.folder("APPDATA").orElse(home.resolve("AppData").resolve("Roaming"));
      Path local = it.folder("LOCALAPPDATA").orElse(home.resolve("AppData").resolve("Local"));
      Path ours = local.resolve("Rutbook");
      return new UserFolders(
          roaming.resolve("Rutbook"), ours.resolve("Cache"), ours.resolve("Log"));
    }
    if (os.startsWith("mac")) {
      Path library = home.resolve("Library");
      return new UserFolders(
          library.resolve("Application Support").resolve("Rutbook"),
          library.resolve("Caches").resolve("Rutbook"),
          library.resolve("Logs").resolve("Rutbook"));
    }
    Path state = it.folder("XDG_STATE_HOME").orElse(home.resolve(".local").resolve("state"));
    return new UserFolders(
        it.folder("XDG_CONFIG_HOME").orElse(home.resolve(".config")).resolve("rutbook"),
        it.folder("XDG_CACHE_HOME").orElse(home.resolve(".cache")).resolve("rutbook"),
        state.resolve("rutbook"));
  }
}
