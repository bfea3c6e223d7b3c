package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RealDiskTest {
  @TempDir Path folder;

  private final Disk disk = new RealDisk(System.getProperty("os.name"));
  private final DurableFile durable = new DurableFile(disk);
  private final HandClock clock = new HandClock();
  private Path file;

  @BeforeEach
  void aNotebookIsThere() throws IOException {
    folder = folder.toRealPath();
    file = folder.resolve("season.rut");
    Files.write(file, Page.of(1));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
    }
  }

  private Outcome<NotebookFile.Opened> open(Path path) {
    return NotebookFile.open(disk, durable, path, clock);
  }

  @Test
  void aNotebookIsOpenedSavedBackedUpAndClosedWithNothingLeftOver() throws IOException {
    NotebookFile notebook = open(file).result().orElseThrow().file();
    assertThat(notebook.save(Page.of(2)).result().orElseThrow().backup()).isEmpty();
    assertThat(notebook.save(Page.of(3)).fault()).isEmpty();
    assertThat(names()).containsExactly(".season.rut.lock", "season.rut", "season.rut.backups");
    notebook.close();

    assertThat(Files.readAllBytes(file)).isEqualTo(Page.of(3));
    assertThat(names()).containsExactly("season.rut", "season.rut.backups");
    assertThat(notebook.backups().list()).hasSize(1);
    assertThat(notebook.backups().newestReadable(Page::readable)).isPresent();
  }

  @Test
  void replacingKeepsTheAccessRights() throws IOException {
    assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    durable.replace(file, Page.of(2));

    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void aLinkStaysALinkAndItsTargetIsSaved() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path target = Files.write(elsewhere.resolve("real.rut"), Page.of(1));
    Path near = Files.createSymbolicLink(folder.resolve("near"), Path.of("elsewhere/real.rut"));
    Path far = Files.createSymbolicLink(folder.resolve("far"), near);
    NotebookFile notebook = open(far).result().orElseThrow().file();
    assertThat(open(target).fault()).contains(new FileFault.Locked(target));
    assertThat(notebook.save(Page.of(2)).fault()).isEmpty();
    notebook.close();

    assertThat(far).isSymbolicLink();
    assertThat(near).isSymbolicLink();
    assertThat(Page.number(Files.readAllBytes(target))).isEqualTo(OptionalInt.of(2));
  }

  @Test
  void aLinkToNothingIsWrittenWhereItPoints() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("new.rut"));
    assertThat(open(link).fault()).contains(new FileFault.Missing(link));
    durable.replace(link, Page.of(2));

    assertThat(link).isSymbolicLink();
    assertThat(Files.readAllBytes(folder.resolve("new.rut"))).isEqualTo(Page.of(2));
  }

  @Test
  void linksInACircleAreAFault() throws IOException {
    Path one = folder.resolve("one");
    Path two = Files.createSymbolicLink(folder.resolve("two"), one);
    Files.createSymbolicLink(one, two);

    assertThat(open(one).fault().orElseThrow()).isInstanceOf(FileFault.Unreadable.class);
    assertThat(durable.write(one, Page.of(2)).fault().orElseThrow())
        .isInstanceOf(FileFault.Failed.class);
  }

  @Test
  void aFolderRemovedWhileOpenIsAFaultAndComesBackToLife() throws IOException {
    Path stick = Files.createDirectory(folder.resolve("stick"));
    Path onStick = Files.write(stick.resolve("season.rut"), Page.of(1));
    NotebookFile notebook = open(onStick).result().orElseThrow().file();
    Files.move(stick, folder.resolve("pulled"));
    assertThat(notebook.save(Page.of(2)).fault()).contains(new FileFault.FolderGone(stick));
    Files.move(folder.resolve("pulled"), stick);

    assertThat(notebook.save(Page.of(2)).fault()).isEmpty();
    notebook.close();
    assertThat(Files.readAllBytes(onStick)).isEqualTo(Page.of(2));
  }

  @Test
  void aFileReplacedByAnotherProgramIsNotSavedOver() throws IOException {
    NotebookFile notebook = open(file).result().orElseThrow().file();
    Path incoming = Files.write(folder.resolve("incoming"), Page.of(7));
    Files.setLastModifiedTime(incoming, Files.getLastModifiedTime(file));
    disk.moveOver(incoming, file);

    assertThat(notebook.save(Page.of(2)).fault().orElseThrow())
        .isInstanceOf(FileFault.ChangedBehindOurBack.class);
    notebook.close();
    assertThat(Files.readAllBytes(file)).isEqualTo(Page.of(7));
  }

  @Test
  void aDraftLeftByACrashIsRemovedAndOthersAreNot() throws IOException {
    Path ours = DraftName.of(file, 999);
    Path another = DraftName.of(folder.resolve("other.rut"), 999);
    Files.write(ours, new byte[1]);
    Files.write(another, new byte[1]);
    open(file).result().orElseThrow().file().close();

    assertThat(names()).containsExactlyInAnyOrder("season.rut", another.getFileName().toString());
  }

  @Test
  void aDraftsNameThatIsTakenIsLeftAloneAndTheNextIsUsed() throws IOException {
    for (int number = 1; number < 2000; number++) {
      Files.write(DraftName.of(file, number), new byte[1]);
    }
    durable.replace(file, Page.of(2));

    assertThat(Files.readAllBytes(file)).isEqualTo(Page.of(2));
    assertThat(names()).hasSize(2000);
    assertThatThrownBy(() -> disk.draft(DraftName.of(file, 7)))
        .isInstanceOf(FileAlreadyExistsException.class);
  }

  @Test
  void whatIsNoFileIsNotRead() {
    assertThat(open(folder).fault()).contains(new FileFault.IsFolder(folder));
    assertThat(durable.write(folder, Page.of(1)).fault()).contains(new FileFault.IsFolder(folder));
    Path device = Path.of("/dev/zero");
    if (Files.exists(device)) {
      assertThat(new FileReading(disk).read(device, FileReading.LIMIT).fault())
          .contains(new FileFault.Unreadable(device, "not a file"));
    }
  }

  @Test
  void aFileThatGrowsBeyondTheLimitWhileItIsReadIsStillTooLarge() {
    assertThatThrownBy(() -> disk.read(file, 5))
        .isInstanceOfSatisfying(
            FaultException.class,
            thrown -> assertThat(thrown.fault()).isEqualTo(new FileFault.TooLarge(file, 6, 5)));
  }

  @Test
  void aNameThatIsTooLongIsABadName() {
    Path name = folder.resolve("n".repeat(300) + ".rut");
    assertThat(open(name).fault().orElseThrow()).isInstanceOf(FileFault.BadName.class);
    assertThat(durable.write(name, Page.of(1)).fault().orElseThrow())
        .isInstanceOf(FileFault.BadName.class);
  }

  @Test
  void theLongestNameThatCanBeOpenedCanBeSaved() throws IOException {
    Path longest = Files.write(folder.resolve("n".repeat(251) + ".rut"), Page.of(1));
    NotebookFile.Opened opened = open(longest).result().orElseThrow();
    Saved saved = opened.file().save(Page.of(2)).result().orElseThrow();

    assertThat(opened.unguarded().orElseThrow()).isInstanceOf(FileFault.CannotLock.class);
    assertThat(saved.backup().orElseThrow()).isInstanceOf(FileFault.BadName.class);
    assertThat(Files.readAllBytes(longest)).isEqualTo(Page.of(2));
    opened.file().close();
  }

  @Test
  void aLockIsFreeAgainHoweverOftenItIsTaken() throws IOException {
    Path lock = folder.resolve("lock");
    for (int i = 0; i < 20; i++) {
      Disk.Hold hold = disk.lock(lock).orElseThrow();
      assertThat(disk.lock(lock)).isEmpty();
      hold.close();
      hold.close();
    }
    assertThat(lock).doesNotExist();
  }

  @Test
  void settingsAreStoredInAFolderMadeForThem() {
    Path settings = folder.resolve("a").resolve("b").resolve("window.txt");
    SettingsFile stored = new SettingsFile(disk, settings);
    assertThat(stored.store(WindowSettings.unset().opened("ü.rut").asMap()).fault()).isEmpty();

    assertThat(WindowSettings.from(stored.load()))
        .isEqualTo(WindowSettings.unset().opened("ü.rut"));
  }

  /** A number given again to a new file, or a name that comes back after a power cut. */
  @Test
  void aLockFileThatWasRemovedIsNotTakenForTheLock() throws IOException {
    Path lock = folder.resolve("lock");
    Path removed = folder.resolve("removed");
    Disk.Hold first = disk.lock(lock).orElseThrow();
    Files.createLink(removed, lock);
    first.close();
    Files.createLink(lock, removed);

    Disk.Hold second = disk.lock(lock).orElseThrow();
    assertThat(Files.isSameFile(lock, removed)).isFalse();
    assertThat(disk.lock(lock)).isEmpty();
    second.close();
    assertThat(lock).doesNotExist();
  }
}
