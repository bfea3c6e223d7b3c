package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A notebook's file while it is open: locked against a second program, saved so that a power cut
 * loses nothing, with a backup before the first save, and never saved over what somebody else
 * wrote.
 */
public final class NotebookFile implements AutoCloseable {

  /**
   * An opened notebook.
   *
   * @param bytes what the file holds
   * @param unguarded why there is no lock, when the file system or the rider's rights allow none
   */
  public record Opened(NotebookFile file, byte[] bytes, Optional<FileFault> unguarded) {}

  /** What to do when the name of a new notebook is taken. */
  public enum IfThere {
    REFUSE,
    /** The rider was asked; the old file stays as a backup, or aside when it cannot be read. */
    REPLACE
  }

  /** What is on the disk just before a save. */
  private record Now(Disk.Stat stat, byte[] bytes) {}

  private final Disk disk;
  private final DurableFile durable;
  private final Path path;
  private final Clock clock;
  private final Optional<NotebookLock> lock;
  private final FileReading reading;
  private final Faults faults;
  private final Backups backups;
  private Optional<Seen> seen = Optional.empty();

  /** Bytes of a save that failed late: should they be on the disk after all, they are ours. */
  private Optional<Seen> attempted = Optional.empty();

  private boolean closed;

  private NotebookFile(
      Disk disk, DurableFile durable, Path path, Clock clock, Optional<NotebookLock> lock) {
    this.disk = disk;
    this.durable = durable;
    this.path = path;
    this.clock = clock;
    this.lock = lock;
    this.reading = new FileReading(disk);
    this.faults = new Faults(disk);
    this.backups = new Backups(disk, durable, path, clock);
  }

  /**
   * Opens a notebook for writing: links are followed, the lock is taken, the bytes are read. When
   * they turn out to make no sense, close it and go to {@link Recovery}.
   */
  public static Outcome<Opened> open(Disk disk, DurableFile durable, Path path, Clock clock) {
    try {
      Path real = disk.resolve(path);
      new FileReading(disk).look(real, FileReading.LIMIT);
      return guarded(disk, durable, real, clock, NotebookFile::read);
    } catch (IOException thrown) {
      return Outcome.refused(new Faults(disk).whileReading(path, thrown));
    }
  }

  /** Makes a notebook's file, with its first bytes, and keeps it open. */
  public static Outcome<Opened> create(
      Disk disk, DurableFile durable, Path path, byte[] bytes, IfThere ifThere, Clock clock) {
    try {
      Path real = disk.resolve(path);
      return guarded(disk, durable, real, clock, file -> file.writeFirst(bytes, ifThere));
    } catch (IOException thrown) {
      return Outcome.refused(new Faults(disk).whileWriting(path, thrown));
    }
  }

  /** The first thing done with the file once it is locked; gives the bytes it then holds. */
  @FunctionalInterface
  interface First {
    Outcome<byte[]> with(NotebookFile file);
  }

  /**
   * Does the first thing under the lock, or without one where none can be made; frees it on a
   * fault.
   */
  static Outcome<Opened> guarded(
      Disk disk, DurableFile durable, Path real, Clock clock, First first) {
    Outcome<NotebookLock> taken = NotebookLock.take(disk, real);
    if (taken.fault().filter(fault -> !isNoObstacle(fault)).isPresent()) {
      return Outcome.refused(taken.fault().get());
    }
    NotebookFile file = new NotebookFile(disk, durable, real, clock, taken.result());
    boolean opened = false;
    try {
      Outcome<byte[]> bytes = first.with(file);
      opened = bytes.result().isPresent();
      return bytes.map(held -> new Opened(file, held, taken.fault()));
    } finally {
      if (!opened) {
        file.close();
      }
    }
  }

  private static boolean isNoObstacle(FileFault noLock) {
    return !(noLock instanceof FileFault.Locked)
        && !(noLock instanceof FileFault.FolderGone)
        && !(noLock instanceof FileFault.BadName);
  }

  private Outcome<byte[]> read() {
    Outcome<byte[]> bytes = reopen();
    if (bytes.result().isPresent() && lock.isPresent()) {
      durable.removeLeftDrafts(path);
    }
    return bytes;
  }

  private Outcome<byte[]> writeFirst(byte[] bytes, IfThere ifThere) {
    if (ifThere == IfThere.REFUSE && disk.exists(path)) {
      return Outcome.refused(new FileFault.AlreadyThere(path));
    }
    Optional<byte[]> before = reading.read(path, FileReading.LIMIT).result();
    try {
      if (before.isPresent()) {
        backups.keep(before.get());
      }
    } catch (IOException thrown) {
      return Outcome.refused(faults.whileWriting(path, thrown));
    }
    return attempt(bytes, Optional.empty(), target -> clear(target, ifThere, before.isPresent()))
        .map(saved -> bytes);
  }

  /** Makes sure that a file in the way is one that is safe as a backup, or moves it aside. */
  private void clear(Path target, IfThere ifThere, boolean backedUp) throws IOException {
    if (!disk.exists(target) || backedUp) {
      return;
    }
    if (ifThere == IfThere.REFUSE) {
      throw new FaultException(new FileFault.AlreadyThere(path));
    }
    KeptAside.move(disk, target, clock);
  }

