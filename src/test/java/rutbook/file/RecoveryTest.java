package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;
import rutbook.file.NotebookFile.Opened;

class RecoveryTest {
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
  void anUnreadableFileIsKeptAndTheNewestReadableBackupTakesItsPlace() {
    NotebookFile file = open();
    file.save(Page.of(2));
    clock.move(Duration.ofMinutes(10));
    file.save(Page.of(3));
    file.close();
    Backup newest = file.backups().list().get(0);
    disk.put(newest.file(), new byte[] {1});
    disk.put(FILE, new byte[] {2});
    Recovery recovery = new Recovery(disk, durable, FILE, clock);

    Backup offered = recovery.newestReadable(Page::readable).orElseThrow();
    assertThat(offered.time()).isEqualTo(Instant.parse("2026-05-03T10:15:00Z"));
    assertThat(offered.file().getFileName()).hasToString("000001-20260503T101500Z.rut");
    Recovery.Restored restored = recovery.restore(offered).result().orElseThrow();

    Path aside = FOLDER.resolve("season.rut.unreadable-20260503-102500");
    assertThat(restored.keptAside()).contains(aside);
    assertThat(disk.bytes(aside)).isEqualTo(new byte[] {2});
    assertThat(restored.opened().bytes()).isEqualTo(Page.of(1));
    assertThat(restored.opened().file().save(Page.of(5)).fault()).isEmpty();
    assertThat(number(FILE)).isEqualTo(5);
  }

  @Test
  void aMissingFileIsRestoredWithNothingToKeepAside() {
    NotebookFile file = open();
    file.save(Page.of(2));
    file.close();
    disk.remove(FILE);
    Recovery recovery = new Recovery(disk, durable, FILE, clock);

    Recovery.Restored restored =
        recovery.restore(recovery.newestReadable(Page::readable).orElseThrow()).result().get();

    assertThat(restored.keptAside()).isEmpty();
    assertThat(number(FILE)).isEqualTo(1);
  }

  @Test
  void aNotebookOpenElsewhereIsNotRestoredOver() {
    NotebookFile file = open();
    file.save(Page.of(2));
    Recovery recovery = new Recovery(disk, durable, FILE, clock);
    Backup backup = recovery.newestReadable(Page::readable).orElseThrow();

    assertThat(recovery.restore(backup).fault()).contains(new FileFault.Locked(FILE));
    assertThat(number(FILE)).isEqualTo(2);
  }

  @Test
  void aRestoreThatHasNoRoomTouchesNothing() {
    NotebookFile file = open();
    file.save(Page.of(2));
    file.close();
    disk.put(FILE, new byte[] {2});
    Recovery recovery = new Recovery(disk, durable, FILE, clock);
    Backup backup = recovery.newestReadable(Page::readable).orElseThrow();
    List<String> before = disk.names(FOLDER);
    FileFault full = new FileFault.DiskFull(FILE, 9);
    disk.trouble(
        step -> step.equals("write") ? Optional.of(new FaultException(full)) : Optional.empty());

    assertThat(recovery.restore(backup).fault()).contains(full);
    assertThat(disk.names(FOLDER)).isEqualTo(before);
    assertThat(disk.bytes(FILE)).isEqualTo(new byte[] {2});
  }
}
