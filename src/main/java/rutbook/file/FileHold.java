package rutbook.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;

/**
 * A lock of the operating system on a file made for it; gone with the process, however that ends.
 * The file is removed on release, so whoever takes the lock makes sure that the name still means
 * the file that was locked and not one that was just removed.
 */
final class FileHold implements Disk.Hold {
  private static final int TRIES = 10;

  /** Beyond the text, because on Windows a locked stretch cannot be read by others. */
  private static final long LOCKED_BYTE = 1L << 30;

  private final Path file;
  private final FileChannel channel;

  private FileHold(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  static Optional<Disk.Hold> take(Path file) throws IOException {
    for (int attempt = 0; attempt < TRIES; attempt++) {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean kept = false;
      try {
        if (channel.tryLock(LOCKED_BYTE, 1, false) == null) {
          return Optional.empty();
        }
        kept = nameStillMeans(file, channel);
        if (kept) {
          return Optional.of(new FileHold(file, channel));
        }
      } catch (OverlappingFileLockException heldByThisProgram) {
        return Optional.empty();
      } finally {
        if (!kept) {
          channel.close();
        }
      }
    }
    return Optional.empty();
  }

  private static boolean nameStillMeans(Path file, FileChannel channel) throws IOException {
    byte[] mark = UUID.randomUUID().toString().getBytes(StandardCharsets.US_ASCII);
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(mark));
    try {
      return Arrays.equals(mark, Files.readAllBytes(file));
    } catch (NoSuchFileException removed) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    try {
      if (channel.isOpen()) {
        Files.deleteIfExists(file);
      }
    } finally {
      channel.close();
    }
  }
}
