package rutbook.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** Turns what the system throws into faults. */
final class Faults {
  private static final int LONGEST_NAME_BYTES = 255;

  private final Disk disk;

  Faults(Disk disk) {
    this.disk = disk;
  }

  /** The fault when bytes were wanted from the path. */
  FileFault whileReading(Path path, IOException thrown) {
    if (thrown instanceof AccessDeniedException) {
      return new FileFault.Unreadable(path, detail(thrown));
    }
    FileFault fault = whileWriting(path, thrown);
    return fault instanceof FileFault.Failed failed
        ? new FileFault.Unreadable(path, failed.detail())
        : fault;
  }

  /** The fault when the path was to be written. */
  FileFault whileWriting(Path path, IOException thrown) {
    if (thrown instanceof FaultException known) {
      return known.fault() instanceof FileFault.DiskFull full
          ? new FileFault.DiskFull(path, full.needed()) // not the draft's name, which means nothing
          : known.fault();
    }
    if (thrown instanceof NoSuchFileException || thrown instanceof NotDirectoryException) {
      Path folder = path.toAbsolutePath().getParent();
      return folder == null || disk.isFolder(folder)
          ? new FileFault.Missing(path)
          : new FileFault.FolderGone(folder);
    }
    if (thrown instanceof AccessDeniedException) {
      return new FileFault.ReadOnly(path);
    }
    if (thrown instanceof AtomicMoveNotSupportedException) {
      return new FileFault.NoSafeReplace(path);
    }
    if (thrown instanceof FileAlreadyExistsException) {
      return new FileFault.AlreadyThere(path);
    }
    if (thrown instanceof FileSystemException && nameIsTooLong(path)) {
      return new FileFault.BadName(String.valueOf(path.getFileName()), detail(thrown));
    }
    return new FileFault.Failed(path, detail(thrown));
  }

  private static boolean nameIsTooLong(Path path) {
    Path name = path.getFileName();
    return name != null
        && name.toString().getBytes(StandardCharsets.UTF_8).length > LONGEST_NAME_BYTES;
  }

  private static String detail(IOException thrown) {
    String reason =
        thrown instanceof FileSystemException known ? known.getReason() : thrown.getMessage();
    return reason == null ? thrown.getClass().getSimpleName() : reason;
  }
}