  /** The file, behind all links. */
  public Path path() {
    return path;
  }

  public Backups backups() {
    return backups;
  }

  /**
   * Saves: compares the disk with what was last seen, keeps a backup when one is due, and replaces
   * the file. A backup that cannot be made is reported and does not stop the save. {@link
   * FileFault.ChangedBehindOurBack} leaves the choice to {@link #keepAsCopy} and {@link #reopen},
   * {@link FileFault.Missing} to those and {@link #putBack}.
   */
  public synchronized Outcome<Saved> save(byte[] bytes) {
    Now now;
    try {
      now = onDisk();
    } catch (IOException thrown) {
      return Outcome.refused(faults.whileReading(path, thrown));
    }
    return attempt(
        bytes,
        Optional.of(now.bytes()),
        target -> {
          Disk.Stat then = disk.stat(target);
          if (!then.equals(now.stat())) {
            throw changed(then.modified());
          }
        });
  }

  /**
   * Saves a file that has vanished, because the rider wants it back; otherwise the same as a save.
   */
  public synchronized Outcome<Saved> putBack(byte[] bytes) {
    if (disk.exists(path)) {
      return save(bytes);
    }
    return attempt(
        bytes,
        Optional.empty(),
        target -> {
          if (disk.exists(target)) {
            throw changed(disk.stat(target).modified());
          }
        });
  }

  /**
   * Saves under a free name beside the file, which stays as the other program left it, and opens
   * that.
   *
   * @param label what stands after the file's name, in the rider's language
   */
  public synchronized Outcome<Opened> keepAsCopy(byte[] bytes, String label) {
    String name = path.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String ending = dot > 0 ? name.substring(dot) : "";
    String stem = name.substring(0, name.length() - ending.length());
    String start = stem + " " + label + " " + KeptAside.stamp(clock);
    return FileNames.beside(path, start + ending)
        .map(wanted -> KeptAside.free(disk, path, start, ending))
        .then(copy -> create(disk, durable, copy, bytes, IfThere.REFUSE, clock));
  }

  /**
   * Reads the file as it is now; what was not saved is for the caller to give up or keep as a copy.
   */
  public synchronized Outcome<byte[]> reopen() {
    try {
      Disk.Stat stat = disk.stat(path);
      byte[] bytes = reading.bytes(path, FileReading.LIMIT);
      seen = Optional.of(Seen.of(bytes, stat.modified()));
      attempted = Optional.empty();
      return Outcome.done(bytes);
    } catch (IOException thrown) {
      return Outcome.refused(faults.whileReading(path, thrown));
    }
  }

  private Now onDisk() throws IOException {
    Disk.Stat stat = disk.stat(path);
    if (!isOurs(it -> it.size() == stat.size())) {
      throw changed(stat.modified());
    }
    byte[] bytes = reading.bytes(path, FileReading.LIMIT);
    Seen there = Seen.of(bytes, stat.modified());
    if (!isOurs(there::hasBytesOf)) {
      throw changed(stat.modified());
    }
    seen = Optional.of(there);
    return new Now(stat, bytes);
  }

  private boolean isOurs(Predicate<Seen> same) {
    return seen.filter(same).isPresent() || attempted.filter(same).isPresent();
  }

  private FaultException changed(Instant theirs) {
    Instant ours = seen.map(Seen::modified).orElse(theirs);
    return new FaultException(new FileFault.ChangedBehindOurBack(path, ours, theirs));
  }

  private Outcome<Saved> attempt(byte[] bytes, Optional<byte[]> before, DurableFile.LastLook look) {
    if (closed) {
      throw new IllegalStateException("the notebook's file is closed");
    }
    if (bytes.length > FileReading.LIMIT) {
      return Outcome.refused(new FileFault.TooLarge(path, bytes.length, FileReading.LIMIT));
    }
    try {
      Optional<FileFault> noBackup = backUp(before);
      attempted = Optional.of(Seen.of(bytes, clock.instant()));
      durable.replace(path, bytes, look);
      seen = attempted.map(it -> new Seen(it.size(), timeOnDisk(it.modified()), it.sums()));
      attempted = Optional.empty();
      return Outcome.done(new Saved(path, clock.instant(), noBackup));
    } catch (IOException thrown) {
      return Outcome.refused(faults.whileWriting(path, thrown));
    }
  }

  private Optional<FileFault> backUp(Optional<byte[]> before) {
    if (before.isEmpty() || !backups.due()) {
      return Optional.empty();
    }
    try {
      backups.keep(before.get());
      return Optional.empty();
    } catch (IOException thrown) {
      return Optional.of(backups.fault(thrown));
    }
  }

  private Instant timeOnDisk(Instant otherwise) {
    try {
      return disk.stat(path).modified();
    } catch (IOException unknown) {
      return otherwise;
    }
  }

  /** Lets go of the lock; nothing can be saved afterwards. */
  @Override
  public synchronized void close() {
    closed = true;
    lock.ifPresent(NotebookLock::close);
  }
}
