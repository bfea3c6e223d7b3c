package rutbook.file;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Puts new bytes in place of a file so that after a power cut at any moment the file holds all of
 * the old or all of the new bytes, and all of the new once {@link #replace} has returned.
 */
public final class DurableFile {
  private static final int TRIES = 8;
  private static final long FIRST_PAUSE_MILLIS = 10;

  /** Waiting, so that a test need not. */
  @FunctionalInterface
  public interface Pause {
    void millis(long millis) throws InterruptedException;
  }

  /** A last look just before the new file takes the place of the old; throws to call it off. */
  @FunctionalInterface
  interface LastLook {
    void at(Path target) throws IOException;
  }

  private final Disk disk;
  private final AtomicLong drafts = new AtomicLong();
  private final Pause pause;
  private final Faults faults;

  public DurableFile(Disk disk) {
    this(disk, Thread::sleep);
  }

  public DurableFile(Disk disk, Pause pause) {
    this.disk = disk;
    this.pause = pause;
    this.faults = new Faults(disk);
  }

  /**
   * As {@link #replace}, with the fault instead of an exception; the result is the file behind
   * links.
   */
  public Outcome<Path> write(Path file, byte[] bytes) {
    try {
      return Outcome.done(replace(file, bytes));
    } catch (IOException thrown) {
      return Outcome.refused(faults.whileWriting(file, thrown));
    }
  }

  /**
   * Writes a draft beside the file, forces it, moves it over the file in one step and forces the
   * folder. There is no other way: when one of these fails the old file is left as it was.
   *
   * @return the file that was written, behind all links
   * @throws IOException nothing was written; or, only when forcing the folder failed, the new bytes
   *     are in place but a power cut might still bring the old ones back
   */
  public Path replace(Path file, byte[] bytes) throws IOException {
    return replace(file, bytes, target -> {});
  }

  Path replace(Path file, byte[] bytes, LastLook look) throws IOException {
    Path target = disk.resolve(file);
    Path folder = folderOf(target);
    if (disk.isFolder(target)) {
      throw new FaultException(new FileFault.IsFolder(target));
    }
    boolean there = disk.exists(target);
    if (there && !disk.isWritable(target)) {
      throw new AccessDeniedException(target.toString());
    }
    Path draft = null;
    try {
      for (long number = drafts.incrementAndGet(); draft == null; number++) {
        draft = startDraft(DraftName.of(target, number), bytes);
      }
      if (there) {
        disk.copyAccess(target, draft);
      }
      look.at(target);
      moveOver(draft, target);
    } catch (IOException | RuntimeException thrown) {
      remove(draft, thrown);
      throw thrown;
    }
    disk.forceFolder(folder);
    return target;
  }

  /**
   * Removes drafts that a crash left beside the file; call it only while holding the file's lock.
   */
  void removeLeftDrafts(Path target) {
    try {
      for (Path entry : disk.list(folderOf(target))) {
        if (DraftName.isDraftOf(target, entry)) {
          disk.delete(entry);
        }
      }
    } catch (IOException ignored) {
      // A left draft costs only room; the next opening tries again.
    }
  }

  private Path folderOf(Path target) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null) {
      throw new FaultException(new FileFault.IsFolder(target));
    }
    if (!disk.isFolder(folder)) {
      throw new FaultException(new FileFault.FolderGone(folder));
    }
    return folder;
  }

  /** The draft, whole and forced, or null when the name was taken. */
  private Path startDraft(Path draft, byte[] bytes) throws IOException {
    Disk.Draft open;
    try {
      open = disk.draft(draft);
    } catch (FileAlreadyExistsException taken) {
      return null;
    }
    try (open) {
      open.write(bytes);
      open.force();
    } catch (IOException | RuntimeException thrown) {
      remove(draft, thrown);
      throw thrown;
    }
    return draft;
  }

  private void moveOver(Path draft, Path target) throws IOException {
    long wait = FIRST_PAUSE_MILLIS;
    for (int attempt = 1; ; attempt++) {
      try {
        disk.moveOver(draft, target);
        return;
      } catch (FileSystemException thrown) {
        if (attempt == TRIES || !mayBeAScanner(thrown)) {
          throw thrown;
        }
      }
      try {
        pause.millis(wait);
      } catch (InterruptedException thrown) {
        Thread.currentThread().interrupt();
        throw new InterruptedIOException("interrupted while waiting to move " + draft);
      }
      wait *= 2;
    }
  }

  private boolean mayBeAScanner(FileSystemException thrown) {
    return disk.scannersHoldFiles()
        && !(thrown instanceof AtomicMoveNotSupportedException)
        && !(thrown instanceof NoSuchFileException);
  }

  private void remove(Path draft, Exception reason) {
    if (draft == null) {
      return;
    }
    try {
      disk.delete(draft);
    } catch (IOException thrown) {
      reason.addSuppressed(thrown);
    }
  }
}
