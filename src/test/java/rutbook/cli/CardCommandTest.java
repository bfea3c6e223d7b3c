package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;

class CardCommandTest {
  private final Map<String, Notebook> files = Map.of("season", Samples.season());
  private final Map<String, byte[]> written =
      new LinkedHashMap<>(Map.of("there.html", new byte[0]));
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream errors = new ByteArrayOutputStream();
  private final List<Throwable> logged = new ArrayList<>();

  private void put(String name, byte[] bytes, boolean replace) {
    if (written.containsKey(name) && !replace) {
      throw Refusal.use("already there");
    }
    written.put(name, bytes);
  }

  private int run(String... words) {
    Terminal terminal =
        new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    Terminal beside =
        new Terminal(new PrintStream(errors, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    return new RutbookCommand(terminal, files::get, this::put, new NoProgram())
        .execute(beside, logged::add, words);
  }

  private String text(String name) {
    return new String(written.get(name), StandardCharsets.UTF_8);
  }

  @Test
  void theEndingOfTheNameSaysWhatIsMade() {
    assertThat(run("card", "season", "--to", "a.html")).isEqualTo(Exit.DONE);
    assertThat(run("card", "season", "baseline", "now", "--to", "b.PDF")).isEqualTo(Exit.DONE);
    assertThat(run("card", "season", "2026-10-17", "--to", "c.txt")).isEqualTo(Exit.DONE);
    assertThat(run("card", "season", "--to", "d.csv")).isEqualTo(Exit.DONE);
    assertThat(text("a.html")).startsWith("<!DOCTYPE html>").contains("Corvane 250");
    assertThat(text("b.PDF")).startsWith("%PDF-");
    assertThat(text("c.txt")).startsWith("Corvane 250\nQuarry Hollow, 17 Oct 2026");
    assertThat(text("d.csv")).startsWith("\uFEFFday,track,");
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("Written: a.html");
    assertThat(logged).isEmpty();
  }

  @Test
  void ofTwoItSaysWhatToChange() {
    run("card", "season", "2026-10-17#1", "2026-10-17#2", "--to", "-");
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("Fork compression (each leg): 14 → 16 out (2 clicks softer)");
  }

  @Test
  void sessionsOfOneTrackOrDayCanBeATable() {
    run("card", "season", "2026-10-17", "--to", "day.csv");
    run("card", "season", "track:Saltmarsh Dunes", "--to", "track.csv");
    assertThat(text("day.csv").lines().skip(1)).hasSize(3).allMatch(it -> it.startsWith("2026-10"));
    assertThat(text("track.csv").lines().skip(1))
        .isNotEmpty()
        .allMatch(it -> it.contains("Saltmarsh Dunes"));
  }

  @Test
  void aFileThatIsThereIsLeftUnlessForceIsSaid() {
    assertThat(run("card", "season", "--to", "there.html")).isEqualTo(Exit.WRONG_USE);
    assertThat(written.get("there.html")).isEmpty();
    assertThat(run("card", "season", "--to", "there.html", "--force")).isEqualTo(Exit.DONE);
    assertThat(written.get("there.html")).isNotEmpty();
  }

  @Test
  void unitsAndPaperAreThoseAskedFor() throws IOException {
    run("card", "season", "--to", "a.txt", "--units", "us");
    assertThat(text("a.txt")).contains("11.67 fl oz (345 mL)");
    run("card", "season", "--to", "a.pdf", "--paper", "letter");
    try (PDDocument document = Loader.loadPDF(written.get("a.pdf"))) {
      assertThat(document.getPage(0).getMediaBox().getHeight()).isEqualTo(792);
    }
  }

  @Test
  void theAnswerAsJsonNamesTheFile() {
    run("card", "season", "--to", "a.html", "--json");
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("\"answer\": \"card\"", "\"file\": \"a.html\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "card season",
        "card season --to x.doc",
        "card season --to x",
        "card season --to x.pdf --paper a5",
        "card season yesterday --to x.pdf",
        "card season now never --to x.pdf",
      })
  void wrongUseIsASentenceAndNothingIsWritten(String words) {
    assertThat(run(words.split(" "))).isEqualTo(Exit.WRONG_USE);
    assertThat(errors.toString(StandardCharsets.UTF_8)).isNotBlank().doesNotContain("\tat ");
    assertThat(written).hasSize(1);
  }
}
