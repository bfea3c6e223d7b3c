package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WentWrongTest {
  private static final WentWrong.Where HERE = new WentWrong.Where("1.0.0", "Linux 6.1", "17.0.15");
  private static final Instant WHEN = Instant.parse("2026-11-27T06:30:00Z");

  @TempDir private Path folder;

  private static Throwable fault() {
    Throwable cause = new IOException("/home/someone/Rutbook/secret moto.rutbook");
    Throwable thrown = new IllegalStateException("the note says secret", cause);
    thrown.addSuppressed(new RuntimeException("secret too"));
    thrown.setStackTrace(new StackTraceElement[] {place("show", 12)});
    cause.setStackTrace(new StackTraceElement[] {place("read", 7)});
    thrown.getSuppressed()[0].setStackTrace(new StackTraceElement[0]);
    return thrown;
  }

  private static StackTraceElement place(String method, int line) {
    return new StackTraceElement("rutbook.ui.Somewhere", method, "Somewhere.java", line);
  }

  @Test
  void theKindAndThePlacesAreToldAndNoMessage() {
    assertThat(WentWrong.text(HERE, WHEN, fault()).lines())
        .containsExactly(
            "Rutbook 1.0.0",
            "Linux 6.1",
            "Java 17.0.15",
            "2026-11-27T06:30:00Z",
            "java.lang.IllegalStateException",
            "  at rutbook.ui.Somewhere.show(Somewhere.java:12)",
            "while that was handled, java.lang.RuntimeException",
            "because of java.io.IOException",
            "  at rutbook.ui.Somewhere.read(Somewhere.java:7)");
  }

  @Test
  void causesThatGoInACircleComeToAnEnd() {
    Exception one = new Exception();
    Exception other = new Exception(one);
    one.initCause(other);
    assertThat(WentWrong.text(HERE, WHEN, one).lines().filter(line -> line.startsWith("because")))
        .hasSize(8);
  }

  @Test
  void theFileIsInAFolderMadeForIt() throws IOException {
    Path file = folder.resolve("state").resolve("what-went-wrong.txt");
    WentWrong written = new WentWrong(new RealDisk(System.getProperty("os.name")), file);
    assertThat(written.write(HERE, WHEN, fault()).result()).contains(file);
    assertThat(Files.readString(file)).startsWith("Rutbook 1.0.0").doesNotContain("secret");
  }
}
