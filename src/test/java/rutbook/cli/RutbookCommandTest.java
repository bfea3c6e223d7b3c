package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.Measure;
import rutbook.notebook.Notebook;
import rutbook.notebook.Range;
import rutbook.samples.Samples;
import rutbook.units.Display;
import rutbook.words.Phrases;

class RutbookCommandTest {
  private final Map<String, Notebook> files =
      Map.of(
          "season", Samples.season(),
          "split", Samples.splitFork(),
          "narrowed", narrowed(),
          "twins", twoOfAName(),
          "empty", Notebook.empty(new rutbook.notebook.NotebookId("empty")));
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream errors = new ByteArrayOutputStream();
  private final List<Throwable> logged = new ArrayList<>();

  /** The season, and from November on a limit below the baseline's fill of 345 mL. */
  static Notebook narrowed() {
    Notebook season = Samples.season();
    var bike = season.bikes().get(0);
    Chamber outer = bike.latestSheet().chamber(Bench.OUTER).orElseThrow();
    Chamber narrower =
        new Chamber(
            outer.id(),
            outer.name(),
            Carrier.PAIR,
            Measure.VOLUME,
            new Range(Bench.ml("300"), Bench.ml("340")),
            java.util.Optional.empty(),
            outer.volume());
    return season.with(
        bike.with(
            bike.latestSheet()
                .with(LocalDate.of(2026, 11, 1), "narrower limit")
                .withChambers(List.of(bike.latestSheet().chambers().get(0), narrower))));
  }

  private int run(Charset charset, String... words) {
    Terminal terminal = new Terminal(new PrintStream(out, true, charset), charset);
    return new RutbookCommand(
            terminal,
            files::get,
            (name, bytes, replace) -> {},
            new NoProgram() {
              @Override
              public void tour() {
                Tour.print(Samples.season(), Phrases.english(Display.METRIC), terminal);
              }

              @Override
              public void window(java.util.Optional<String> file) {
                terminal.line("window " + file.orElse("of last time"));
              }
            })
        .execute(new Terminal(new PrintStream(errors, true, charset), charset), logged::add, words);
  }

