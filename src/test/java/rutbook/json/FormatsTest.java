package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rutbook.notebook.AnyNotebook;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.Ground;
import rutbook.notebook.How;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Volume;

/**
 * What opened once opens for ever. The golden files are never made again: a newer format gets a
 * golden file of its own, and a step from the one before.
 */
class FormatsTest {
  private static byte[] golden(String name) throws IOException {
    try (InputStream in = FormatsTest.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  @Test
  void format1IsReadAndWrittenBackByteForByte() throws IOException {
    byte[] bytes = golden("format-1.rutbook");
    assertThat(NotebookJson.write(NotebookJson.read(bytes))).isEqualTo(bytes);
    assertThat(PublishedSchema.NOTEBOOK.faults(bytes)).isEmpty();
  }

  /** As format 1 was before it was frozen: it opened once. */
  @Test
  void format1AsItWasFirstIsReadAndWrittenBackByteForByte() throws IOException {
    byte[] bytes = golden("format-1-first.rutbook");
    assertThat(NotebookJson.write(NotebookJson.read(bytes))).isEqualTo(bytes);
    assertThat(PublishedSchema.NOTEBOOK.faults(bytes)).isEmpty();
  }

  @Test
  void format1HasEveryKindOfEntryInIt() throws IOException {
    Notebook notebook = NotebookJson.read(golden("format-1.rutbook"));
    assertThat(
            notebook.entries().stream().map(entry -> entry.getClass()).collect(Collectors.toSet()))
        .isEqualTo(java.util.Set.of(Entry.class.getPermittedSubclasses()));
    assertThat(notebook.ruleChanges()).hasSize(3);
    Entry.RebuildJob job = (Entry.RebuildJob) notebook.entries().get(4);
    assertThat(job.done()).hasSize(4);
    assertThat(job.job().baseline()).isEqualTo(Bench.FIRST_BASELINE);
  }

  /**
   * The format is frozen with every field that it has; whatever is added later is left out here.
   */
  @Test
  void format1ShowsEveryFieldThatItHad() throws IOException {
    FieldsSeen seen = new FieldsSeen();
    seen.look(new NotebookShape(), Trees.MAPPER.readTree(golden("format-1.rutbook")));
    assertThat(seen.missing()).isSubsetOf(ADDED_SINCE);
  }

  /** Fields and kinds that came after the golden file; an open answer is never written. */
  private static final java.util.Set<String> ADDED_SINCE =
      java.util.Set.of(
          AnswerShape.class.getName() + "$OpenShape kind",
          EnteredShape.class.getName() + "$TickedShape note",
          ShockPartsShape.class.getName() + " gasPressure");

  /**
   * From a format that never left this test: tracks were called places, entries had no kind in
   * front, and an amount was an object of number and unit.
   */
  private static final Upgrades FROM_ZERO = new Upgrades(1, Map.of(0, FormatsTest::fromZero));

  private static JsonNode fromZero(JsonNode tree) {
    ObjectNode notebook = (ObjectNode) tree;
    notebook.set("tracks", notebook.remove("places"));
    for (JsonNode entry : notebook.path("entries")) {
      for (JsonNode placed : entry.path("start")) {
        ((ObjectNode) placed).set("reading", reading(placed.path("reading")));
      }
    }
    return notebook;
  }

  private static JsonNode reading(JsonNode old) {
    if (old.has("number")) {
      String number = old.path("number").decimalValue().toPlainString();
      return TextNode.valueOf(number + " " + old.path("unit").asText());
    }
    if (old.has("left")) {
      ObjectNode legs = (ObjectNode) old;
      List.of("left", "right").forEach(leg -> legs.replace(leg, reading(legs.path(leg))));
    }
    return old;
  }

  @Test
  void anOlderFormatIsBroughtUpAndSaysWhatItSaid() throws IOException {
    Notebook notebook = NotebookJson.read(golden("format-0.rutbook"), FROM_ZERO);
    assertThat(notebook.display().unit(rutbook.units.Dimension.VOLUME))
        .isEqualTo(Volume.US_FLUID_OUNCE);
    assertThat(notebook.shelf().tracks().get(0).name()).isEqualTo("Older Track");
    assertThat(notebook.shelf().tracks().get(0).ground()).contains(Ground.SAND);
    Entry.Session session = (Entry.Session) notebook.entries().get(0);
    assertThat(session.day()).isEqualTo(LocalDate.of(2025, 5, 4));
    assertThat(session.start().placed())
        .containsExactly(
            Placed.set(new SettingId("tube"), Reading.of(Bench.mm("5.5"))),
            new Placed(
                new SettingId("rebound"),
                new Reading.Pair(
                    Value.of(Bench.clicks(11)), new Value.Unknown(WhyUnknown.NOT_COUNTED)),
                How.FOUND));
    assertThat(session.motos().get(0).report().laps().get(0).millis()).isEqualTo(92_345);
    byte[] written = NotebookJson.write(notebook);
    assertThat(PublishedSchema.NOTEBOOK.faults(written)).isEmpty();
    assertThat(NotebookJson.read(written)).isEqualTo(notebook);
  }

  @Test
  void withoutTheStepTheOlderFormatIsRefusedInWords() throws IOException {
    byte[] old = golden("format-0.rutbook");
    assertThatThrownBy(() -> NotebookJson.read(old))
        .isInstanceOfSatisfying(
            JsonException.class,
            thrown -> assertThat(thrown.fault().kind()).isEqualTo(JsonFault.Kind.NO_SUCH_FORMAT));
  }

  /** Writes the golden file of a format that is new; never one that is there. */
  public static void main(String[] arguments) throws IOException {
    Path file =
        Path.of("src/test/resources/rutbook/json/format-" + NotebookJson.FORMAT + ".rutbook");
    Files.write(file, NotebookJson.write(AnyNotebook.whole()), StandardOpenOption.CREATE_NEW);
  }
}
