package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Other processes, on the disk of this computer: killed while they save, or wanting the same file.
 */
class OtherProgramsTest {
  @TempDir Path folder;

  /** What the kills did: none of these may happen. */
  private record Harm(int unreadable, int printedAndLost) {}

  @Test
  void tenKillsLoseNothing() throws Exception {
    assertThat(kill(10)).isEqualTo(new Harm(0, 0));
  }

  @Test
  @Tag("long")
  void threeHundredKillsLoseNothing() throws Exception {
    assertThat(kill(300)).isEqualTo(new Harm(0, 0));
  }

  private Harm kill(int times) throws Exception {
    Path file = Files.write(folder.resolve("season.rut"), Page.of(0));
    Random random = new Random(20260503);
    int unreadable = 0;
    int lost = 0;
    int printed = 0;
    for (int i = 0; i < times; i++) {
      int before = printed;
      printed = Math.max(printed, lastPrinted(start(file), random));
      assertThat(printed).as("numbers printed before kill %d", i).isGreaterThan(before);
      OptionalInt found = Page.number(Files.readAllBytes(file));
      unreadable += found.isEmpty() ? 1 : 0;
      lost += found.orElse(0) < printed ? 1 : 0;
      printed = found.orElse(printed);
    }
    opensAndTidiesUp(file);
    return new Harm(unreadable, lost);
  }

  /** Starts a child, kills it somewhere after a few saves, and gives the last number it printed. */
  private static int lastPrinted(Process child, Random random) throws Exception {
    try (BufferedReader out = child.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).startsWith("open ");
      int last = 0;
      for (int saves = 1 + random.nextInt(12); saves > 0; saves--) {
        last = Integer.parseInt(out.readLine());
      }
      LockSupport.parkNanos(random.nextInt(4_000_000));
      child.toHandle().destroyForcibly(); // unlike that of Process, leaves the output to be read
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        last = Integer.parseInt(line);
      }
      return last;
    } finally {
      child.destroyForcibly().waitFor();
    }
  }

  private void opensAndTidiesUp(Path file) throws IOException {
    Disk disk = new RealDisk(System.getProperty("os.name"));
    NotebookFile.Opened opened =
        NotebookFile.open(disk, new DurableFile(disk), file, Clock.systemUTC())
            .result()
            .orElseThrow();
    opened.file().close();
    assertThat(disk.list(folder))
        .extracting(entry -> entry.getFileName().toString())
        .containsExactlyInAnyOrder("season.rut", "season.rut.backups");
    assertThat(opened.file().backups().newestReadable(Page::readable)).isPresent();
  }

  @Test
  void aSecondProgramIsRefusedWhileTheFirstLivesAndNotAfterItIsKilled() throws Exception {
    Path file = Files.write(folder.toRealPath().resolve("season.rut"), Page.of(0));
    Disk disk = new RealDisk(System.getProperty("os.name"));
    Process child = start(file);
    try (BufferedReader out = child.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).isEqualTo("open 0");

      assertThat(NotebookFile.open(disk, new DurableFile(disk), file, Clock.systemUTC()))
          .isEqualTo(Outcome.refused(new FileFault.Locked(file)));
    } finally {
      child.destroyForcibly().waitFor();
    }
    NotebookFile ours =
        NotebookFile.open(disk, new DurableFile(disk), file, Clock.systemUTC())
            .result()
            .orElseThrow()
            .file();
    Process second = start(file);
    try (BufferedReader out = second.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).isEqualTo(new FileFault.Locked(file).toString());
      assertThat(second.waitFor()).isZero();
    } finally {
      second.destroyForcibly();
    }
    ours.close();
  }

  /** A test of the test: on some kill the file is found half written. */
  @Test
  void aSaveInPlaceIsFoundOutByKilling() throws Exception {
    Path file = folder.resolve("season.rut");
    Random random = new Random(20260503);
    int kills = 0;
    do {
      Files.write(file, Page.of(0));
      lastPrinted(start(file, "in place"), random);
      kills++;
    } while (Page.readable(Files.readAllBytes(file)) && kills < 100);

    assertThat(Page.readable(Files.readAllBytes(file))).as("readable after %d", kills).isFalse();
  }

  /** POSIX lets go of a lock when its own process opens and closes the file once more. */
  @Test
  void aSecondOpeningInTheSameProgramIsRefusedWithoutLosingTheLock() throws Exception {
    Path file = Files.write(folder.toRealPath().resolve("season.rut"), Page.of(0));
    Disk disk = new RealDisk(System.getProperty("os.name"));
    DurableFile durable = new DurableFile(disk);
    NotebookFile first =
        NotebookFile.open(disk, durable, file, Clock.systemUTC()).result().orElseThrow().file();
    assertThat(NotebookFile.open(disk, durable, file, Clock.systemUTC()).fault())
        .contains(new FileFault.Locked(file));
    assertThat(first.save(Page.of(1)).fault()).isEmpty();

    Process other = start(file);
    try (BufferedReader out = other.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).isEqualTo(new FileFault.Locked(file).toString());
    } finally {
      other.destroyForcibly().waitFor();
    }
    first.close();
  }

  @Test
  void programsThatFightForALockNeverHoldItTogether() throws Exception {
    Path lock = folder.toRealPath().resolve("lock");
    List<Process> programs = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      programs.add(start(LockingChild.class, lock.toString(), "2000"));
    }
    for (Process program : programs) {
      try (BufferedReader out = program.inputReader(StandardCharsets.UTF_8)) {
        assertThat(out.readLine()).isEqualTo("2000 held, 0 together");
      } finally {
        program.destroyForcibly();
      }
    }
    assertThat(lock).doesNotExist();
  }

  private static Process start(Path file, String... how) throws IOException, URISyntaxException {
    List<String> arguments = new ArrayList<>(List.of(file.toString()));
    arguments.addAll(List.of(how));
    return start(SavingChild.class, arguments.toArray(String[]::new));
  }

  private static Process start(Class<?> program, String... arguments)
      throws IOException, URISyntaxException {
    String classes =
        place(SavingChild.class) + System.getProperty("path.separator") + place(RealDisk.class);
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    List<String> command = new ArrayList<>();
    command.addAll(List.of(java.toString(), "-XX:TieredStopAtLevel=1", "-cp", classes));
    command.add(program.getName());
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  private static Path place(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }
}
