package rutbook.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Asks the system to show a file in whatever it shows such files with. */
final class SystemViewer {
  /** Starts a program and does not wait for it. */
  interface Starter {
    void start(List<String> command) throws IOException;
  }

  private final String system;
  private final Starter starter;

  /**
   * @param system the name of the system, such as {@code Linux} or {@code Windows 11}
   */
  SystemViewer(String system, Starter starter) {
    this.system = system.toLowerCase(Locale.ROOT);
    this.starter = starter;
  }

  static SystemViewer real() {
    return new SystemViewer(
        System.getProperty("os.name", ""), command -> new ProcessBuilder(command).start());
  }

  /** Whether a viewer could be started. */
  boolean show(Path file) {
    try {
      starter.start(command(file.toAbsolutePath().toString()));
      return true;
    } catch (IOException noSuchProgram) {
      return false;
    }
  }

  private List<String> command(String file) {
    if (system.contains("win")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler", file);
    }
    return List.of(system.contains("mac") ? "open" : "xdg-open", file);
  }
}