  private int run(String... words) {
    return run(StandardCharsets.UTF_8, words);
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void compareSaysTheNumberAndTheSense() {
    assertThat(run("compare", "season", "2026-10-17#1", "2026-10-17#2")).isEqualTo(Exit.DONE);
    assertThat(said()).contains("Fork compression              14 → 16 out (2 clicks softer)");
  }

  @Test
  void tracksAreComparedByTheirBestMoto() {
    assertThat(run("compare", "season", "track:\"Quarry Hollow\"", "track:Saltmarsh Dunes"))
        .isEqualTo(Exit.DONE);
    assertThat(said()).contains("Tube above clamp").contains("raises the front");
  }

  @Test
  void aBaselineAboveTheLimitIsHeldThereAndTheShortfallIsSaid() {
    assertThat(run("rebuild", "narrowed", "--fork", "--changed", "oil")).isEqualTo(Exit.PROBLEM);
    assertThat(said().replaceAll("\\s+", " "))
        .contains(
            "wanted 345 mL (11.67 fl oz), today's most is 340 mL (11.49 fl oz): held there, 5 mL short.")
        .contains("Outer chamber oil: to 340 mL")
        .contains("By the curve: air force at the end of the travel −")
        .contains("by a rule of the trade; a ride decides.");
  }

  @Test
  void whatNewOilDoesIsSaidBeforeTheRide() {
    run("rebuild", "season", "--fork", "--changed", "oil", "--oil", "Cartridge oil, thin");
    assertThat(said().replaceAll("\\s+", " "))
        .contains("Before the ride: - Cartridge oil, thin is 0.7")
        .contains("at 50 °C: faster, and softer at low speed.");
  }

  @Test
  void aForkThatFitsItsLimitsIsPlannedWithoutAShortfall() {
    assertThat(run("rebuild", "season", "--fork", "--changed", "oil,seals")).isEqualTo(Exit.DONE);
    assertThat(said()).contains("Springs and caps are under load.").contains("84 N·m (62 lbf·ft)");
  }

  @Test
  void checkEndsWithOneWhenSomethingWantsAttention() {
    assertThat(run("check", "season")).isEqualTo(Exit.PROBLEM);
    assertThat(said()).contains("Linkage bearings");
  }

  @Test
  void logTellsEverySession() {
    assertThat(run("log", "season")).isEqualTo(Exit.DONE);
    assertThat(said().lines().filter(line -> line.startsWith("  ") && line.endsWith(" 2026")))
        .hasSize(
            (int)
                Samples.season().entries().stream()
                    .filter(rutbook.notebook.Entry.Session.class::isInstance)
                    .count());
  }

  @Test
  void theRidersUnitsAreTheNotebooksUnlessAsked() {
    run("log", "split");
    assertThat(said()).contains("18 fl oz");
    out.reset();
    run("log", "split", "--units", "metric");
    assertThat(said()).contains("532 mL");
  }

  @Test
  void noLineIsWiderThanEightyColumns() {
    run("--tour");
    run("log", "season");
    run("rebuild", "season", "--fork", "--shock", "--changed", "oil,seals,spring,valving");
    assertThat(said().lines().filter(line -> line.length() > Terminal.WIDTH)).isEmpty();
    assertThat(said()).doesNotContain("{0}", "null", "Optional");
  }

  @Test
  void aTerminalWithoutArrowsGetsPlainLetters() {
    run(StandardCharsets.US_ASCII, "--tour");
    assertThat(out.toString(StandardCharsets.US_ASCII)).contains("->").doesNotContain("?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "compare season now yesterday",
        "compare season now 2026-02-30",
        "compare season now 2026-01-01",
        "compare season now 2026-10-17#9",
        "compare season now track:Nowhere",
        "compare season now",
        "log season --bike Other",
        "log season --units stones",
        "log empty",
        "rebuild season",
        "rebuild season --fork --changed paint",
        "rebuild season --fork --changed oil --oil Lard",
        "fly season",
      })
  void wrongUseIsASentenceAndExitTwo(String words) {
    assertThat(run(words.split(" "))).isEqualTo(Exit.WRONG_USE);
    assertThat(errors.toString(StandardCharsets.UTF_8)).isNotBlank().doesNotContain("\tat ");
    assertThat(out.size()).isZero();
  }

  @Test
  void whatNobodyForesawIsOneSentenceAndGoesToTheLog() {
    assertThat(run("log", "no such notebook")).isEqualTo(Exit.UNEXPECTED);
    assertThat(errors.toString(StandardCharsets.UTF_8)).contains("log has the details");
    assertThat(logged).hasSize(1);
  }

  private static Notebook twoOfAName() {
    Notebook one = Bench.notebook();
    Notebook two =
        one.with(
            new rutbook.notebook.Bike(
                new rutbook.notebook.BikeId("bike-2"), "Test 250", List.of(Bench.sheet())));
    LocalDate day = Bench.SPRING.plusDays(9);
    return two.with(
            Bench.session(
                "s-1", day, Bench.HOLLOW, Bench.setup(), List.of(moto("m-1"), moto("m-2"))))
        .with(Bench.session("s-2", day, Bench.DUNE, Bench.setup(), List.of(moto("m-3"))));
  }

  private static rutbook.notebook.Moto moto(String id) {
    return Bench.moto(id, List.of(), List.of());
  }

  @Test
  void bikesOfOneNameAreToldApartByTheirIds() {
    assertThat(run("log", "twins", "--bike", "Test 250")).isEqualTo(Exit.WRONG_USE);
    assertThat(errors.toString(StandardCharsets.UTF_8)).contains("bike-1, bike-2");
    assertThat(run("log", "twins", "--bike", "bike-2")).isEqualTo(Exit.DONE);
  }

  @Test
  void motosAreCountedOverAllSessionsOfADay() {
    String day = Bench.SPRING.plusDays(9).toString();
    assertThat(run("compare", "twins", "--bike", "bike-1", day, "now")).isEqualTo(Exit.WRONG_USE);
    assertThat(errors.toString(StandardCharsets.UTF_8)).contains("Test Hollow, Test Dune");
    assertThat(run("compare", "twins", "--bike", "bike-1", day + "#2", day + "#3"))
        .isEqualTo(Exit.DONE);
    assertThat(said()).contains("Test Hollow").contains("Test Dune");
    assertThat(run("compare", "twins", "--bike", "bike-1", day + "#4", "now"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(run("compare", "twins", "--bike", "bike-1", day + "#0", "now"))
        .isEqualTo(Exit.WRONG_USE);
  }

  @Test
  void theVersionIsOneLine() {
    assertThat(run("--version")).isZero();
    assertThat(said()).isEqualTo("Rutbook 1.2.3" + System.lineSeparator());
  }

  @Test
  void aFileAloneIsOpenedInTheWindow() {
    assertThat(run("rides/season.rutbook")).isZero();
    assertThat(said()).isEqualTo("window rides/season.rutbook" + System.lineSeparator());
  }

  @Test
  void withoutAWordTheWindowOpensAsItWasLeft() {
    assertThat(run()).isZero();
    assertThat(said()).isEqualTo("window of last time" + System.lineSeparator());
  }

  @Test
  void aMistypedCommandIsNotTakenForANotebook() {
    assertThat(run("compre")).isEqualTo(Exit.WRONG_USE);
    assertThat(errors.toString(StandardCharsets.UTF_8))
        .contains("There is no command “compre”; rutbook --help lists them.");
  }

  @Test
  void nextSaysWhatComesFirstWhatBothersAndHowToTest() {
    assertThat(run("next", "season")).isEqualTo(Exit.DONE);
    assertThat(said())
        .containsSubsequence(
            "What comes first:",
            "A service is due.",
            "What bothers now:",
            "One change to try next",
            "  1.  ",
            "better overall",
            "To test: change nothing else");
  }

  @Test
  void aStartSaysWhereEachReadingComesFrom() {
    assertThat(run("next", "season", "--start", "Kestrel Bank")).isEqualTo(Exit.DONE);
    assertThat(said())
        .startsWith("What to start with at Kestrel Bank")
        .contains("Shock spring: 54 N/mm, from the baseline")
        .contains("as it was in that moto")
        .contains("A start to test, not a promise");
    for (var setting : Samples.season().bikes().get(0).latestSheet().settings()) {
      assertThat(said()).contains("  " + setting.name() + ": ");
    }
  }

  @Test
  void aStartIsComparedAndADayWithoutAdviceIsSaidToHaveNone() {
    assertThat(run("compare", "season", "start:Kestrel Bank", "now")).isEqualTo(Exit.DONE);
    assertThat(said()).contains("from  start at Kestrel Bank").contains("settings are the same");
    for (String kind : List.of("advice:", "handed:")) {
      assertThat(run("compare", "season", kind + "2026-09-01", "now")).isEqualTo(Exit.WRONG_USE);
    }
    assertThat(errors.toString(StandardCharsets.UTF_8))
        .contains("Nothing of that kind is noted on 1 Sept 2026.");
  }
}
