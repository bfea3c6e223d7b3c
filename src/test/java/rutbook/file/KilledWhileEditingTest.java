package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.json.JsonException;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

/** The whole way from an edit to the disk, in a program that is killed while the rider edits. */
class KilledWhileEditingTest {
  @TempDir Path folder;

  /** What the kills did: none of these may happen. */
  private record Harm(int unreadable, int printedAndLost) {}

  @Test
  void fiveKillsWhileEditingLoseNothingThatWasSaidToBeSaved() throws Exception {
    assertThat(kill(5)).isEqualTo(new Harm(0, 0));
  }

  @Test
  @Tag("long")
  void threeHundredKillsWhileEditingLoseNothingThatWasSaidToBeSaved() throws Exception {
    assertThat(kill(300)).isEqualTo(new Harm(0, 0));
  }

  private Harm kill(int times) throws Exception {
    Notebook notebook = Samples.firstDay();
    Path file = Files.write(folder.resolve("season.rutbook"), NotebookJson.write(notebook));
    Random random = new Random(20261127);
    int unreadable = 0;
    int lost = 0;
    for (int i = 0; i < times; i++) {
      int printed = lastPrinted(file, random);
      try {
        int found = EditingChild.number(NotebookJson.read(Files.readAllBytes(file)));
        lost += found < printed ? 1 : 0;
      } catch (JsonException refused) {
        unreadable++;
      }
    }
    return new Harm(unreadable, lost);
  }

  /** Starts a child, kills it somewhere after a few saves, and gives the last number it printed. */
  private static int lastPrinted(Path file, Random random) throws Exception {
    Process child = start(file);
    try (BufferedReader out = child.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).startsWith("open ");
      int last = 0;
      for (int saves = 1 + random.nextInt(8); saves > 0; saves--) {
        last = Integer.parseInt(out.readLine());
      }
      LockSupport.parkNanos(random.nextInt(15_000_000));
      child.toHandle().destroyForcibly(); // unlike that of Process, leaves the output to be read
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        last = Integer.parseInt(line);
      }
      return last;
    } finally {
      child.destroyForcibly().waitFor();
    }
  }

  private static Process start(Path file) throws IOException {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    List<String> command =
        List.of(
            java.toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            EditingChild.class.getName(),
            file.toString());
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }
}
