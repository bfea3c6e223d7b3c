package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import rutbook.notebook.AnyNotebook;
import rutbook.notebook.Notebook;

/** Whatever a notebook says, as long as it can be a notebook, no command stumbles over it. */
class AnyNotebookTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final List<Throwable> logged = new ArrayList<>();

  private int run(Function<String, Notebook> reader, String... words) {
    Terminal terminal =
        new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    return new RutbookCommand(terminal, reader, (name, bytes, replace) -> {}, new NoProgram())
        .execute(terminal, logged::add, words);
  }

  @Test
  void everyCommandAnswersEveryNotebook() {
    List<String> commands =
        List.of(
            "log a",
            "check a",
            "compare a now baseline",
            "rebuild a --fork --changed oil,seals,spring,valving",
            "rebuild a --fork --shock",
            "fork a",
            "oil a",
            "sag a",
            "steering a",
            "gas a");
    for (int seed = 100; seed < 112; seed++) {
      Notebook notebook = AnyNotebook.of(seed);
      for (String command : commands) {
        int exit = run(file -> notebook, command.split(" "));
        assertThat(logged).as(command + " of notebook " + seed).isEmpty();
        assertThat(exit).as(command + " of notebook " + seed).isLessThan(Exit.NO_FILE);
      }
    }
    assertThat(out.toString(StandardCharsets.UTF_8)).doesNotContain("Optional[");
  }

  @Test
  void aProgramThatRunsOutOfMemorySaysOneSentence() {
    int exit =
        run(
            file -> {
              throw new OutOfMemoryError("as if");
            },
            "log",
            "a");
    assertThat(exit).isEqualTo(Exit.UNEXPECTED);
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("(OutOfMemoryError)");
    assertThat(logged).hasSize(1);
  }
}
