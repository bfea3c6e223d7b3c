package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.compare.Finding;
import rutbook.json.CheckAnswer;
import rutbook.json.JsonException;
import rutbook.json.NotebookJson;
import rutbook.json.PropertiesSeen;
import rutbook.json.PublishedSchema;
import rutbook.notebook.AnyNotebook;
import rutbook.notebook.Bench;
import rutbook.notebook.Bike;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Notebook;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.samples.Samples;

/** Every answer of every command is as its published schema says, and the schema says no more. */
class AnswersSchemaTest {
  private final Map<String, Notebook> files = new LinkedHashMap<>();
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream errors = new ByteArrayOutputStream();
  private final List<Throwable> logged = new ArrayList<>();
  private final Map<String, PublishedSchema> schemas = new HashMap<>();
  private final PropertiesSeen seen = new PropertiesSeen(PublishedSchema.ANSWERS);

  /** Answers of air forks, of forks measured throughout, and of oils that have no index. */
  private static final Set<String> NOT_IN_THESE_NOTEBOOKS =
      Set.of(
          "drawnCurve.reserveFromSag",
          "dropHeight.assumed",
          "dropHeight.value",
          "gasLine.leg",
          "indexFigure.none",
          "legFigures.airPressure",
          "legFigures.preload",
          "massFigure.assumed",
          "massFigure.value",
          "remarkMakesUp.part",
          "remarkViscosity.kind",
          "remarkViscosity.now",
          "remarkViscosity.old",
          "remarkViscosity.ratio",
          "remarkViscosity.temperature");

  private final PenInHand pen =
      new PenInHand(files, HandedSeason.TODAY)
          .file("answer", HandedSeason.answer(Samples.season()))
          .file("table.csv", Tables.laps())
          .file("setups.csv", Tables.setups());

  AnswersSchemaTest() {
    files.put("season", Samples.season());
    files.put("split", Samples.splitFork());
    files.put("bench", Bench.notebook());
    files.put("open", open());
    files.put("whole", AnyNotebook.whole());
    files.put("narrowed", RutbookCommandTest.narrowed());
    files.put("handed", HandedSeason.riddenOn(Samples.season()));
    for (int seed = 0; seed < 3; seed++) {
      files.put("any" + seed, AnyNotebook.of(seed));
    }
  }

  /** It wallows moto after moto: low speed may be too open or too closed, and a ride tells. */
  private static Notebook open() {
    Feel wallows = Feel.of(End.REAR, Section.ROLLERS, Symptom.WALLOWS, 4);
    return Bench.notebook()
        .with(
            Bench.session(
                "s",
                Bench.SPRING,
                Bench.HOLLOW,
                Bench.setup(),
                List.of(
                    Bench.moto("a", List.of(), List.of(wallows)),
                    Bench.moto("b", List.of(), List.of(wallows)))));
  }

  private Notebook read(String name) {
    if (name.equals("broken")) {
      try {
        return NotebookJson.read("{\"rutbook\": 1}".getBytes(StandardCharsets.UTF_8));
      } catch (JsonException fault) {
        throw Refusal.file("broken", fault.fault());
      }
    }
    return files.get(name);
  }

  private RutbookCommand.Named named(String name) {
    return new RutbookCommand.Named(name, () -> read(name));
  }

