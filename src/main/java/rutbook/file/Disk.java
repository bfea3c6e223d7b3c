package rutbook.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The few things ever asked of a disk, one step each, so that a test can stand in for it and fail
 * at every step. Errors are the {@code java.nio.file} exceptions, or a {@link FaultException} where
 * the reason is known better.
 */
public interface Disk {

  /**
   * What the disk says of a file.
   *
   * @param size bytes
   * @param modified time of the last writing, as the disk has it
   * @param identity differs when another file took the name; empty where the system has no such
   *     mark
   * @param regular false for a folder, a device, a pipe
   */
  record Stat(long size, Instant modified, String identity, boolean regular) {}

  /** A new file being written. */
  interface Draft extends Closeable {
    void write(byte[] bytes) throws IOException;

    /** Returns only when the bytes would survive a power cut. */
    void force() throws IOException;
  }

  /** A lock that is held until it is closed. */
  interface Hold extends Closeable {}

  /**
   * All bytes of a file; a {@link FileFault.TooLarge} fault when there are more than {@code limit}.
   */
  byte[] read(Path file, long limit) throws IOException;

  /** Starts a new file; {@link java.nio.file.FileAlreadyExistsException} when the name is taken. */
  Draft draft(Path file) throws IOException;

  /** Gives {@code to} the access rights of {@code from}, as far as the system lets us. */
  void copyAccess(Path from, Path to) throws IOException;

  /** Puts {@code from} in the place of {@code to} in one step, or does nothing. */
  void moveOver(Path from, Path to) throws IOException;

  /** Returns only when the names in the folder would survive a power cut. */
  void forceFolder(Path folder) throws IOException;

  /** Makes the folder if it is not there; its parent must be. */
  void makeFolder(Path folder) throws IOException;

  /** The entries of a folder in no particular order. */
  List<Path> list(Path folder) throws IOException;

  /** Removes a file; nothing happens when it is not there. */
  void delete(Path file) throws IOException;

  Stat stat(Path file) throws IOException;

  boolean exists(Path file);

  boolean isFolder(Path path);

  boolean isWritable(Path path);

  /** The absolute path behind all symbolic links; the file itself need not exist. */
  Path resolve(Path path) throws IOException;

  /** Takes the lock that the file stands for, making the file; empty when somebody else has it. */
  Optional<Hold> lock(Path file) throws IOException;

  /** True where a virus scanner or indexer may hold a file for a moment and make a move fail. */
  boolean scannersHoldFiles();
}
