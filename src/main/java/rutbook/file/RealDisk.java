package rutbook.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The disk of this computer. */
public final class RealDisk implements Disk {
  private static final int MOST_LINKS = 40;

  private final boolean windows;

  /**
   * @param osName the name the system gives itself, as in {@code os.name}
   */
  public RealDisk(String osName) {
    windows = osName.toLowerCase(Locale.ROOT).startsWith("windows");
  }

  @Override
  public byte[] read(Path file, long limit) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = new byte[(int) Math.min(Files.size(file), limit)];
      int read = in.readNBytes(bytes, 0, bytes.length);
      byte[] grown = in.readNBytes((int) limit - read + 1);
      if (read + grown.length > limit) {
        throw new FaultException(new FileFault.TooLarge(file, read + (long) grown.length, limit));
      }
      if (read == bytes.length && grown.length == 0) {
        return bytes;
      }
      byte[] all = Arrays.copyOf(bytes, read + grown.length);
      System.arraycopy(grown, 0, all, read, grown.length);
      return all;
    }
  }

  @Override
  public Draft draft(Path file) throws IOException {
    try {
      return new OpenDraft(
          file, FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    } catch (IOException thrown) {
      throw known(file, 0, thrown);
    }
  }

  /** One channel for writing and forcing, so that an error of either is seen here. */
  private record OpenDraft(Path file, FileChannel channel) implements Draft {
    @Override
    public void write(byte[] bytes) throws IOException {
      try {
        for (ByteBuffer rest = ByteBuffer.wrap(bytes); rest.hasRemaining(); ) {
          channel.write(rest);
        }
      } catch (IOException thrown) {
        throw known(file, bytes.length, thrown);
      }
    }

    @Override
    public void force() throws IOException {
      try {
        channel.force(true);
      } catch (IOException thrown) {
        throw known(file, channel.size(), thrown);
      }
    }

    @Override
    public void close() throws IOException {
      channel.close();
    }
  }

  @Override
  public void copyAccess(Path from, Path to) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    PosixFileAttributeView fresh = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (old == null || fresh == null) {
      return;
    }
    Set<PosixFilePermission> wanted = old.readAttributes().permissions();
    try {
      if (!wanted.equals(fresh.readAttributes().permissions())) {
        fresh.setPermissions(wanted);
      }
    } catch (FileSystemException notHere) {
      return; // A stick formatted for Windows keeps no rights; that must not stop a save.
    }
  }

  @Override
  public void moveOver(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException thrown) {
      throw known(to, 0, thrown);
    }
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    if (windows) {
      return; // A folder cannot be opened there, and NTFS keeps its names in a journal.
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException thrown) {
      if (!"Invalid argument".equals(thrown.getMessage())) { // some network disks know no such call
        throw thrown;
      }
    }
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    try {
      Files.createDirectory(folder);
    } catch (FileAlreadyExistsException there) {
      if (!Files.isDirectory(folder)) {
        throw there;
      }
    } catch (IOException thrown) {
      throw known(folder, 0, thrown);
    }
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.toList();
    } catch (UncheckedIOException thrown) {
      throw thrown.getCause();
    }
  }

  @Override
  public void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  @Override
  public Stat stat(Path file) throws IOException {
    BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
    String identity = found.fileKey() == null ? "" : found.fileKey().toString();
    return new Stat(
        found.size(), found.lastModifiedTime().toInstant(), identity, found.isRegularFile());
  }

  @Override
  public boolean exists(Path file) {
    return Files.exists(file);
  }

  @Override
  public boolean isFolder(Path path) {
    return Files.isDirectory(path);
  }

  @Override
  public boolean isWritable(Path path) {
    return Files.isWritable(path);
  }

  @Override
  public Path resolve(Path path) throws IOException {
    Path here = path.toAbsolutePath();
    for (int links = 0; links < MOST_LINKS; links++) {
      if (Files.exists(here)) {
        return here.toRealPath();
      }
      Path folder = here.getParent();
      if (folder == null) {
        return here;
      }
      if (!Files.isSymbolicLink(here)) {
        return folder.toRealPath().resolve(here.getFileName());
      }
      here = folder.resolve(Files.readSymbolicLink(here));
    }
    throw new FaultException(new FileFault.Failed(path, "links that lead in a circle"));
  }

  @Override
  public Optional<Hold> lock(Path file) throws IOException {
    try {
      return FileHold.take(file);
    } catch (IOException thrown) {
      throw known(file, 0, thrown);
    }
  }

  @Override
  public boolean scannersHoldFiles() {
    return windows;
  }

  /**
   * The fault behind an exception whose only clue is a message in the system's language: the disk
   * itself is asked.
   */
  private static IOException known(Path file, long needed, IOException thrown) {
    boolean vague =
        thrown.getClass() == IOException.class || thrown.getClass() == FileSystemException.class;
    if (!vague) {
      return thrown;
    }
    Path folder = file.toAbsolutePath().getParent();
    String message = String.valueOf(thrown.getMessage());
    try {
      if (message.contains("No space left")
          || message.contains("quota exceeded")
          || Files.getFileStore(folder).getUsableSpace() < Math.max(1, needed)) {
        return new FaultException(new FileFault.DiskFull(file, needed), thrown);
      }
      if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)
          && Files.getFileStore(folder).isReadOnly()) {
        AccessDeniedException denied = new AccessDeniedException(file.toString());
        denied.initCause(thrown);
        return denied;
      }
    } catch (IOException unknown) {
      thrown.addSuppressed(unknown);
    }
    return thrown;
  }
}
