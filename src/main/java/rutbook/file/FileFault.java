package rutbook.file;

import java.nio.file.Path;
import java.time.Instant;

/** What went wrong with a file, as a fact from which a sentence can be made. */
public sealed interface FileFault {

  /** There is no such file, though its folder is there. */
  record Missing(Path path) implements FileFault {}

  /** A folder was given where a file was wanted. */
  record IsFolder(Path path) implements FileFault {}

  /** A file was given where a folder was wanted. */
  record NotAFolder(Path path) implements FileFault {}

  /**
   * More bytes than are ever read or written.
   *
   * @param size bytes found, or at least so many
   * @param limit bytes allowed
   */
  record TooLarge(Path path, long size, long limit) implements FileFault {}

  /** The file is there and its bytes cannot be had; {@code detail} is the system's own word. */
  record Unreadable(Path path, String detail) implements FileFault {}

  /**
   * Somebody else wrote the file since it was last read or saved here.
   *
   * @param ours the time of the version that was last read or saved here
   * @param theirs the time the disk gives the other version
   */
  record ChangedBehindOurBack(Path path, Instant ours, Instant theirs) implements FileFault {}

  /** Another program has the notebook open. */
  record Locked(Path path) implements FileFault {}

  /** The file system cannot lock, so two programs could open the notebook at once. */
  record CannotLock(Path path, String detail) implements FileFault {}

  /**
   * No room for the bytes.
   *
   * @param needed bytes that were to be written
   */
  record DiskFull(Path path, long needed) implements FileFault {}

  /** The file, its folder or the whole disk may not be written. */
  record ReadOnly(Path path) implements FileFault {}

  /**
   * The folder is no longer there: a stick pulled out, a share gone, a folder removed or renamed.
   */
  record FolderGone(Path folder) implements FileFault {}

  /** A name that this system cannot express or does not allow. */
  record BadName(String name, String detail) implements FileFault {}

  /** A file is already there and nobody said it may be replaced. */
  record AlreadyThere(Path path) implements FileFault {}

  /** The file system cannot put a new file in place of an old one in one step. */
  record NoSafeReplace(Path path) implements FileFault {}

  /** The bytes could not be made, so nothing was written: a fault of the program. */
  record NotMade(String detail) implements FileFault {}

  /** Anything else; {@code detail} is for the log and for whoever knows the system. */
  record Failed(Path path, String detail) implements FileFault {}

  /**
   * Whether the same attempt may succeed later without the rider choosing anything: room is made, a
   * stick comes back, a permission returns, the next change mends what the last one broke.
   */
  default boolean mayPass() {
    return this instanceof DiskFull
        || this instanceof ReadOnly
        || this instanceof FolderGone
        || this instanceof Unreadable
        || this instanceof TooLarge
        || this instanceof NotMade
        || this instanceof Failed;
  }
}
