package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rutbook.file.ForgetfulDisk.PowerCut;
import rutbook.file.ForgetfulDisk.Quirk;

/** The power goes at every step of saving, and every disk that may be left is looked at. */
class PowerCutTest {
  private static final Path FILE = ForgetfulDisk.FOLDER.resolve("season.rut");
  private static final int FIRST = 1;
  private static final int LAST = 5;

  /** What was found over all steps and all disks left. */
  private record Tally(int steps, int disks, int unreadable, int lost, int backupsLost) {}

  @Test
  void afterAPowerCutAtAnyStepTheNotebookIsWholeAndNothingSavedIsLost() {
    Tally tally = cutEverywhere(Quirk.NONE);

    assertThat(tally.unreadable()).as("unreadable").isZero();
    assertThat(tally.lost()).as("saved and lost").isZero();
    assertThat(tally.backupsLost()).as("backups lost").isZero();
    assertThat(tally.steps()).isGreaterThan(80);
    assertThat(tally.disks()).isGreaterThan(200);
  }

  /** Tests of the test: each of these must be seen to lose something. */
  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NONE")
  void aDiskOrASaveThatCutsACornerIsFoundOut(Quirk quirk) {
    Tally tally = cutEverywhere(quirk);

    assertThat(tally.unreadable() + tally.lost()).as(quirk.name()).isPositive();
  }

  @Test
  void aDiskThatIgnoresFileForceLeavesUnreadableNotebooks() {
    assertThat(cutEverywhere(Quirk.IGNORES_FILE_FORCE).unreadable()).isPositive();
  }

  @Test
  void aDiskThatIgnoresFolderForceLosesWhatWasSaved() {
    assertThat(cutEverywhere(Quirk.IGNORES_FOLDER_FORCE).lost()).isPositive();
  }

  @Test
  void aSaveInPlaceLeavesUnreadableNotebooks() {
    assertThat(cutEverywhere(Quirk.SAVES_IN_PLACE).unreadable()).isPositive();
  }

  private static Tally cutEverywhere(Quirk quirk) {
    int disks = 0;
    int unreadable = 0;
    int lost = 0;
    int backupsLost = 0;
    for (int step = 1; ; step++) {
      ForgetfulDisk disk = new ForgetfulDisk(quirk);
      disk.put(FILE, Page.of(FIRST));
      disk.cutAt(step);
      List<Integer> saved = new ArrayList<>(List.of(FIRST));
      boolean finished = session(disk, saved);
      int last = saved.get(saved.size() - 1);
      for (ForgetfulDisk left : disk.afterPowerCut()) {
        disks++;
        OptionalInt found = left.exists(FILE) ? Page.number(left.bytes(FILE)) : OptionalInt.empty();
        if (found.isEmpty()) {
          unreadable++;
        } else if (found.getAsInt() < last) {
          lost++;
        } else {
          assertThat(found.getAsInt()).isLessThanOrEqualTo(last + 1);
          assertThat(goesOn(left)).as("after step %d, %s", step, disk.steps()).isTrue();
        }
        backupsLost += saved.size() > 1 && backup(left).isEmpty() ? 1 : 0;
      }
      if (finished) {
        return new Tally(step, disks, unreadable, lost, backupsLost);
      }
    }
  }

  /** Opens, saves a number of times with backups between, closes; false when the power went. */
  private static boolean session(ForgetfulDisk disk, List<Integer> saved) {
    HandClock clock = new HandClock();
    DurableFile durable = new DurableFile(disk);
    try (NotebookFile file =
        NotebookFile.open(disk, durable, FILE, clock).result().orElseThrow().file()) {
      for (int number = FIRST + 1; number <= LAST; number++) {
        assertThat(file.save(Page.of(number)).result()).isPresent();
        saved.add(number);
        clock.move(Duration.ofMinutes(number % 2 == 0 ? 11 : 3));
      }
    } catch (PowerCut gone) {
      return false;
    }
    return true;
  }

  /** Whether the next start opens, saves and tidies up, whatever was left. */
  private static boolean goesOn(ForgetfulDisk left) {
    DurableFile durable = new DurableFile(left);
    NotebookFile file =
        NotebookFile.open(left, durable, FILE, new HandClock()).result().orElseThrow().file();
    boolean saved = file.save(Page.of(99)).result().isPresent();
    file.close();
    return saved
        && left.names(ForgetfulDisk.FOLDER).equals(List.of("season.rut"))
        && Page.number(left.bytes(FILE)).equals(OptionalInt.of(99));
  }

  private static Optional<Backup> backup(ForgetfulDisk left) {
    return new Recovery(left, new DurableFile(left), FILE, new HandClock())
        .newestReadable(Page::readable);
  }

  @Test
  void aPowerCutWhilePuttingABackupInPlaceLosesNeitherTheBadFileNorTheBackup() {
    byte[] bad = {1, 2, 3};
    int disks = 0;
    for (int step = 1; ; step++) {
      ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
      disk.put(FILE, Page.of(1));
      assertThat(session(disk, new ArrayList<>())).isTrue();
      Backup backup = backup(disk).orElseThrow();
      disk.put(FILE, bad);
      disk.cutAt(disk.steps().size() + step);
      boolean finished = restore(disk, backup);
      for (ForgetfulDisk left : disk.afterPowerCut()) {
        disks++;
        assertThat(backup(left)).contains(backup);
        boolean badIsThere =
            left.names(ForgetfulDisk.FOLDER).stream()
                .map(name -> left.bytes(ForgetfulDisk.FOLDER.resolve(name)))
                .anyMatch(bytes -> Arrays.equals(bytes, bad));
        assertThat(badIsThere).as("step %d", step).isTrue();
      }
      if (finished) {
        break;
      }
    }
    assertThat(disks).isGreaterThan(20);
  }

  private static boolean restore(ForgetfulDisk disk, Backup backup) {
    try {
      Recovery recovery = new Recovery(disk, new DurableFile(disk), FILE, new HandClock());
      Recovery.Restored restored = recovery.restore(backup).result().orElseThrow();
      assertThat(Page.readable(restored.opened().bytes())).isTrue();
      assertThat(restored.keptAside().orElseThrow().getFileName())
          .hasToString("season.rut.unreadable-20260503-101500");
      restored.opened().file().close();
      return true;
    } catch (PowerCut gone) {
      return false;
    }
  }

  @Test
  void aPowerCutWhileReplacingAnotherNotebookNeverLosesThatOne() {
    int disks = 0;
    for (int step = 1; ; step++) {
      ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
      disk.put(FILE, Page.of(1));
      disk.cutAt(step);
      boolean finished = replaceByAnother(disk);
      for (ForgetfulDisk left : disk.afterPowerCut()) {
        disks++;
        int found = Page.number(left.bytes(FILE)).orElse(-1);
        assertThat(found).as("after step %d", step).isIn(finished ? List.of(50) : List.of(1, 50));
        assertThat(found == 1 || backup(left).isPresent())
            .as("old one safe, step %d", step)
            .isTrue();
      }
      if (finished) {
        break;
      }
    }
    assertThat(disks).isGreaterThan(20);
  }

  private static boolean replaceByAnother(ForgetfulDisk disk) {
    try {
      DurableFile durable = new DurableFile(disk);
      NotebookFile.IfThere replace = NotebookFile.IfThere.REPLACE;
      NotebookFile.create(disk, durable, FILE, Page.of(50), replace, new HandClock())
          .result()
          .orElseThrow()
          .file()
          .close();
      return true;
    } catch (PowerCut gone) {
      return false;
    }
  }
}
