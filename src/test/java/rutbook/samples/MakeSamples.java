package rutbook.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;

/** Writes the sample notebooks; run it from the project's folder after the format changed. */
public final class MakeSamples {
  static final Path FOLDER = Path.of("sample-notebooks");

  private MakeSamples() {}

  static Map<String, Notebook> byName() {
    return Map.of(
        "season.rutbook", Samples.season(),
        "first-day.rutbook", Samples.firstDay(),
        "split-fork.rutbook", Samples.splitFork());
  }

  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(FOLDER);
    for (Map.Entry<String, Notebook> sample : byName().entrySet()) {
      Files.write(FOLDER.resolve(sample.getKey()), NotebookJson.write(sample.getValue()));
    }
  }
}
