package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.file.RealDisk;
import rutbook.file.UserFolders;
import rutbook.units.Display;
import rutbook.words.Phrases;

class UnforeseenTest {
  @TempDir private Path folder;

  private Unforeseen unforeseen(Path logs) {
    return new Unforeseen(
        new RealDisk(System.getProperty("os.name")),
        new UserFolders(folder.resolve("config"), folder.resolve("cache"), logs),
        Clock.fixed(Instant.parse("2026-11-27T06:30:00Z"), ZoneOffset.UTC),
        Phrases.english(Display.METRIC));
  }

  private static Throwable fault() {
    return new IllegalStateException("the note says secret");
  }

  @Test
  void theLogHasAllAndTheFileForOthersNothingPrivate() throws IOException {
    Optional<String> said = unforeseen(folder).note("JavaFX Application Thread", fault());
    Path file = folder.resolve("what-went-wrong.txt");
    assertThat(said)
        .contains(
            "Something went wrong in the program itself; your notebook is not harmed. What happened"
                + " is written in "
                + file
                + ", without any name, note or place of yours, so that you can pass it on.");
    assertThat(Files.readString(folder.resolve("rutbook.log")))
        .startsWith("2026-11-27T06:30:00Z JavaFX Application Thread")
        .contains("the note says secret");
    assertThat(Files.readString(file))
        .startsWith("Rutbook " + Build.version())
        .contains("java.lang.IllegalStateException", "UnforeseenTest.fault")
        .doesNotContain("secret");
  }

  @Test
  void theSameFaultAtTheSamePlaceIsToldOnce() {
    Unforeseen unforeseen = unforeseen(folder);
    assertThat(unforeseen.note("window", fault())).isPresent();
    assertThat(unforeseen.note("window", fault())).isEmpty();
  }

  @Test
  void whereNothingCanBeWrittenThatIsSaid() throws IOException {
    Path noFolder = Files.createFile(folder.resolve("a file"));
    assertThat(unforeseen(noFolder).note("window", fault()))
        .contains(
            "Something went wrong in the program itself; your notebook is not harmed. What happened"
                + " could not be written down.");
  }
}
