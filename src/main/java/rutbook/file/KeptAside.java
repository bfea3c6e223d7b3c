package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Gives a file that cannot be read another name beside it, so that it is never written over. */
final class KeptAside {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);

  private KeptAside() {}

  /** Moves the file to {@code ….unreadable-<time>} and returns where it is now. */
  static Path move(Disk disk, Path file, Clock clock) throws IOException {
    String name = file.getFileName() + ".unreadable-" + stamp(clock);
    Path aside = free(disk, file, name, "");
    disk.moveOver(file, aside);
    disk.forceFolder(aside.getParent());
    return aside;
  }

  /**
   * The first free name beside the file: start and ending, with a number between from the second
   * on.
   */
  static Path free(Disk disk, Path file, String start, String ending) {
    Path candidate = file.resolveSibling(start + ending);
    for (int number = 2; disk.exists(candidate); number++) {
      candidate = file.resolveSibling(start + "-" + number + ending);
    }
    return candidate;
  }

  /** The clock's time in its own zone, as it stands in a file's name. */
  static String stamp(Clock clock) {
    return TIME.format(LocalDateTime.now(clock));
  }
}
