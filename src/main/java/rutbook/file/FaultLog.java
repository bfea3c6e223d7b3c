package rutbook.file;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;

/**
 * The few lines that help to find out what went wrong, for when the rider was told only a sentence.
 * It never grows past a limit and never makes things worse by failing itself.
 */
public final class FaultLog {
  /** The oldest text goes when there is more: 256 KiB. */
  public static final int LIMIT = 256 << 10;

  private final Disk disk;
  private final Path file;
  private final Clock clock;

  /**
   * @param file in the user's folder for logs, which is made when there is something to say
   */
  public FaultLog(Disk disk, Path file, Clock clock) {
    this.disk = disk;
    this.file = file;
    this.clock = clock;
  }

  /** Adds what happened, with its trace; the result is the log's file, to name it to the rider. */
  public Outcome<Path> add(String what, Throwable trace) {
    StringWriter text = new StringWriter();
    trace.printStackTrace(new PrintWriter(text));
    return add(what + System.lineSeparator() + text);
  }

  /** Adds what happened. */
  public synchronized Outcome<Path> add(String what) {
    String entry = clock.instant() + " " + what.stripTrailing() + System.lineSeparator();
    byte[] before = new FileReading(disk).read(file, 2L * LIMIT).result().orElse(new byte[0]);
    byte[] added = entry.getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(before, before.length + added.length);
    System.arraycopy(added, 0, all, before.length, added.length);
    try {
      Folders.make(disk, file.toAbsolutePath().getParent());
    } catch (IOException thrown) {
      return Outcome.refused(new Faults(disk).whileWriting(file, thrown));
    }
    return new DurableFile(disk).write(file, lastLines(all));
  }

  private static byte[] lastLines(byte[] all) {
    if (all.length <= LIMIT) {
      return all;
    }
    int from = all.length - LIMIT;
    for (int i = from; i < all.length - 1; i++) {
      if (all[i] == '\n') {
        from = i + 1;
        break;
      }
    }
    return Arrays.copyOfRange(all, from, all.length);
  }
}
