package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Keeps a second program from writing the same notebook. The lock is on a file beside the notebook,
 * because saving puts a new file in the notebook's place.
 */
final class NotebookLock implements AutoCloseable {
  private final Disk.Hold hold;

  private NotebookLock(Disk.Hold hold) {
    this.hold = hold;
  }

  /**
   * The lock; {@link FileFault.BadName} when a link leads to a name that cannot be said here, so
   * that no file can be named after it; {@link FileFault.Locked} when somebody has it; {@link
   * FileFault.ReadOnly} or {@link FileFault.CannotLock} where no lock can be made, which does not
   * stop anybody from reading.
   *
   * @param notebook the file behind all links, so that a link and its target share one lock
   */
  static Outcome<NotebookLock> take(Disk disk, Path notebook) {
    return FileNames.beside(notebook, "." + notebook.getFileName() + ".lock")
        .then(file -> take(disk, notebook, file));
  }

  private static Outcome<NotebookLock> take(Disk disk, Path notebook, Path file) {
    try {
      Optional<Disk.Hold> hold = disk.lock(file);
      return hold.isPresent()
          ? Outcome.done(new NotebookLock(hold.get()))
          : Outcome.refused(new FileFault.Locked(notebook));
    } catch (IOException thrown) {
      FileFault fault = new Faults(disk).whileWriting(notebook, thrown);
      return Outcome.refused(
          fault instanceof FileFault.Failed failed
              ? new FileFault.CannotLock(notebook, failed.detail())
              : fault);
    }
  }

  @Override
  public void close() {
    try {
      hold.close();
    } catch (IOException ignored) {
      // The system lets go of the lock with the process; only the empty file may stay.
    }
  }
}
