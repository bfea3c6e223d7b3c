package rutbook.app;

import java.nio.file.Path;
import java.time.Clock;
import rutbook.file.RealDisk;
import rutbook.file.SettingsFile;
import rutbook.units.Display;
import rutbook.words.Phrases;

/** What is outside the notebook, on the real disk, done at once. */
final class OutsideOnDisk {
  private OutsideOnDisk() {}

  /**
   * @param folder holds the folder of the riders and what was chosen when importing
   */
  static DiskOutside in(Path folder) {
    RealDisk disk = new RealDisk(System.getProperty("os.name"));
    return new DiskOutside(
        disk,
        Clock.systemUTC(),
        folder.resolve("riders"),
        new SettingsFile(disk, folder.resolve("imports.properties")),
        Phrases.english(Display.METRIC),
        Runnable::run,
        Runnable::run);
  }
}
