package rutbook.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** From what somebody typed to a path, where the system's encoding or rules may not allow it. */
public final class FileNames {
  private FileNames() {}

  /** The path, or {@link FileFault.BadName} for an empty name or one this system cannot express. */
  public static Outcome<Path> path(String typed) {
    if (typed.isBlank()) {
      return Outcome.refused(new FileFault.BadName(typed, "empty"));
    }
    try {
      return Outcome.done(Path.of(typed));
    } catch (InvalidPathException thrown) {
      return Outcome.refused(new FileFault.BadName(typed, thrown.getReason()));
    }
  }

  /**
   * A file beside the given one, or {@link FileFault.BadName} when the name is not possible here.
   */
  public static Outcome<Path> beside(Path file, String name) {
    try {
      return Outcome.done(file.resolveSibling(name));
    } catch (InvalidPathException thrown) {
      return Outcome.refused(new FileFault.BadName(name, thrown.getReason()));
    }
  }
}
