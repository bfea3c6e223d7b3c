package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

class JsonAnswersTest {
  private final Map<String, Notebook> files =
      Map.of("season", Samples.season(), "split", Samples.splitFork());
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream errors = new ByteArrayOutputStream();
  private final List<Throwable> logged = new ArrayList<>();

  private int run(Charset charset, String... words) {
    Terminal terminal = new Terminal(new PrintStream(out, true, charset), charset);
    Terminal beside = new Terminal(new PrintStream(errors, true, charset), charset);
    return new RutbookCommand(terminal, files::get, (name, bytes, replace) -> {}, new NoProgram())
        .execute(beside, logged::add, words);
  }

  private JsonNode answer(String words) throws IOException {
    int exit = run(StandardCharsets.UTF_8, words.split(" "));
    JsonNode answer = new ObjectMapper().readTree(out.toByteArray());
    assertThat(answer.path("exit").intValue()).isEqualTo(exit);
    assertThat(errors.size()).isZero();
    return answer;
  }

  @ParameterizedTest
  @CsvSource({
    "log,log season --json",
    "compare,compare season now baseline --json",
    "rebuild,rebuild season --fork --json",
    "check,check season --json",
  })
  void everyCommandAnswersWithOneObjectThatNamesIt(String name, String words) throws IOException {
    JsonNode answer = answer(words);
    assertThat(answer.path("answer").asText()).isEqualTo(name);
    assertThat(answer.path("version").intValue()).isEqualTo(1);
    assertThat(answer.path("bike").path("id").asText()).isEqualTo("corvane-250");
  }

  @ParameterizedTest
  @CsvSource({
    "2,compare season now yesterday --json",
    "2,log season --bike Other --json",
    "2,log season --json --units stones",
    "2,rebuild season --json",
    "2,fly season --json",
    "4,log nowhere --json",
  })
  void aRefusalIsAnAnswerTooWithTheSameExit(int exit, String words) throws IOException {
    JsonNode answer = answer(words);
    assertThat(answer.path("answer").asText()).isEqualTo("refusal");
    assertThat(answer.path("exit").intValue()).isEqualTo(exit);
    assertThat(answer.path("sentence").asText()).isNotBlank();
  }

  @Test
  void amountsAreAsWrittenUnlessUnitsAreAskedFor() throws IOException {
    assertThat(fill("log split --json")).isEqualTo("{\"value\":18,\"unit\":\"fl oz\"}");
    out.reset();
    assertThat(fill("log split --json --units metric"))
        .isEqualTo("{\"value\":532.323532,\"unit\":\"mL\"}");
  }

  /** 1 US fl oz is 29.5735295625 mL by its definition of 231/128 cubic inches. */
  private String fill(String words) throws IOException {
    for (JsonNode row : answer(words).path("now")) {
      if (row.path("setting").path("role").asText().equals("fork-oil")) {
        JsonNode reading = row.path("reading");
        return (reading.has("left") ? reading.path("left") : reading).toString();
      }
    }
    throw new AssertionError("no fork oil");
  }

  @Test
  void aTerminalOfFewLettersGetsTheSameAnswerInEscapes() throws IOException {
    JsonNode whole = answer("rebuild season --fork --json");
    out.reset();
    run(StandardCharsets.US_ASCII, "rebuild", "season", "--fork", "--json");
    assertThat(out.toString(StandardCharsets.US_ASCII)).contains("N\\u00b7m").doesNotContain("?");
    assertThat(new ObjectMapper().readTree(out.toByteArray())).isEqualTo(whole);
  }

  @Test
  void helpSaysIt() {
    run(StandardCharsets.UTF_8, "log", "--help");
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("one JSON object");
    out.reset();
    run(StandardCharsets.UTF_8, "--help");
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("--json").contains("wrong use");
  }
}
