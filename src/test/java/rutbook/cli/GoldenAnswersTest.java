package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;

/**
 * What each command answers about the sample season, word for word. After a change that is meant,
 * run {@link #main} from the project's folder and look at what it changed.
 */
class GoldenAnswersTest {
  private static final Path SEASON = Path.of("sample-notebooks", "season.rutbook");
  private static final Path FOLDER = Path.of("src", "test", "resources", "rutbook", "cli");

  private static final Map<String, String> COMMANDS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("history", "history season --setting tube-above-clamp"),
              Map.entry("find", "find shelf kestrel quarter"),
              Map.entry("log", "log season"),
              Map.entry("compare", "compare season 2026-10-17#1 2026-10-17#2"),
              Map.entry("next", "next season --at 2026-10-17#1"),
              Map.entry("start", "next season --start kestrel-bank"),
              Map.entry("rebuild", "rebuild season --fork --changed oil,seals"),
              Map.entry("check", "check season"),
              Map.entry("fork", "fork season"),
              Map.entry("oil", "oil season"),
              Map.entry("sag", "sag season"),
              Map.entry("steering", "steering season"),
              Map.entry("import", "import season table.csv --laps 2026-10-17#1 --dry-run"),
              Map.entry("gas", "gas season --to-altitude 1500"),
              Map.entry(
                  "hand-over",
                  "hand-over season 2026-10-17#2 baseline --to x.setup.json --with laps,notes"),
              Map.entry("take-back", "take-back handed answer.setup.json --keep"),
              Map.entry("refusal", "compare season now 2026-02-30")));

  static Iterable<String> commands() {
    return COMMANDS.keySet();
  }

  private static String answer(String name) throws IOException {
    Notebook season = NotebookJson.read(Files.readAllBytes(SEASON));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    Map<String, Notebook> notebooks = new TreeMap<>(Map.of("season", season));
    notebooks.put("handed", HandedSeason.riddenOn(season));
    new RutbookCommand(terminal, notebooks::get, (file, bytes, replace) -> {}, new NoProgram())
        .with(
            new PenInHand(notebooks, HandedSeason.TODAY)
                .file("answer.setup.json", HandedSeason.answer(season))
                .file("table.csv", Tables.laps()))
        .lookingInto(folder -> List.of(new RutbookCommand.Named("season", () -> season)))
        .execute(
            terminal,
            thrown -> {
              throw new AssertionError(thrown);
            },
            (COMMANDS.get(name) + " --json").split(" "));
    return out.toString(StandardCharsets.UTF_8);
  }

  private static Path file(String name) {
    return FOLDER.resolve("season-" + name + ".json");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void theAnswerAboutTheSampleIsWordForWordTheSame(String name) throws IOException {
    assertThat(answer(name)).isEqualTo(Files.readString(file(name)));
  }

  @Test
  void everyCommandThatPrintsHasAGoldenAnswer() {
    assertThat(
            new picocli.CommandLine(new RutbookCommand(null, null, null, null))
                .getSubcommands()
                .keySet())
        .filteredOn(name -> !name.equals("card"))
        .isSubsetOf(COMMANDS.keySet());
  }

  /** Writes the golden answers. */
  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(FOLDER);
    for (String name : COMMANDS.keySet()) {
      Files.writeString(file(name), answer(name));
    }
  }
}
