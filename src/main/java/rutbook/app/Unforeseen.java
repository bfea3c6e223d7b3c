package rutbook.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import rutbook.file.Disk;
import rutbook.file.FaultLog;
import rutbook.file.UserFolders;
import rutbook.file.WentWrong;
import rutbook.words.Phrases;

/**
 * Writes down what nobody foresaw: in the log with all there is to know, and in a file for others
 * without anything of the rider's.
 */
final class Unforeseen {
  private final FaultLog log;
  private final WentWrong report;
  private final Clock clock;
  private final Phrases phrases;
  private final Set<String> noted = new HashSet<>();

  Unforeseen(Disk disk, UserFolders folders, Clock clock, Phrases phrases) {
    this.log = new FaultLog(disk, folders.log().resolve("rutbook.log"), clock);
    this.report = new WentWrong(disk, folders.log().resolve("what-went-wrong.txt"));
    this.clock = clock;
    this.phrases = phrases;
  }

  /** What was foreseen but may be worth a look: the log alone. */
  void log(String what, Throwable thrown) {
    log.add(what, thrown);
  }

  /**
   * Writes it down; the same fault at the same place only once.
   *
   * @return the sentence that says where it is; empty when it was written before
   */
  synchronized Optional<String> note(String what, Throwable thrown) {
    StackTraceElement[] places = thrown.getStackTrace();
    if (!noted.add(thrown.getClass().getName() + (places.length == 0 ? "" : places[0]))) {
      return Optional.empty();
    }
    log.add(what, thrown);
    WentWrong.Where where =
        new WentWrong.Where(
            Build.version(),
            System.getProperty("os.name") + " " + System.getProperty("os.version"),
            System.getProperty("java.version"));
    return Optional.of(
        report
            .write(where, clock.instant(), thrown)
            .fold(this::sentence, fault -> phrases.say("App", "unforeseen.nowhere")));
  }

  private String sentence(Path file) {
    return phrases.say("App", "unforeseen", file.toString());
  }
}
