package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;

/** Something goes wrong at every step of opening and saving. */
class DiskTroubleTest {
  private static final Path FILE = ForgetfulDisk.FOLDER.resolve("season.rut");
  private static final Set<String> TAKES_ROOM =
      Set.of("draft", "write", "force", "close", "move", "forceFolder", "makeFolder", "lock");

  /** How a run ended. */
  private record Ran(ForgetfulDisk disk, Optional<FileFault> fault, boolean happened) {}

  /**
   * Opens and saves once; from the given step on, or at that step only, each step that the trouble
   * concerns fails. Then the trouble ends, and the same save must come through.
   */
  private static Ran run(
      int step, boolean lasting, Predicate<String> concerns, Supplier<IOException> what) {
    ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
    disk.put(FILE, Page.of(1));
    List<String> failed = new ArrayList<>();
    disk.trouble(
        name -> {
          boolean due = lasting ? disk.steps().size() >= step : disk.steps().size() == step;
          if (!due || !concerns.test(name) || name.equals("isWritable") && !lasting) {
            return Optional.empty();
          }
          failed.add(name);
          return Optional.of(what.get());
        });
    DurableFile durable = new DurableFile(disk, millis -> {});
    Outcome<NotebookFile.Opened> opened = NotebookFile.open(disk, durable, FILE, new HandClock());
    Outcome<Saved> saved = opened.then(it -> it.file().save(Page.of(2)));
    assertThat(Page.readable(disk.bytes(FILE))).as("step %d", step).isTrue();
    if (saved.result().isPresent()) {
      assertThat(Page.number(disk.bytes(FILE))).isEqualTo(OptionalInt.of(2));
    }
    if (!lasting) {
      assertThat(disk.names(ForgetfulDisk.FOLDER)).noneMatch(name -> name.endsWith(".draft"));
    }
    disk.trouble(name -> Optional.empty());
    NotebookFile file =
        opened
            .result()
            .orElseGet(
                () ->
                    NotebookFile.open(disk, durable, FILE, new HandClock()).result().orElseThrow())
            .file();
    assertThat(file.save(Page.of(3)).fault()).as("after trouble at step %d", step).isEmpty();
    assertThat(Page.number(disk.bytes(FILE))).isEqualTo(OptionalInt.of(3));
    file.close();
    return new Ran(disk, saved.fault(), !failed.isEmpty());
  }

  private static List<FileFault> everywhere(
      boolean lasting, Predicate<String> concerns, Supplier<IOException> what) {
    List<FileFault> faults = new ArrayList<>();
    for (int step = 1; step < 200; step++) {
      Ran ran = run(step, lasting, concerns, what);
      if (!ran.happened() && step > 30) {
        assertThat(faults).isNotEmpty();
        return faults;
      }
      ran.fault().ifPresent(faults::add);
    }
    throw new AssertionError("it never ends");
  }

  @Test
  void aDiskThatFillsUpAtAnyStepIsSaidToBeFullAndTheNotebookStays() {
    List<FileFault> faults =
        everywhere(
            true, TAKES_ROOM::contains, () -> new FaultException(new FileFault.DiskFull(FILE, 50)));

    assertThat(faults).allMatch(FileFault.DiskFull.class::isInstance);
    assertThat(faults).hasSizeGreaterThan(10);
  }

  @Test
  void aSingleStepWithoutRoomLeavesNoDraftBehind() {
    List<FileFault> faults =
        everywhere(
            false,
            TAKES_ROOM::contains,
            () -> new FaultException(new FileFault.DiskFull(FILE, 50)));

    assertThat(faults).allMatch(FileFault.DiskFull.class::isInstance);
  }

  @Test
  void permissionLostAtAnyStepIsATypedFaultAndTheNotebookStays() {
    List<FileFault> faults =
        everywhere(true, step -> true, () -> new AccessDeniedException(FILE.toString()));

    assertThat(faults)
        .allMatch(
            fault -> fault instanceof FileFault.ReadOnly || fault instanceof FileFault.Unreadable)
        .anyMatch(FileFault.ReadOnly.class::isInstance)
        .anyMatch(FileFault.Unreadable.class::isInstance);
  }

  @Test
  void anErrorOfTheDeviceAtAnyStepIsAFaultAndTheNotebookStays() {
    List<FileFault> faults =
        everywhere(false, step -> true, () -> new IOException("Input/output error"));

    assertThat(faults)
        .allMatch(
            fault -> fault instanceof FileFault.Failed || fault instanceof FileFault.Unreadable);
  }

