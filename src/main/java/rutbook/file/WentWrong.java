package rutbook.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;

/**
 * The file that tells others what went wrong in the program, with nothing of the rider's in it: of
 * a fault its kind and the places in the program, and never its message, which may hold a name, a
 * note or a path.
 */
public final class WentWrong {
  private static final int MOST_CAUSES = 8;

  /**
   * Where it happened.
   *
   * @param version of the program
   * @param system the operating system and its version
   * @param java the Java it runs on
   */
  public record Where(String version, String system, String java) {}

  private final Disk disk;
  private final Path file;

  /**
   * @param file replaced by the newest fault; the log keeps the older ones
   */
  public WentWrong(Disk disk, Path file) {
    this.disk = disk;
    this.file = file;
  }

  /** Writes it down; the result is the file, to name it to the rider. */
  public Outcome<Path> write(Where where, Instant when, Throwable thrown) {
    try {
      Folders.make(disk, file.toAbsolutePath().getParent());
    } catch (IOException noFolder) {
      return Outcome.refused(new Faults(disk).whileWriting(file, noFolder));
    }
    byte[] bytes = text(where, when, thrown).getBytes(StandardCharsets.UTF_8);
    return new DurableFile(disk).write(file, bytes);
  }

  static String text(Where where, Instant when, Throwable thrown) {
    StringBuilder text = new StringBuilder();
    line(text, "Rutbook " + where.version());
    line(text, where.system());
    line(text, "Java " + where.java());
    line(text, when.toString());
    fault(text, "", thrown, 0);
    return text.toString();
  }

  private static void fault(StringBuilder text, String before, Throwable thrown, int depth) {
    line(text, before + thrown.getClass().getName());
    for (StackTraceElement place : thrown.getStackTrace()) {
      line(text, "  at " + place);
    }
    if (depth == MOST_CAUSES) {
      return;
    }
    for (Throwable suppressed : thrown.getSuppressed()) {
      fault(text, "while that was handled, ", suppressed, depth + 1);
    }
    if (thrown.getCause() != null) {
      fault(text, "because of ", thrown.getCause(), depth + 1);
    }
  }

  private static void line(StringBuilder text, String line) {
    text.append(line).append(System.lineSeparator());
  }
}
