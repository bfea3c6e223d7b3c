package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cards in a real browser, whose program is named by the variable RUTBOOK_BROWSER. */
@Tag("long")
class BrowserTest {
  private static final String BROWSER = System.getenv().getOrDefault("RUTBOOK_BROWSER", "");

  @TempDir private Path folder;

  private String run(String... more) throws IOException, InterruptedException {
    java.util.List<String> words =
        new java.util.ArrayList<>(
            java.util.List.of(BROWSER, "--headless", "--no-sandbox", "--disable-gpu"));
    words.addAll(java.util.List.of(more));
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(words)
            .redirectOutput(said.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return Files.readString(said, StandardCharsets.UTF_8);
  }

  @Test
  void everyCardOpensAndPrintsOnOnePage() throws Exception {
    assumeThat(BROWSER).isNotEmpty();
    for (Map.Entry<String, Card> card : SampleCards.all().entrySet()) {
      Path page = folder.resolve(card.getKey() + ".html");
      Path printed = folder.resolve(card.getKey() + ".pdf");
      Files.writeString(page, new CardHtml(Locale.UK).page(card.getValue()));
      String dom = run("--dump-dom", page.toUri().toString());
      assertThat(dom).as(card.getKey()).contains("<h1>", "<svg").doesNotContain("<script");
      run("--no-pdf-header-footer", "--print-to-pdf=" + printed, page.toUri().toString());
      try (PDDocument document = Loader.loadPDF(printed.toFile())) {
        if (!card.getKey().startsWith("hostile")) {
          assertThat(document.getNumberOfPages()).as(card.getKey()).isEqualTo(1);
        }
      }
    }
  }
}
