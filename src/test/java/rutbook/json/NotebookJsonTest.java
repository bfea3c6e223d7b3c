package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.Bench;
import rutbook.notebook.Fault;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

class NotebookJsonTest {
  private static final String FIRST_DAY =
      new String(NotebookJson.write(Samples.firstDay()), StandardCharsets.UTF_8);

  @Test
  void whatIsWrittenIsReadBackTheSame() {
    for (Notebook notebook :
        new Notebook[] {
          Bench.notebook(), Samples.season(), Samples.firstDay(), Samples.splitFork()
        }) {
      byte[] bytes = NotebookJson.write(notebook);
      assertThat(NotebookJson.read(bytes)).isEqualTo(notebook);
      assertThat(NotebookJson.write(NotebookJson.read(bytes))).isEqualTo(bytes);
    }
  }

  /** What stands in the file, what is put there instead, and the fault that it is. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"format\": 1|\"format\": 2|NEWER_FORMAT",
        "\"format\": 1|\"format\": 0|NO_SUCH_FORMAT",
        "\"format\": 1|\"format\": \"1\"|WRONG_TYPE",
        "\"id\": \"sample-first-day\"|\"id\": null|IS_NULL",
        "\"id\": \"sample-first-day\"|\"id\": \"a\", \"id\": \"b\"|FIELD_TWICE",
        "\"id\": \"sample-first-day\"|\"id\": \"a\", \"wheels\": 2|UNKNOWN_FIELD",
        "\"2026-05-02\"|\"2026-05-32\"|BAD_VALUE",
        "\"2026-05-02\"|\"1900-05-02\"|NOTEBOOK",
        "\"12 clicks\"|\"1000000000 clicks\"|NOTEBOOK",
        "\"12 clicks\"|\"1E+200000000 clicks\"|BAD_VALUE",
        "\"12 clicks\"|\"NaN clicks\"|BAD_VALUE",
        "\"12 clicks\"|NaN|SYNTAX",
      })
  void rubbishIsAFaultWithItsKindAndPlace(String there, String instead, Kind kind) {
    assertThat(FIRST_DAY).contains(there);
    String text = FIRST_DAY.replace(there, instead);
    assertThatThrownBy(() -> read(text))
        .isInstanceOfSatisfying(
            JsonException.class,
            thrown -> {
              assertThat(thrown.fault().kind()).isEqualTo(kind);
              assertThat(thrown.fault().line()).isPositive();
            });
  }

  private static Notebook read(String text) {
    return NotebookJson.read(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void twoEntriesWithOneIdAreNamed() {
    assertThatThrownBy(() -> read(FIRST_DAY.replace("e-002", "e-001")))
        .isInstanceOfSatisfying(
            JsonException.class,
            thrown ->
                assertThat(thrown.notebookFault().orElseThrow().fault()).isEqualTo(Fault.TWICE));
  }

  @Test
  void theKindOfAnEntryIsReadWhereverItStands() {
    assertThat(FIRST_DAY).contains("\"kind\": \"baseline\",\n      \"id\": \"e-001\",");
    String later =
        FIRST_DAY.replace(
            "\"kind\": \"baseline\",\n      \"id\": \"e-001\",",
            "\"id\": \"e-001\", \"kind\": \"baseline\",");
    assertThat(read(later)).isEqualTo(Samples.firstDay());
  }

  @Test
  void anUnknownSettingIsNamedWithItsPath() {
    assertThatThrownBy(
            () -> read(FIRST_DAY.replace("\"setting\": \"fork-oil\"", "\"setting\": \"wings\"")))
        .isInstanceOf(JsonException.class);
  }

  @Test
  void bracketsWithoutEndAreRefusedBeforeAnythingIsBuilt() {
    byte[] brackets = new byte[64 << 20];
    Arrays.fill(brackets, (byte) '[');
    assertThatThrownBy(() -> NotebookJson.read(brackets)).isInstanceOf(JsonException.class);
    byte[] nested = "{\"rutbook\":".repeat(100).getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(() -> NotebookJson.read(nested)).isInstanceOf(JsonException.class);
    byte[] larger = new byte[(64 << 20) + 1];
    assertThatThrownBy(() -> NotebookJson.read(larger))
        .isInstanceOfSatisfying(
            JsonException.class,
            thrown -> assertThat(thrown.fault().kind()).isEqualTo(Kind.TOO_LARGE));
  }

  @Test
  void everyPrefixOfANotebookIsAFault() {
    byte[] whole = FIRST_DAY.getBytes(StandardCharsets.UTF_8);
    for (int length = 0; length < whole.length - 2; length++) {
      byte[] prefix = Arrays.copyOf(whole, length);
      assertThatThrownBy(() -> NotebookJson.read(prefix))
          .as("%d bytes", length)
          .isInstanceOf(JsonException.class);
    }
  }

  @Test
  void anOlderFormatIsBroughtUpStepByStep() {
    Upgrades toThree =
        new Upgrades(
            1,
            Map.of(
                -1,
                tree -> ((ObjectNode) tree).put("id", "sample-first-day"),
                0,
                tree -> {
                  ((ObjectNode) tree).remove("colour");
                  return tree;
                }));
    String old =
        FIRST_DAY
            .replace("\"format\": 1", "\"format\": -1, \"colour\": \"green\"")
            .replace("\"id\": \"sample-first-day\"", "\"id\": \"before\"");
    byte[] bytes = old.getBytes(StandardCharsets.UTF_8);
    assertThat(NotebookJson.read(bytes, toThree)).isEqualTo(Samples.firstDay());
    assertThatThrownBy(() -> NotebookJson.read(bytes)).isInstanceOf(JsonException.class);
    assertThatCode(() -> NotebookJson.read(FIRST_DAY.getBytes(StandardCharsets.UTF_8), toThree))
        .doesNotThrowAnyException();
  }
}
