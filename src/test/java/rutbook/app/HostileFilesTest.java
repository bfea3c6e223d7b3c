package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.app.Ran.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.json.NotebookJson;
import rutbook.samples.Samples;

/** Rubbish given to the program itself: a sentence, an exit code, and the file as it was. */
class HostileFilesTest {
  private static final String FIRST_DAY =
      new String(NotebookJson.write(Samples.firstDay()), StandardCharsets.UTF_8);

  @TempDir private Path folder;

  /** Every command refuses it in words, as lines and as JSON, and leaves the folder as it was. */
  private void refused(byte[] bytes) throws IOException {
    Path file = folder.resolve("hostile.rutbook");
    Files.write(file, bytes);
    for (List<String> command :
        List.of(List.of("log"), List.of("check"), List.of("compare"), List.of("rebuild"))) {
      sentence(run((Object[]) words(command.get(0), file)));
    }
    Ran json = run("check", file.toString(), "--json");
    JsonNode answer = new ObjectMapper().readTree(json.out());
    assertThat(answer.path("answer").asText()).isEqualTo("refusal");
    assertThat(answer.path("exit").asInt()).isEqualTo(3);
    assertThat(answer.path("fault").path("kind").asText()).isNotBlank();
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(file);
    }
  }

  private static String[] words(String command, Path file) {
    String name = file.toString();
    return switch (command) {
      case "compare" -> new String[] {command, name, "now", "baseline"};
      case "rebuild" -> new String[] {command, name, "--fork"};
      default -> new String[] {command, name};
    };
  }

  private static void sentence(Ran ran) {
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.errors())
        .isNotBlank()
        .doesNotContain("\tat ", "Exception", "rutbook.json", "{0}", "null]");
    assertThat(ran.errors().strip()).endsWith(".");
    assertThat(ran.errors().length()).isLessThan(1500);
  }

  /** What stands in the file, and what is put there instead. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"format\": 1|\"format\": 2",
        "\"format\": 1|\"format\": 1e0",
        "\"format\": 1|\"format\": 99999999999999999999",
        "\"id\": \"sample-first-day\"|\"id\": 7",
        "\"id\": \"sample-first-day\"|\"id\": null",
        "\"id\": \"sample-first-day\"|\"id\": \"a\", \"id\": \"b\"",
        "\"id\": \"sample-first-day\"|\"id\": \"a\", \"wheels\": 2",
        "\"id\": \"sample-first-day\"|\"id\": \"\\uD800\"",
        "\"bikes\": [|\"bikes\": [[",
        "\"2026-05-02\"|\"1900-05-02\"",
        "\"2026-05-02\"|\"2026-05-32\"",
        "\"2026-05-02\"|\"+999999999-12-31\"",
        "\"12 clicks\"|\"1000000000 clicks\"",
        "\"12 clicks\"|\"1e9 clicks\"",
        "\"12 clicks\"|\"1E+200000000 clicks\"",
        "\"12 clicks\"|\"NaN clicks\"",
        "\"12 clicks\"|\"12 parsecs\"",
        "\"12 clicks\"|NaN",
        "\"12 clicks\"|1E+200000000",
        "\"12 clicks\"|{\"left\": \"12 clicks\"}",
        "\"setting\": \"fork-oil\"|\"setting\": \"wings\"",
        "\"e-002\"|\"e-001\"",
      })
  void aFileChangedByHandIsRefusedInWords(String there, String instead) throws IOException {
    assertThat(FIRST_DAY).contains(there);
    refused(FIRST_DAY.replace(there, instead).getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 100, 1000, 5000})
  void aTruncatedFileIsRefusedInWords(int length) throws IOException {
    refused(Arrays.copyOf(FIRST_DAY.getBytes(StandardCharsets.UTF_8), length));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"null", "[]", "7", "\"notebook\"", "{}", "{} {}", "PK\u0003\u0004zip", "<html>"})
  void anotherKindOfFileIsRefusedInWords(String text) throws IOException {
    refused(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void otherEncodingsAreRefusedInWords() throws IOException {
    refused(FIRST_DAY.getBytes(StandardCharsets.UTF_16LE));
    refused(FIRST_DAY.replace("Corvane", "Corv\u00e4ne").getBytes(StandardCharsets.ISO_8859_1));
  }

  @Test
  void aFolderAndNoFileAreRefusedInWords() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("folder.rutbook"));
    sentence(run("log", inside.toString()));
    sentence(run("log", folder.resolve("nothing.rutbook").toString()));
    assertThat(run("log", "no\0name").exit()).isEqualTo(3);
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(inside);
    }
  }

  /**
   * 64 MiB of brackets, of nested objects, of one text and of one number, in a program that has 160
   * MiB: nothing is built from them.
   */
  @Test
  void sixtyFourMebibytesOfRubbishFitASmallHeap() throws IOException, InterruptedException {
    for (String start : List.of("[", "{\"rutbook\":", "{\"rutbook\":\"", "{\"format\":1")) {
      byte[] bytes = new byte[64 << 20];
      byte[] first = start.getBytes(StandardCharsets.UTF_8);
      for (int i = 0; i < bytes.length; i++) {
        bytes[i] =
            start.endsWith("\"") || start.endsWith("1") ? (byte) '1' : first[i % first.length];
      }
      System.arraycopy(first, 0, bytes, 0, first.length);
      Path file = folder.resolve("large.rutbook");
      Files.write(file, bytes);
      Ran ran = runApart("check", file.toString());
      sentence(ran);
      assertThat(Files.mismatch(file, Files.write(folder.resolve("same"), bytes))).isEqualTo(-1);
    }
  }

  private Ran runApart(String... words) throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Path errors = folder.resolve("errors");
    ProcessBuilder builder =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx160m",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName())
            .redirectOutput(out.toFile())
            .redirectError(errors.toFile());
    builder.command().addAll(List.of(words));
    Process process = builder.start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Ran(process.exitValue(), Files.readString(out), Files.readString(errors));
  }
}
