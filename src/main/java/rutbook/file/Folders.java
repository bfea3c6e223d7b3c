package rutbook.file;

import java.io.IOException;
import java.nio.file.Path;

/** Makes folders of the program's own; a notebook's folder is the rider's to make. */
final class Folders {
  private Folders() {}

  /** Makes the folder and those it is in. */
  static void make(Disk disk, Path folder) throws IOException {
    if (folder != null && !disk.isFolder(folder)) {
      make(disk, folder.getParent());
      disk.makeFolder(folder);
    }
  }
}
