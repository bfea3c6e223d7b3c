package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class FileNamesTest {

  @Test
  void aNameThatCanBeExpressedIsAPath() {
    assertThat(FileNames.path("season.rut")).isEqualTo(Outcome.done(Path.of("season.rut")));
    assertThat(FileNames.beside(Path.of("a", "season.rut"), "b.rut"))
        .isEqualTo(Outcome.done(Path.of("a", "b.rut")));
  }

  @Test
  void anEmptyNameAndOneWithANulAreBad() {
    assertThat(FileNames.path(" ").fault()).contains(new FileFault.BadName(" ", "empty"));
    assertThat(FileNames.path("a\0b").fault().orElseThrow())
        .isInstanceOfSatisfying(
            FileFault.BadName.class, bad -> assertThat(bad.name()).isEqualTo("a\0b"));
    assertThat(FileNames.beside(Path.of("a"), "\0").fault().orElseThrow())
        .isInstanceOf(FileFault.BadName.class);
  }

  /** The encoding of names is fixed when Java starts, so this takes a process of its own. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aNameTheSystemsEncodingCannotExpressIsBadAndNoException(@TempDir Path folder)
      throws Exception {
    make(folder);
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            place(FileNames.class) + ":" + place(NameChild.class),
            NameChild.class.getName(),
            folder.toString());
    builder.environment().put("LC_ALL", "POSIX");
    Process child = builder.redirectErrorStream(true).start();
    try (BufferedReader out = child.inputReader(StandardCharsets.US_ASCII)) {
      assertThat(out.lines().toList())
          .containsExactly(
              "typed: BadName",
              "typed in another script: BadName",
              "beside: BadName",
              "opened from a listing: BadName",
              "read from a listing: done",
              "opened through a link: BadName",
              "backups: 0");
    } finally {
      child.destroyForcibly();
    }
  }

  /** A file with a name beyond ASCII and a link to it, whatever the encoding of these tests is. */
  private static void make(Path folder) throws Exception {
    String script = "n=$(printf 'M\\303\\244rz.rut') && echo 1 > \"$n\" && ln -s \"$n\" link.rut";
    Process shell =
        new ProcessBuilder("sh", "-c", script).directory(folder.toFile()).inheritIO().start();
    assertThat(shell.waitFor()).isZero();
  }

  private static Path place(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  /** Says what comes of names beyond ASCII. */
  static final class NameChild {
    private NameChild() {}

    public static void main(String[] args) {
      Path folder = Path.of(args[0]);
      Disk disk = new RealDisk(System.getProperty("os.name"));
      DurableFile durable = new DurableFile(disk);
      FileReading reading = new FileReading(disk);
      Path link = folder.resolve("link.rut");
      Path real =
          reading.filesIn(folder, ".rut").result().orElseThrow().stream()
              .filter(file -> !file.equals(link))
              .findFirst()
              .orElseThrow();
      Clock clock = Clock.systemUTC();
      say("typed", FileNames.path("M\u00e4rz.rut"));
      say("typed in another script", FileNames.path("\u0441\u0435\u0437\u043e\u043d.rut"));
      say("beside", FileNames.beside(Path.of("season.rut"), "\u00bd.rut"));
      say("opened from a listing", NotebookFile.open(disk, durable, real, clock));
      say("read from a listing", reading.read(real, FileReading.LIMIT));
      say("opened through a link", NotebookFile.open(disk, durable, link, clock));
      Recovery recovery = new Recovery(disk, durable, link, clock);
      System.out.println("backups: " + recovery.newestReadable(bytes -> true).stream().count());
    }

    private static void say(String what, Outcome<?> outcome) {
      String came = outcome.fold(done -> "done", fault -> fault.getClass().getSimpleName());
      System.out.println(what + ": " + came);
    }
  }
}
