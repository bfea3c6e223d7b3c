package rutbook.file;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A program of its own that takes and releases one lock over and over. While it holds it, it makes
 * a file that only the holder may make, and says so when it was there already.
 */
final class LockingChild {
  private LockingChild() {}

  public static void main(String[] args) throws IOException {
    Path lock = Path.of(args[0]);
    int rounds = Integer.parseInt(args[1]);
    Path onlyTheHolder = lock.resolveSibling("only-the-holder");
    Disk disk = new RealDisk(System.getProperty("os.name"));
    int held = 0;
    int together = 0;
    while (held < rounds) {
      Optional<Disk.Hold> hold = disk.lock(lock);
      if (hold.isEmpty()) {
        Thread.onSpinWait();
        continue;
      }
      held++;
      try {
        Files.createFile(onlyTheHolder);
        Files.delete(onlyTheHolder);
      } catch (FileAlreadyExistsException another) {
        together++;
      }
      hold.get().close();
    }
    System.out.println(held + " held, " + together + " together");
  }
}
