package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;
import rutbook.file.NotebookFile.IfThere;
import rutbook.file.NotebookFile.Opened;

class NotebookFileTest {
  private static final Path FOLDER = ForgetfulDisk.FOLDER;
  private static final Path FILE = FOLDER.resolve("season.rut");

  private final ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
  private final DurableFile durable = new DurableFile(disk);
  private final HandClock clock = new HandClock();

  @BeforeEach
  void aNotebookIsThere() {
    disk.put(FILE, Page.of(1));
  }

  private Outcome<Opened> tryOpen(Path path) {
    return NotebookFile.open(disk, durable, path, clock);
  }

  private NotebookFile open() {
    return tryOpen(FILE).result().orElseThrow().file();
  }

  private int number(Path path) {
    return Page.number(disk.bytes(path)).orElse(-1);
  }

  @Test
  void openingGivesTheBytesAndSavingReplacesThem() {
    Opened opened = tryOpen(FILE).result().orElseThrow();
    assertThat(opened.bytes()).isEqualTo(Page.of(1));
    assertThat(opened.unguarded()).isEmpty();

    Saved saved = opened.file().save(Page.of(2)).result().orElseThrow();

    assertThat(saved).isEqualTo(new Saved(FILE, clock.instant(), Optional.empty()));
    assertThat(number(FILE)).isEqualTo(2);
  }

  @Test
  void aSecondProgramIsRefusedUntilTheFirstHasClosed() {
    NotebookFile first = open();
    assertThat(tryOpen(FILE)).isEqualTo(Outcome.refused(new FileFault.Locked(FILE)));
    first.save(Page.of(2));
    assertThat(tryOpen(FILE)).isEqualTo(Outcome.refused(new FileFault.Locked(FILE)));
    first.close();

    assertThat(tryOpen(FILE).result().orElseThrow().bytes()).isEqualTo(Page.of(2));
  }

  @Test
  void aMissingFileAFolderAndAFolderGoneAreToldApart() {
    Path missing = FOLDER.resolve("other.rut");
    Path lost = FOLDER.resolveSibling("stick").resolve("season.rut");
    assertThat(tryOpen(missing).fault()).contains(new FileFault.Missing(missing));
    assertThat(tryOpen(FOLDER).fault()).contains(new FileFault.IsFolder(FOLDER));
    assertThat(tryOpen(lost).fault()).contains(new FileFault.FolderGone(lost.getParent()));
    assertThat(disk.names(FOLDER)).containsExactly("season.rut");
  }

  @Test
  void aFileThatIsTooLargeIsNeitherReadNorWritten() {
    byte[] large = new byte[(int) FileReading.LIMIT + 1];
    FileFault tooLarge = new FileFault.TooLarge(FILE, large.length, FileReading.LIMIT);
    NotebookFile file = open();
    assertThat(file.save(large).fault()).contains(tooLarge);
    assertThat(number(FILE)).isEqualTo(1);
    file.close();

    disk.put(FILE, large);
    assertThat(tryOpen(FILE).fault()).contains(tooLarge);
  }

  @Test
  void aLinkIsFollowedAndSharesTheLock() {
    Path link = FOLDER.resolve("link.rut");
    disk.link(link, FILE);
    NotebookFile file = tryOpen(link).result().orElseThrow().file();
    assertThat(file.path()).isEqualTo(FILE);
    assertThat(tryOpen(FILE).fault()).contains(new FileFault.Locked(FILE));
    file.save(Page.of(2));

    assertThat(number(FILE)).isEqualTo(2);
    assertThat(disk.names(FOLDER)).doesNotContain("link.rut");
  }

  @Test
  void aFolderThatMayNotBeWrittenIsReadWithoutALock() {
    disk.trouble(
        step ->
            step.equals("lock")
                ? Optional.of(new AccessDeniedException("lock"))
                : Optional.empty());
    Opened opened = tryOpen(FILE).result().orElseThrow();

    assertThat(opened.unguarded()).contains(new FileFault.ReadOnly(FILE));
    assertThat(opened.bytes()).isEqualTo(Page.of(1));
  }

