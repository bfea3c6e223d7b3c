package rutbook.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A lock of the operating system on a file made for it; gone with the process, however that ends.
 * The file is removed on release, so whoever takes the lock makes sure that the name still means
 * the file that was locked and not one that was just removed. The file's identity alone cannot tell
 * that: the number of a removed file is given at once to the next new one. Therefore a removed file
 * is marked before it is let go, which whoever opened it in between sees in the file itself.
 */
final class FileHold implements Disk.Hold {
  private static final int TRIES = 20;
  private static final byte REMOVED = 0x18;

  /**
   * What this process holds. POSIX drops a process's lock when the process closes <em>any</em>
   * opening of the file, so a lock file that is held must not even be looked into.
   */
  private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final FileChannel channel;

  private FileHold(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * The lock, or empty when somebody has it.
   *
   * @param file always spelt the same way: absolute, behind all links
   */
  static Optional<Disk.Hold> take(Path file) throws IOException {
    if (!HELD_HERE.add(file)) {
      return Optional.empty();
    }
    Optional<FileChannel> channel = Optional.empty();
    try {
      channel = locked(file);
      return channel.map(open -> new FileHold(file, open));
    } finally {
      if (channel.isEmpty()) {
        HELD_HERE.remove(file);
      }
    }
  }

  private static Optional<FileChannel> locked(Path file) throws IOException {
    for (int attempt = 0; attempt < TRIES; attempt++) {
      FileChannel channel = null;
      boolean kept = false;
      try {
        makeIfMissing(file);
        Object before = identity(file);
        channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
        if (channel.tryLock() == null) {
          return Optional.empty();
        }
        if (isRemoved(channel)) {
          removeAgain(file);
          continue;
        }
        kept = Objects.equals(before, identity(file));
        if (kept) {
          return Optional.of(channel);
        }
      } catch (NoSuchFileException removedMeanwhile) {
        if (!Files.isDirectory(file.getParent())) {
          throw removedMeanwhile;
        }
      } finally {
        if (channel != null && !kept) {
          channel.close();
        }
      }
    }
    return Optional.empty();
  }

  private static void makeIfMissing(Path file) throws IOException {
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException there) {
      return;
    }
  }

  private static boolean isRemoved(FileChannel channel) throws IOException {
    ByteBuffer mark = ByteBuffer.allocate(1);
    return channel.read(mark, 0) == 1 && mark.get(0) == REMOVED;
  }

  /**
   * After a power cut a marked file may have its name back; every other named one is empty. Called
   * with the lock on a marked file, so that no two programs do this at once.
   */
  private static void removeAgain(Path file) throws IOException {
    if (Files.size(file) > 0) {
      Files.delete(file);
    }
  }

  /**
   * Which file has the name; null on Windows, where the name of a file that is open stays taken.
   */
  private static Object identity(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
  }

  @Override
  public void close() throws IOException {
    if (!channel.isOpen()) {
      return;
    }
    try {
      Files.deleteIfExists(file);
      channel.write(ByteBuffer.wrap(new byte[] {REMOVED}), 0);
    } finally {
      channel.close();
      HELD_HERE.remove(file);
    }
  }
}
