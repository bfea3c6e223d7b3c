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
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

class FigureCommandsTest {
  private final Map<String, Notebook> files =
      Map.of("season", Samples.season(), "split", Samples.splitFork(), "bench", Bench.notebook());
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream errors = new ByteArrayOutputStream();
  private final List<Throwable> logged = new ArrayList<>();

  private int run(Charset charset, String... words) {
    Terminal terminal = new Terminal(new PrintStream(out, true, charset), charset);
    return new RutbookCommand(terminal, files::get, (name, bytes, replace) -> {}, new NoProgram())
        .execute(new Terminal(new PrintStream(errors, true, charset), charset), logged::add, words);
  }

  private String lines(String... words) {
    out.reset();
    run(StandardCharsets.UTF_8, words);
    assertThat(logged).isEmpty();
    return out.toString(StandardCharsets.UTF_8);
  }

  private JsonNode answer(String... words) throws IOException {
    return new ObjectMapper().readTree(lines(words));
  }

  /** The number beside the name is that of the answer: one figure, said in two ways. */
  @Test
  void theForkSaysItsCurveAndItsReserveByFill() throws IOException {
    String said = lines("fork", "season");
    JsonNode curve = answer("fork", "season", "--json").path("curves").get(3);
    assertThat(curve.path("kind").asText()).isEqualTo("present");
    JsonNode end = curve.path("curve").path("value").path("points").get(100);
    assertThat(said)
        .contains("least, 300 mL", "most, 380 mL", "present, 345 mL", "slow – line – fast")
        .containsPattern("305.0 mm +" + Math.round(end.path("springsN").asDouble()) + " N")
        .contains(Math.round(end.path("lineN").asDouble()) + " N")
        .contains("By its model an estimate");
  }

  /** Every share names its quantity. */
  @Test
  void anotherFillSaysWhatItChangesShareByShare() {
    assertThat(lines("fork", "season", "--fill", "350"))
        .containsPattern("air force at mid-stroke \\+1\\.\\d %")
        .containsPattern("air force at the end of the travel \\+4\\.\\d %")
        .containsPattern("total force at the end of the travel \\+\\d")
        .containsPattern("energy over the whole travel \\+0\\.\\d %");
  }

  @Test
  void aFillBeyondTheChamberIsRefusedWithItsLimit() {
    assertThat(run(StandardCharsets.UTF_8, "fork", "season", "--fill", "390 mL"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(errors.toString(StandardCharsets.UTF_8)).contains("380");
    assertThat(out.size()).isZero();
  }

  @Test
  void oilsAreHeldAgainstTheOneInTheForkAsASense() throws IOException {
    assertThat(lines("oil", "season"))
        .contains("In the fork now: Cartridge oil, summer.")
        .contains("faster, and softer at low speed")
        .contains("thermometer")
        .doesNotContain("clicks");
    assertThat(lines("oil", "season", "--at", "100 °C"))
        .containsPattern("3.2 +3.2")
        .containsPattern("4.4 +4.4");
    assertThat(
            answer(
                    "oil",
                    "season",
                    "--json",
                    "--blend",
                    "Cartridge oil, thin",
                    "--blend",
                    "Cartridge oil, summer")
                .path("blend")
                .path("assumed")
                .toString())
        .isEqualTo("[\"oil-temperature\",\"blend-rule\"]");
  }

  @Test
  void theSagWorksheetSaysTheSpringWithItsRange() {
    assertThat(lines("sag", "season"))
        .contains("friction, either side together")
        .contains("the spring fits")
        .containsPattern("54 N/mm\\s+\\(5\\d[.\\d]*\\s+to\\s+57[.\\d]*\\)")
        .contains("One turn of the collar, 1.5 mm, is about 4.4 mm of race sag");
    assertThat(run(StandardCharsets.UTF_8, "sag", "bench")).isEqualTo(Exit.PROBLEM);
    assertThat(errors.toString(StandardCharsets.UTF_8)).contains("never measured");
  }

  /** 5 mm of fork height are about 0.17° (physics: rows c.pitch of the outside checks). */
  @Test
  void steeringRunsOverTheHeightsThatTheSheetAllows() {
    assertThat(lines("steering", "season"))
        .contains("5 mm, now", "0.17° nose up", "0.17° nose down", "lowers the front");
    assertThat(lines("steering", "season", "--rear-sag", "10 mm")).contains("+10 mm of rear sag");
    assertThat(run(StandardCharsets.UTF_8, "steering", "bench")).isEqualTo(Exit.PROBLEM);
    assertThat(lines("steering", "bench")).contains("wheelbase: not on the sheet");
  }

  @Test
  void gaugesAreReadAnewAfterAMove() {
    assertThat(lines("gas", "season", "--to-altitude", "1500", "--from", "20", "--to", "30 °C"))
        .contains("from 240 m, 20 °C to 1500 m, 30 °C")
        .contains("Trapped air: bled with the wheel off the ground")
        .contains("never opened");
    assertThat(lines("gas", "split")).contains("--to-altitude");
  }

  @ParameterizedTest
  @ValueSource(strings = {"fork", "oil", "sag", "steering", "gas"})
  void everyCommandFitsTheTerminalInEveryUnitAndLetter(String command) throws IOException {
    for (String file : List.of("season", "split")) {
      for (String units : List.of("metric", "us")) {
        String said = lines(command, file, "--units", units);
        assertThat(said.lines().filter(line -> line.length() > Terminal.WIDTH)).isEmpty();
        assertThat(said).isNotBlank().doesNotContain("{", "null", "Optional", "NaN", "Infinity");
        JsonNode answer = answer(command, file, "--units", units, "--json");
        assertThat(answer.path("answer").asText()).isEqualTo(command);
      }
    }
    out.reset();
    run(StandardCharsets.US_ASCII, command, "season");
    assertThat(out.toString(StandardCharsets.US_ASCII)).doesNotContain("?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fork season --fill thick",
        "fork season --altitude 20°C",
        "oil season --blend Lard",
        "oil season --part x",
        "steering season --rear-sag 3bar",
        "gas season --to 300m",
      })
  void wrongUseIsASentence(String words) {
    assertThat(run(StandardCharsets.UTF_8, words.split(" "))).isEqualTo(Exit.WRONG_USE);
    assertThat(errors.toString(StandardCharsets.UTF_8)).isNotBlank().doesNotContain("\tat ");
  }
}
