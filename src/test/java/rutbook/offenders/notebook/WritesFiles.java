package rutbook.offenders.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The disk outside file. */
final class WritesFiles {
  private WritesFiles() {}

  static void write(Path path) throws IOException {
    Files.writeString(path, "");
  }
}
