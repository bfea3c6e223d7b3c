package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;
import rutbook.file.NotebookFile.Opened;

/** Somebody else writes, moves or removes the notebook while it is open here. */
class BehindOurBackTest {
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
  void aFileReplacedByASyncToolIsNotSavedOver() {
    NotebookFile file = open();
    disk.put(FILE, Page.of(7));
    Outcome<Saved> outcome = file.save(Page.of(2));

    assertThat(outcome.fault())
        .contains(
            new FileFault.ChangedBehindOurBack(
                FILE, Instant.EPOCH.plusSeconds(1), Instant.EPOCH.plusSeconds(2)));
    assertThat(number(FILE)).isEqualTo(7);
    assertThat(file.backups().list()).isEmpty();
  }

  @Test
  void aChangeOfTheSameSizeIsSeen() {
    NotebookFile file = open();
    disk.put(FILE, "1|27|xxxxxxxxxxxxxxxxxxxxxxxxxXx|1".getBytes(StandardCharsets.UTF_8));
    assertThat(disk.bytes(FILE)).hasSameSizeAs(Page.of(1));

    assertThat(file.save(Page.of(2)).fault().orElseThrow())
        .isInstanceOf(FileFault.ChangedBehindOurBack.class);
  }

  @Test
  void theSameBytesPutThereAgainAreNoChange() {
    NotebookFile file = open();
    disk.put(FILE, Page.of(1));

    assertThat(file.save(Page.of(2)).fault()).isEmpty();
  }

  @Test
  void aChangeBetweenTheLookAndTheMoveIsSeenToo() {
    NotebookFile file = open();
    disk.trouble(
        step -> {
          if (step.equals("access")) {
            disk.put(FILE, Page.of(7));
          }
          return Optional.empty();
        });

    assertThat(file.save(Page.of(2)).fault().orElseThrow())
        .isInstanceOf(FileFault.ChangedBehindOurBack.class);
    assertThat(number(FILE)).isEqualTo(7);
    assertThat(disk.names(FOLDER)).noneMatch(name -> name.endsWith(".draft"));
  }

  @Test
  void mineIsKeptAsACopyAndTheOtherVersionStays() {
    NotebookFile file = open();
    disk.put(FILE, Page.of(7));
    file.save(Page.of(2));

    Opened copy = file.keepAsCopy(Page.of(2), "my copy").result().orElseThrow();
    Opened second = file.keepAsCopy(Page.of(3), "my copy").result().orElseThrow();

    assertThat(copy.file().path()).isEqualTo(FOLDER.resolve("season my copy 20260503-101500.rut"));
    assertThat(second.file().path())
        .isEqualTo(FOLDER.resolve("season my copy 20260503-101500-2.rut"));
    assertThat(number(copy.file().path())).isEqualTo(2);
    assertThat(number(second.file().path())).isEqualTo(3);
    assertThat(number(FILE)).isEqualTo(7);
    assertThat(copy.file().save(Page.of(4)).fault()).isEmpty();
  }

  @Test
  void afterReopeningSavingGoesOnFromTheOtherVersion() {
    NotebookFile file = open();
    disk.put(FILE, Page.of(7));
    file.save(Page.of(2));

    assertThat(file.reopen().result().orElseThrow()).isEqualTo(Page.of(7));
    assertThat(file.save(Page.of(8)).fault()).isEmpty();
    assertThat(number(FILE)).isEqualTo(8);
    assertThat(Page.number(disk.bytes(file.backups().list().get(0).file())))
        .isEqualTo(OptionalInt.of(7));
  }

  @Test
  void aFileThatVanishedIsNotMadeAgainWithoutAsking() {
    NotebookFile file = open();
    disk.removeFolder(FOLDER);
    assertThat(file.save(Page.of(2)).fault()).contains(new FileFault.FolderGone(FOLDER));

    disk.addFolder(FOLDER);
    assertThat(file.save(Page.of(2)).fault()).contains(new FileFault.Missing(FILE));
    assertThat(file.putBack(Page.of(2)).fault()).isEmpty();
    assertThat(number(FILE)).isEqualTo(2);
    assertThat(file.save(Page.of(3)).fault()).isEmpty();
  }

  @Test
  void aStickPulledOutAndPutBackIsSavedToAgain() {
    NotebookFile file = open();
    disk.removeFolder(FOLDER);
    assertThat(file.save(Page.of(2)).fault().orElseThrow().mayPass()).isTrue();
    disk.addFolder(FOLDER);
    disk.put(FILE, Page.of(1));

    assertThat(file.save(Page.of(2)).fault()).isEmpty();
  }
}
