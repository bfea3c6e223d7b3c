package rutbook.words;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import rutbook.file.FileFault;

/** Faults of files as sentences: what happened, what is safe, what can be done. */
public final class FileWords {
  private static final String AREA = "Files";

  private final Phrases phrases;
  private final ZoneId zone;

  /**
   * @param zone in which the times of files are said
   */
  public FileWords(Phrases phrases, ZoneId zone) {
    this.phrases = phrases;
    this.zone = zone;
  }

  /** That a save takes longer than anyone expects. */
  public String slow() {
    return phrases.say(AREA, "slow");
  }

  /** That a save is safe and the version before it could not be kept. */
  public String noBackup(FileFault why) {
    return phrases.say(AREA, "no-backup", sentence(why));
  }

  public String sentence(FileFault fault) {
    if (fault instanceof FileFault.Missing it) {
      return say("missing", it.path());
    } else if (fault instanceof FileFault.IsFolder it) {
      return say("is-folder", it.path());
    } else if (fault instanceof FileFault.NotAFolder it) {
      return say("not-a-folder", it.path());
    } else if (fault instanceof FileFault.TooLarge it) {
      return phrases.say(
          AREA, "too-large", name(it.path()), mebibytes(it.size()), mebibytes(it.limit()));
    } else if (fault instanceof FileFault.Unreadable it) {
      return say("unreadable", it.path());
    } else if (fault instanceof FileFault.ChangedBehindOurBack it) {
      return phrases.say(AREA, "changed", name(it.path()), time(it.theirs()), time(it.ours()));
    } else if (fault instanceof FileFault.Locked it) {
      return say("locked", it.path());
    } else if (fault instanceof FileFault.CannotLock it) {
      return say("cannot-lock", it.path());
    }
    return trouble(fault);
  }

  private String trouble(FileFault fault) {
    if (fault instanceof FileFault.DiskFull it) {
      return phrases.say(AREA, "disk-full", name(it.path()), mebibytes(it.needed()));
    } else if (fault instanceof FileFault.ReadOnly it) {
      return say("read-only", it.path());
    } else if (fault instanceof FileFault.FolderGone it) {
      return say("folder-gone", it.folder());
    } else if (fault instanceof FileFault.BadName it) {
      return phrases.say(AREA, "bad-name", it.name());
    } else if (fault instanceof FileFault.AlreadyThere it) {
      return say("already-there", it.path());
    } else if (fault instanceof FileFault.NoSafeReplace it) {
      return say("no-safe-replace", it.path());
    } else if (fault instanceof FileFault.NotMade) {
      return phrases.say(AREA, "not-made");
    }
    return say("failed", ((FileFault.Failed) fault).path());
  }

  private String say(String key, Path path) {
    return phrases.say(AREA, key, name(path));
  }

  private String name(Path path) {
    return path.toString();
  }

  /** Rounded up, so that what does not fit never reads as if it did. */
  private static long mebibytes(long bytes) {
    return (bytes + (1L << 20) - 1) >> 20;
  }

  public String time(Instant at) {
    return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
        .withLocale(phrases.locale())
        .format(at.atZone(zone));
  }
}
