package rutbook.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rutbook.file.FileReading;
import rutbook.file.RealDisk;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;
import rutbook.search.Indexed;
import rutbook.search.Query;
import rutbook.search.Search;

/**
 * A coach's shelf of a hundred notebooks of two hundred sessions: reading it and making it ready,
 * and each search after that, beside Jackson reading the same files into trees and a plain walk
 * over their texts.
 */
public final class ShelfSearchBench {
  private static final int NOTEBOOKS = 100;
  private static final int SESSIONS = 200;
  private static final int ROUNDS = 9;
  private static final List<String> TYPED =
      List.of("dune", "\"note 117-2\"", "2003-05 hollow", "rider dune note 4", "nowhere at all");

  private final ObjectMapper mapper = new ObjectMapper();
  private final FileReading reading = new FileReading(new RealDisk(System.getProperty("os.name")));
  private final Path folder = Files.createTempDirectory("rutbook-shelf");

  private ShelfSearchBench() throws IOException {}

  public static void main(String[] arguments) throws IOException {
    new ShelfSearchBench().run();
  }

  private void run() throws IOException {
    for (int i = 0; i < NOTEBOOKS; i++) {
      Notebook notebook = ManySessions.of(SESSIONS, i);
      Files.write(folder.resolve("rider-" + i + ".rutbook"), NotebookJson.write(notebook));
    }
    double ready = SideBySide.best(3, () -> shelf().size());
    double trees = SideBySide.best(3, () -> trees().size());
    System.out.printf(
        Locale.ROOT,
        "%d notebooks of %d sessions: read and made ready %.0f ms, read as trees %.0f ms, %.2f%n",
        NOTEBOOKS,
        SESSIONS,
        1000 * ready,
        1000 * trees,
        ready / trees);
    List<Indexed> shelf = shelf();
    List<JsonNode> trees100 = trees();
    for (String typed : TYPED) {
      Query query = Query.of(typed);
      double search = SideBySide.best(ROUNDS, () -> Search.of(shelf, query, 50).found());
      double walk = SideBySide.best(ROUNDS, () -> walked(trees100, query.words()));
      System.out.printf(
          Locale.ROOT,
          "%-20s %5d found, %6.1f ms; plain walk %6.1f ms, %.2f%n",
          typed,
          Search.of(shelf, query, 50).found(),
          1000 * search,
          1000 * walk,
          search / walk);
    }
  }

  private List<Path> files() {
    return reading.filesIn(folder, ".rutbook").result().orElseThrow();
  }

  private Optional<byte[]> bytes(Path file) {
    return reading.read(file, FileReading.LIMIT).result();
  }

  private List<Indexed> shelf() {
    List<Indexed> shelf = new ArrayList<>();
    for (Path file : files()) {
      Notebook notebook = NotebookJson.read(bytes(file).orElseThrow());
      shelf.add(Indexed.of(file.getFileName().toString(), notebook));
    }
    return shelf;
  }

  private List<JsonNode> trees() {
    List<JsonNode> trees = new ArrayList<>();
    for (Path file : files()) {
      try {
        trees.add(mapper.readTree(bytes(file).orElseThrow()));
      } catch (IOException thrown) {
        throw new UncheckedIOException(thrown);
      }
    }
    return trees;
  }

  /** Entries of which each word stands in some text, small letters and capitals alike. */
  private static int walked(List<JsonNode> trees, List<String> words) {
    int found = 0;
    for (JsonNode tree : trees) {
      for (JsonNode entry : tree.path("entries")) {
        found += words.stream().allMatch(word -> has(entry, word)) ? 1 : 0;
      }
    }
    return found;
  }

  private static boolean has(JsonNode node, String word) {
    if (node.isTextual()) {
      return node.textValue().toLowerCase(Locale.ROOT).contains(word);
    }
    for (JsonNode each : node) {
      if (has(each, word)) {
        return true;
      }
    }
    return false;
  }
}
