package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

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
  void aNameTheSystemsEncodingCannotExpressIsBadAndNoException() throws Exception {
    Path classes =
        Path.of(FileNames.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Path tests =
        Path.of(FileNamesTest.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            classes + ":" + tests,
            NameChild.class.getName());
    builder.environment().put("LC_ALL", "POSIX");
    Process child = builder.redirectErrorStream(true).start();
    try (BufferedReader out = child.inputReader(StandardCharsets.US_ASCII)) {
      assertThat(List.of(out.readLine(), out.readLine(), out.readLine()))
          .containsExactly("BadName", "BadName", "BadName");
    } finally {
      child.destroyForcibly();
    }
  }

  /** Says what comes of names beyond ASCII. */
  static final class NameChild {
    private NameChild() {}

    public static void main(String[] args) {
      System.out.println(kind(FileNames.path("M\u00e4rz.rut")));
      System.out.println(kind(FileNames.path("\u0441\u0435\u0437\u043e\u043d.rut")));
      System.out.println(kind(FileNames.beside(Path.of("season.rut"), "\u00bd.rut")));
    }

    private static String kind(Outcome<Path> outcome) {
      return outcome.fold(
          path -> "a path of " + path.toString().length(),
          fault -> fault.getClass().getSimpleName());
    }
  }
}
