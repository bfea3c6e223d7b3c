package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;

/** Reads a whole file, looking at its size before its bytes. */
public final class FileReading {
  /** No notebook or setup file is larger: 64 MiB. */
  public static final long LIMIT = 64L << 20;

  private final Disk disk;
  private final Faults faults;

  public FileReading(Disk disk) {
    this.disk = disk;
    this.faults = new Faults(disk);
  }

  /**
   * The bytes of the file. Takes no lock and leaves nothing behind.
   *
   * @param limit largest number of bytes that is read
   */
  public Outcome<byte[]> read(Path file, long limit) {
    try {
      return Outcome.done(bytes(file, limit));
    } catch (IOException thrown) {
      return Outcome.refused(faults.whileReading(file, thrown));
    }
  }

  byte[] bytes(Path file, long limit) throws IOException {
    look(file, limit);
    return disk.read(file, limit);
  }

  /** Throws the fault that can be seen without reading. */
  void look(Path file, long limit) throws IOException {
    if (disk.isFolder(file)) {
      throw new FaultException(new FileFault.IsFolder(file));
    }
    Disk.Stat stat = disk.stat(file);
    if (!stat.regular()) {
      throw new FaultException(new FileFault.Unreadable(file, "not a file"));
    }
    if (stat.size() > limit) {
      throw new FaultException(new FileFault.TooLarge(file, stat.size(), limit));
    }
  }
}
