package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Reads whole files, looking at their size before their bytes, and says which a folder holds. */
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

  /**
   * The files of a folder whose names end so, by name; folders and hidden files are left out.
   *
   * @param ending with its dot; capital and small letters are the same
   */
  public Outcome<List<Path>> filesIn(Path folder, String ending) {
    if (disk.exists(folder) && !disk.isFolder(folder)) {
      return Outcome.refused(new FileFault.NotAFolder(folder));
    }
    try {
      return Outcome.done(
          disk.list(folder).stream()
              .filter(file -> isNamed(file.getFileName().toString(), ending))
              .filter(file -> !disk.isFolder(file))
              .sorted()
              .toList());
    } catch (IOException thrown) {
      return Outcome.refused(faults.whileReading(folder, thrown));
    }
  }

  private static boolean isNamed(String name, String ending) {
    return !name.startsWith(".")
        && name.toLowerCase(Locale.ROOT).endsWith(ending.toLowerCase(Locale.ROOT));
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