  private void answer(String... words) throws IOException {
    out.reset();
    Terminal terminal =
        new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    Terminal beside =
        new Terminal(new PrintStream(errors, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    int exit =
        new RutbookCommand(terminal, this::read, (name, bytes, replace) -> {}, new NoProgram())
            .with(pen)
            .lookingInto(folder -> List.of(named("season"), named("whole"), named("broken")))
            .execute(
                beside,
                logged::add,
                Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
    String said = String.join(" ", words);
    assertThat(logged).as(said).isEmpty();
    assertThat(errors.toString(StandardCharsets.UTF_8)).as(said).isEmpty();
    assertThat(look(out.toByteArray()).path("exit").intValue()).as(said).isEqualTo(exit);
  }

  private JsonNode look(byte[] text) throws IOException {
    JsonNode answer = new ObjectMapper().readTree(text);
    String name = answer.path("answer").asText();
    String definition =
        Stream.of(name.split("-"))
            .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
            .collect(Collectors.joining("", "answer", ""));
    assertThat(
            schemas
                .computeIfAbsent(definition, PublishedSchema.ANSWERS::only)
                .faults(new String(text, StandardCharsets.UTF_8)))
        .as(name)
        .isEmpty();
    seen.look(answer);
    return answer;
  }

  @Test
  void everyAnswerIsAsTheSchemaSaysAndTheSchemaSaysNoMore() throws IOException {
    for (String file : files.keySet()) {
      for (String command :
          List.of("log", "check", "next", "fork", "oil", "sag", "steering", "gas")) {
        answer(command, file);
      }
      answer("compare", file, "now", "baseline");
      answer("compare", file, "baseline", "track:" + track(file));
      for (String day : days(file)) {
        answer("compare", file, "baseline", day);
        answer("compare", file, day + "#1", day + "#2");
      }
      answer("rebuild", file, "--fork", "--shock", "--changed", "oil,seals,spring,valving");
    }
    answer("rebuild", "season", "--shock", "--units", "us");
    for (int seed = 0; seed < 3; seed++) {
      answer("rebuild", "any" + seed, "--fork", "--changed", "spring");
    }
    answer("sag", "season", "--units", "us");
    answer("next", "season", "--start", "Kestrel Bank");
    answer("next", "bench", "--start", "hollow");
    answer("fork", "season", "--fill", "350 mL");
    answer("oil", "season", "--blend", "Cartridge oil, thin", "--blend", "Cartridge oil, summer");
    answer("compare", "season", "track:Quarry Hollow", "track:Saltmarsh Dunes");
    answer("compare", "season", "track:Quarry Hollow", "track:Kestrel Bank");
    for (String file : files.keySet()) {
      answer("history", file);
    }
    answer("import", "season", "table.csv", "--laps", "2026-10-17#1");
    answer("import", "season", "setups.csv", "--setups", "--dry-run");
    answer("card", "season", "--to", "card.html");
    answer("card", "season", "--to", "-");
    for (String file : files.keySet()) {
      answer("hand-over", file, "--preview", "--with", "places,laps,notes,weight");
    }
    answer("hand-over", "season", "2026-10-17#1", "--to", "x.setup.json", "--ask", "Why?");
    answer("hand-over", "season", "2026-10-17#1", "--preview", "--with", "places,notes,weight");
    answer("take-back", "handed", "answer");
    answer("take-back", "handed", "answer", "--accept", "fork-compression");
    answer("find", "shelf", "2026");
    answer("find", "shelf", "\"whoops\"");
    answer("find", "shelf", "nowhere", "at", "all");
    answer("log", "broken");
    for (Finding each : findings()) {
      look(
          CheckAnswer.of(List.of(each))
              .text(1, bike(), Optional.empty())
              .getBytes(StandardCharsets.UTF_8));
    }
    assertThat(seen.missing()).isSubsetOf(NOT_IN_THESE_NOTEBOOKS);
  }

  private static List<Finding> findings() {
    return List.of(
        new Finding.NoReading(Bench.settings().get(0)),
        new Finding.ServiceNear(Bench.services().get(0), 28.3));
  }

  private static Optional<Bike> bike() {
    return Optional.of(Bench.bike());
  }

  private String track(String file) {
    return files.get(file).shelf().tracks().get(0).name();
  }

  private List<String> days(String file) {
    return files.get(file).entries().stream()
        .filter(rutbook.notebook.Entry.Session.class::isInstance)
        .map(entry -> entry.day().toString())
        .limit(1)
        .toList();
  }
}
