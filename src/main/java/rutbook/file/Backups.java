package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Earlier versions of a notebook in a folder beside it. They are numbered, and the number gives
 * their order, because a clock may jump.
 */
public final class Backups {
  /** So many of the latest are always kept. */
  public static final int NEWEST = 20;

  /** Of those before, the last of each day is kept for so many days that have any. */
  public static final int DAYS = 31;

  /** Least time between two. */
  public static final Duration EVERY = Duration.ofMinutes(10);

  private final Disk disk;
  private final DurableFile durable;
  private final Path notebook;
  private final Clock clock;
  private Optional<Instant> last = Optional.empty();

  /**
   * @param notebook the file behind all links
   */
  Backups(Disk disk, DurableFile durable, Path notebook, Clock clock) {
    this.disk = disk;
    this.durable = durable;
    this.notebook = notebook;
    this.clock = clock;
  }

  /**
   * True before the first since opening, ten minutes after the last, and when the clock went back.
   */
  boolean due() {
    Instant now = clock.instant();
    return last.isEmpty() || now.isBefore(last.get()) || !now.isBefore(last.get().plus(EVERY));
  }

  /**
   * Keeps these bytes as the newest backup and, once that is safe, removes what is older than
   * needed.
   */
  Backup keep(byte[] bytes) throws IOException {
    disk.makeFolder(folder());
    disk.forceFolder(folder().getParent());
    List<Backup> before = all();
    int number = before.isEmpty() ? 1 : before.get(0).number() + 1;
    Instant now = clock.instant();
    Path file = folder().resolve(Backup.name(notebook, number, now));
    durable.replace(file, bytes);
    last = Optional.of(now);
    Backup kept = new Backup(file, number, now);
    prune(kept, before);
    return kept;
  }

  /** All backups, newest first; none when the folder cannot be read. */
  public List<Backup> list() {
    try {
      return disk.isFolder(folder()) ? all() : List.of();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  /** The newest whose bytes can be had and pass the test. */
  public Optional<Backup> newestReadable(Predicate<byte[]> readable) {
    return list().stream().filter(backup -> bytes(backup).filter(readable).isPresent()).findFirst();
  }

  Optional<byte[]> bytes(Backup backup) {
    return new FileReading(disk).read(backup.file(), FileReading.LIMIT).result();
  }

  /** What an exception from {@link #keep} means, told of the folder of backups. */
  FileFault fault(IOException thrown) {
    return wantedFolder()
        .fold(folder -> new Faults(disk).whileWriting(folder, thrown), badName -> badName);
  }

  private Path folder() throws FaultException {
    Outcome<Path> folder = wantedFolder();
    if (folder.fault().isPresent()) {
      throw new FaultException(folder.fault().get());
    }
    return folder.result().orElseThrow();
  }

  private Outcome<Path> wantedFolder() {
    return FileNames.beside(notebook, notebook.getFileName() + ".backups");
  }

  private List<Backup> all() throws IOException {
    List<Backup> found = new ArrayList<>();
    for (Path entry : disk.list(folder())) {
      Backup.from(entry).ifPresent(found::add);
    }
    found.sort(Comparator.comparingInt(Backup::number).reversed().thenComparing(Backup::file));
    return List.copyOf(found);
  }

  private void prune(Backup kept, List<Backup> before) {
    List<Backup> newestFirst = new ArrayList<>();
    newestFirst.add(kept);
    newestFirst.addAll(before);
    for (Backup old : notNeeded(newestFirst)) {
      try {
        disk.delete(old.file());
      } catch (IOException ignored) {
        return; // Too many backups do no harm; the next one tries again.
      }
    }
    durable.removeLeftDrafts(kept.file());
  }

  /** Which of these, newest first, go. */
  static List<Backup> notNeeded(List<Backup> newestFirst) {
    List<Backup> go = new ArrayList<>();
    Set<LocalDate> days = new HashSet<>();
    for (int i = 0; i < newestFirst.size(); i++) {
      Backup backup = newestFirst.get(i);
      LocalDate day = LocalDate.ofInstant(backup.time(), ZoneOffset.UTC);
      boolean lastOfItsDay = days.size() < DAYS && days.add(day);
      if (i >= NEWEST && !lastOfItsDay) {
        go.add(backup);
      }
    }
    return go;
  }
}