  @Test
  void aFileThatMayNotBeWrittenIsNotReplacedThoughItsFolderWouldAllowIt() {
    NotebookFile file = open();
    disk.trouble(
        step ->
            step.equals("isWritable")
                ? Optional.of(new AccessDeniedException("season.rut"))
                : Optional.empty());

    assertThat(file.save(Page.of(2)).fault()).contains(new FileFault.ReadOnly(FILE));
    assertThat(number(FILE)).isEqualTo(1);
  }

  @Test
  void aFileSystemWithoutLocksIsSaidToHaveNone() {
    disk.trouble(
        step ->
            step.equals("lock")
                ? Optional.of(new IOException("No locks available"))
                : Optional.empty());

    assertThat(tryOpen(FILE).result().orElseThrow().unguarded())
        .contains(new FileFault.CannotLock(FILE, "No locks available"));
  }

  @Test
  void aNewNotebookIsMadeAndHeld() {
    Path fresh = FOLDER.resolve("fresh.rut");
    Opened opened =
        NotebookFile.create(disk, durable, fresh, Page.of(4), IfThere.REFUSE, clock)
            .result()
            .orElseThrow();

    assertThat(number(fresh)).isEqualTo(4);
    assertThat(tryOpen(fresh).fault()).contains(new FileFault.Locked(fresh));
    assertThat(opened.file().save(Page.of(5)).fault()).isEmpty();
    assertThat(number(fresh)).isEqualTo(5);
  }

  @Test
  void aTakenNameIsRefusedUnlessTheRiderSaidReplace() {
    assertThat(NotebookFile.create(disk, durable, FILE, Page.of(4), IfThere.REFUSE, clock).fault())
        .contains(new FileFault.AlreadyThere(FILE));
    assertThat(number(FILE)).isEqualTo(1);

    Opened opened =
        NotebookFile.create(disk, durable, FILE, Page.of(4), IfThere.REPLACE, clock)
            .result()
            .orElseThrow();

    assertThat(number(FILE)).isEqualTo(4);
    assertThat(Page.number(disk.bytes(opened.file().backups().list().get(0).file())))
        .isEqualTo(OptionalInt.of(1));
  }

  @Test
  void aFileInTheWayThatIsTooLargeToKeepAsABackupIsMovedAside() {
    byte[] large = new byte[(int) FileReading.LIMIT + 1];
    disk.put(FILE, large);
    NotebookFile.create(disk, durable, FILE, Page.of(4), IfThere.REPLACE, clock);

    assertThat(number(FILE)).isEqualTo(4);
    assertThat(disk.bytes(FOLDER.resolve("season.rut.unreadable-20260503-101500")))
        .hasSameSizeAs(large);
  }

  @Test
  void aNotebookOpenElsewhereIsNotReplaced() {
    NotebookFile elsewhere = open();
    assertThat(NotebookFile.create(disk, durable, FILE, Page.of(4), IfThere.REPLACE, clock).fault())
        .contains(new FileFault.Locked(FILE));
    elsewhere.close();
    assertThat(number(FILE)).isEqualTo(1);
  }

  @Test
  void aFailedOpeningLeavesNoLockBehind() {
    disk.trouble(
        step ->
            step.equals("read")
                ? Optional.of(new IOException("Input/output error"))
                : Optional.empty());
    assertThat(tryOpen(FILE).fault())
        .contains(new FileFault.Unreadable(FILE, "Input/output error"));
    disk.trouble(step -> Optional.empty());

    assertThat(tryOpen(FILE).fault()).isEmpty();
  }

  @Test
  void aClosedFileIsNotSaved() {
    NotebookFile file = open();
    file.close();
    assertThatThrownBy(() -> file.save(Page.of(2))).isInstanceOf(IllegalStateException.class);
    assertThat(number(FILE)).isEqualTo(1);
  }
}