  @Test
  void aBackupThatCannotBeMadeIsReportedAndDoesNotStopTheSave() {
    ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
    disk.put(FILE, Page.of(1));
    NotebookFile file =
        NotebookFile.open(disk, new DurableFile(disk), FILE, new HandClock())
            .result()
            .orElseThrow()
            .file();
    disk.trouble(
        step ->
            step.equals("makeFolder")
                ? Optional.of(new AccessDeniedException(FILE.toString()))
                : Optional.empty());

    Saved saved = file.save(Page.of(2)).result().orElseThrow();

    assertThat(saved.backup())
        .contains(new FileFault.ReadOnly(FILE.resolveSibling("season.rut.backups")));
    assertThat(Page.number(disk.bytes(FILE))).isEqualTo(OptionalInt.of(2));
  }

  @Test
  void aScannerThatHoldsTheFileForAMomentIsWaitedFor() throws IOException {
    ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
    disk.put(FILE, Page.of(1));
    disk.scannersHoldFiles(true);
    List<Long> waits = new ArrayList<>();
    disk.trouble(
        step ->
            step.equals("move") && waits.size() < 5
                ? Optional.of(new AccessDeniedException(FILE.toString()))
                : Optional.empty());

    new DurableFile(disk, waits::add).replace(FILE, Page.of(2));

    assertThat(waits).containsExactly(10L, 20L, 40L, 80L, 160L);
    assertThat(Page.number(disk.bytes(FILE))).isEqualTo(OptionalInt.of(2));
  }

  @Test
  void aScannerThatNeverLetsGoIsAFaultAfterLessThanTwoSeconds() {
    ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
    disk.put(FILE, Page.of(1));
    disk.scannersHoldFiles(true);
    disk.trouble(
        step ->
            step.equals("move")
                ? Optional.of(new FileSystemException(FILE.toString(), null, "in use"))
                : Optional.empty());
    List<Long> waits = new ArrayList<>();

    Outcome<Path> outcome = new DurableFile(disk, waits::add).write(FILE, Page.of(2));

    assertThat(outcome.fault()).contains(new FileFault.Failed(FILE, "in use"));
    assertThat(waits.stream().mapToLong(Long::longValue).sum()).isLessThan(2000);
    assertThat(disk.names(ForgetfulDisk.FOLDER)).containsExactly("season.rut");
    assertThat(Page.number(disk.bytes(FILE))).isEqualTo(OptionalInt.of(1));
  }

  @Test
  void whereNoScannersAreAMoveIsNotTriedAgain() {
    ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
    disk.put(FILE, Page.of(1));
    disk.trouble(
        step ->
            step.equals("move")
                ? Optional.of(new AccessDeniedException(FILE.toString()))
                : Optional.empty());
    List<Long> waits = new ArrayList<>();

    Outcome<Path> outcome = new DurableFile(disk, waits::add).write(FILE, Page.of(2));

    assertThat(outcome.fault()).contains(new FileFault.ReadOnly(FILE));
    assertThat(waits).isEmpty();
  }

  @Test
  void theAutosaverGoesOnWhenAFullDiskHasRoomAgain() {
    ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
    disk.put(FILE, Page.of(1));
    NotebookFile file =
        NotebookFile.open(disk, new DurableFile(disk), FILE, new HandClock())
            .result()
            .orElseThrow()
            .file();
    HandLater later = new HandLater();
    Autosaver<Integer> saver =
        new Autosaver<>(
            Page::of,
            file::save,
            new Autosaver.Means(later, Runnable::run, new HandClock()),
            state -> {});
    disk.trouble(
        step ->
            step.equals("write")
                ? Optional.of(new FaultException(new FileFault.DiskFull(FILE, 9)))
                : Optional.empty());
    saver.changed(2);
    later.pass(Duration.ofMinutes(5));
    assertThat(saver.state()).isInstanceOf(SaveState.Failed.class);
    saver.changed(3);
    disk.trouble(step -> Optional.empty());
    later.pass(Duration.ofMinutes(1));

    assertThat(saver.state()).isInstanceOf(SaveState.Saved.class);
    assertThat(Page.number(disk.bytes(FILE))).isEqualTo(OptionalInt.of(3));
  }
}
