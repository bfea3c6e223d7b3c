package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rutbook.notebook.AnyNotebook;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

class NotebookSchemaTest {
  @Test
  void theSchemaIsItselfAsItsDialectSays() throws IOException {
    var dialect =
        com.networknt.schema.SchemaRegistry.withDefaultDialect(
                com.networknt.schema.SpecificationVersion.DRAFT_2020_12)
            .getSchema(
                com.networknt.schema.SchemaLocation.of(
                    "https://json-schema.org/draft/2020-12/schema"));
    assertThat(dialect.validate(PublishedSchema.NOTEBOOK.tree())).isEmpty();
  }

  @Test
  void everySampleThatComesWithTheProgramIsAsTheSchemaSays() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-notebooks"))) {
      List<Path> samples = files.filter(file -> file.toString().endsWith(".rutbook")).toList();
      assertThat(samples).hasSizeGreaterThanOrEqualTo(3);
      for (Path sample : samples) {
        assertThat(PublishedSchema.NOTEBOOK.faults(Files.readAllBytes(sample))).isEmpty();
      }
    }
  }

  @Test
  void whateverIsWrittenIsAsTheSchemaSays() {
    List<Notebook> notebooks =
        List.of(
            Bench.notebook(),
            AnyNotebook.whole(),
            Samples.season(),
            Samples.splitFork(),
            Notebook.empty(new rutbook.notebook.NotebookId("empty")));
    for (Notebook notebook : notebooks) {
      assertThat(PublishedSchema.NOTEBOOK.faults(NotebookJson.write(notebook))).isEmpty();
    }
  }

  @Property(tries = 40, seed = "11")
  void anyNotebookIsWrittenAsTheSchemaSaysAndReadBackTheSame(@ForAll long seed) {
    Notebook notebook = AnyNotebook.of(seed);
    byte[] bytes = NotebookJson.write(notebook);
    assertThat(PublishedSchema.NOTEBOOK.faults(bytes)).isEmpty();
    assertThat(NotebookJson.read(bytes)).isEqualTo(notebook);
    assertThat(NotebookJson.write(NotebookJson.read(bytes))).isEqualTo(bytes);
  }

  @Test
  void aNotebookWithEverythingShowsEveryFieldThereIs() throws IOException {
    FieldsSeen seen = new FieldsSeen();
    seen.look(
        new NotebookShape(), new ObjectMapper().readTree(NotebookJson.write(AnyNotebook.whole())));
    // An open proposal is the usual one: it is read, and left out when written.
    assertThat(seen.missing()).containsExactly(AnswerShape.class.getName() + "$OpenShape kind");
  }
}
