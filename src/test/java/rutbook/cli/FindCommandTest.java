package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

class FindCommandTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final Notebook season = Samples.season();

  private Notebook broken() {
    throw Refusal.file("“broken.rutbook” is damaged.");
  }

  private int find(List<RutbookCommand.Named> shelf, String... words) {
    out.reset();
    Terminal terminal =
        new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    return new RutbookCommand(
            terminal, file -> season, (file, bytes, replace) -> {}, new NoProgram())
        .lookingInto(folder -> shelf)
        .execute(
            terminal,
            thrown -> {
              throw new AssertionError(thrown);
            },
            Stream.concat(Stream.of("find", "shelf"), Stream.of(words)).toArray(String[]::new));
  }

  private List<String> said() {
    return out.toString(StandardCharsets.UTF_8).lines().toList();
  }

  @Test
  void sessionsOfAllNotebooksAreFoundNewestFirst() {
    RutbookCommand.Named one = new RutbookCommand.Named("one.rutbook", () -> season);
    RutbookCommand.Named two = new RutbookCommand.Named("two.rutbook", () -> season);
    assertThat(find(List.of(one, two), "kestrel", "2026-09")).isZero();
    assertThat(said().get(0))
        .startsWith("26 Sept 2026 Kestrel Bank: ")
        .endsWith("(in one.rutbook)");
    assertThat(said()).anyMatch(line -> line.endsWith("(in two.rutbook)"));
    assertThat(said().get(said().size() - 1)).endsWith("notebooks searched: 2.");
  }

  @Test
  void aNotebookThatCannotBeReadIsNamedAndTheOthersAreSearched() {
    RutbookCommand.Named good = new RutbookCommand.Named("good.rutbook", () -> season);
    RutbookCommand.Named bad = new RutbookCommand.Named("broken.rutbook", this::broken);
    assertThat(find(List.of(bad, good), "kestrel", "--most", "1")).isEqualTo(Exit.NO_FILE);
    assertThat(said()).anyMatch(line -> line.contains("shown: 1; notebooks searched: 1."));
    assertThat(said().get(said().size() - 1))
        .isEqualTo("Not searched: “broken.rutbook” is damaged.");
  }

  @Test
  void nothingFoundIsSaid() {
    assertThat(find(List.of(), "anything")).isZero();
    assertThat(said()).containsExactly("Found: 0, shown: 0; notebooks searched: 0.");
    assertThat(find(List.of())).isEqualTo(Exit.WRONG_USE);
  }
}
