package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;

/**
 * For a notebook that is missing or makes no sense: finds a backup, and puts it in place on
 * request.
 */
public final class Recovery {

  /**
   * A notebook opened from a backup.
   *
   * @param keptAside where the bad file is now, if there was one
   */
  public record Restored(NotebookFile.Opened opened, Optional<Path> keptAside) {}

  private final Disk disk;
  private final DurableFile durable;
  private final Path path;
  private final Clock clock;

  public Recovery(Disk disk, DurableFile durable, Path path, Clock clock) {
    this.disk = disk;
    this.durable = durable;
    this.path = path;
    this.clock = clock;
  }

  /**
   * The newest backup that can be read; empty when there is none, or no folder to look in.
   *
   * @param readable whether these bytes make a notebook
   */
  public Optional<Backup> newestReadable(Predicate<byte[]> readable) {
    try {
      return new Backups(disk, durable, disk.resolve(path), clock).newestReadable(readable);
    } catch (IOException noFolder) {
      return Optional.empty();
    }
  }

  /**
   * Keeps the bad file as {@code ….unreadable-<time>}, puts the backup in its place and opens it.
   * The backup is wholly on the disk under a draft's name before the bad file is touched.
   */
  public Outcome<Restored> restore(Backup backup) {
    AtomicReference<Optional<Path>> aside = new AtomicReference<>(Optional.empty());
    try {
      Path real = disk.resolve(path);
      byte[] bytes = new FileReading(disk).bytes(backup.file(), FileReading.LIMIT);
      return NotebookFile.guarded(disk, durable, real, clock, file -> put(file, bytes, aside))
          .map(opened -> new Restored(opened, aside.get()));
    } catch (IOException thrown) {
      return Outcome.refused(new Faults(disk).whileReading(backup.file(), thrown));
    }
  }

  private Outcome<byte[]> put(
      NotebookFile file, byte[] bytes, AtomicReference<Optional<Path>> aside) {
    try {
      durable.replace(
          file.path(),
          bytes,
          target -> {
            if (disk.exists(target)) {
              aside.set(Optional.of(KeptAside.move(disk, target, clock)));
            }
          });
    } catch (IOException thrown) {
      return Outcome.refused(new Faults(disk).whileWriting(file.path(), thrown));
    }
    return file.reopen();
  }
}
